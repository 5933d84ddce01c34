import { consumptionOf, startingRates } from '../../../src/costing';
import type { Closing, Id, Instant, Rates } from '../../../src/model';
import { asSeconds, fromMm, type LocalDate, type Microlitres, type Milligrams } from '../../../src/units';
import { chance } from './random';

/** How a made-up shop really works: what it takes beyond the plan, and how much runs scatter. */
export interface Truth {
  readonly rates: Rates;
  /** Ink for cleaning, in ml a run. */
  readonly cleaning: number;
  /** Seconds of the printer: for a metre, and for each run. */
  readonly metre: number;
  readonly start: number;
  /** Seconds of the hands: for a span, a copy, a garment. */
  readonly span: number;
  readonly copy: number;
  readonly garment: number;
  /** Share of each amount by which it scatters. */
  readonly noise: number;
  /** Every copy is pressed on a garment, so that the two cannot be told apart. */
  readonly allPressed: boolean;
}

export const truth: Truth = {
  rates: { colour: 11_000, white: 16_500, powder: 118_000 } as Rates,
  cleaning: 3,
  metre: 1500,
  start: 500,
  span: 240,
  copy: 40,
  garment: 60,
  noise: 0.02,
  allPressed: false,
};

const at = (day: number): Instant => new Date(Date.UTC(2026, 8, 1 + day, 16)).toISOString() as Instant;

/** Closed runs of such a shop, one a day: between half a metre and four metres of film each. */
export function closedRuns(count: number, shop: Truth, seed = 1): Record<string, Closing> {
  const { even, normal } = chance(seed);
  const runs = Array.from({ length: count }, (_, index): Closing => {
    const area = (0.2 + 0.8 * even()) * 1_000_000;
    const coverage = { colour: area * (0.5 + 0.4 * even()), white: area };
    const metres = 0.5 + 3.5 * even();
    const spans = Math.ceil(metres / 0.48);
    const copies = 6 + Math.floor(40 * even());
    const garments = shop.allPressed ? copies : Math.floor(copies * even());
    const noisy = (amount: number) => Math.max(0, amount * (1 + shop.noise * normal()));
    const used = consumptionOf(coverage, shop.rates);
    const time = (seconds: number) => asSeconds(noisy(seconds));
    return {
      id: `run-${index}` as Id<'run'>,
      name: `Run ${index + 1}`,
      at: at(index),
      day: at(index).slice(0, 10) as LocalDate,
      film: { id: 'f' as Id<'film'>, name: 'Roll', kind: 'roll', width: fromMm(330) },
      work: {
        copies,
        pressed: garments,
        spans,
        platenClosings: 2 * garments,
        copyArea: area / 0.7,
        coverage,
      },
      planned: {
        film: fromMm(metres * 1000),
        sheets: 0,
        ...consumptionOf(coverage, startingRates.mm),
        time: {
          printer: asSeconds(360 + 1440 * metres),
          hands: asSeconds(150 + 145 * spans + 25 * copies + 50 * garments),
          press: asSeconds(60 * garments),
          oven: asSeconds(0),
        },
      },
      actual: {
        film: fromMm(metres * 1000),
        sheets: 0,
        colour: Math.round(noisy(used.colour + 1000 * shop.cleaning)) as Microlitres,
        white: Math.round(noisy(used.white + 1000 * shop.cleaning)) as Microlitres,
        powder: Math.round(noisy(used.powder)) as Milligrams,
        time: {
          printer: time(shop.start + shop.metre * metres),
          hands: time(shop.span * spans + shop.copy * copies + shop.garment * garments),
          press: null,
          oven: null,
        },
      },
      spoiled: [],
      lots: { film: '', colour: '', white: '', powder: '' },
      air: { temperature: null, humidity: null },
      notes: '',
      earlier: [],
      changed: at(index),
    };
  });
  return Object.fromEntries(runs.map((run) => [run.id, run]));
}
