import fc from 'fast-check';
import { startingCosts, startingRates } from '../../src/costing';
import type { Costs, Id, RunUse } from '../../src/model';
import { asMilliMinor, asMinor, asSeconds, fromMm } from '../../src/units';

export const rates = startingRates.mm;
export const costs = startingCosts('USD');

const seconds = (most: number) => fc.integer({ min: 0, max: most }).map(asSeconds);
const rate = fc.option(fc.integer({ min: 1, max: 50_000_000 }).map(asMilliMinor));

const transfer = (id: number, order: number) =>
  fc
    .record({
      copies: fc.integer({ min: 1, max: 60 }),
      footprint: fc.integer({ min: 100, max: 90_000 }),
      colour: fc.double({ min: 0, max: 1, noNaN: true }),
      white: fc.double({ min: 0, max: 1, noNaN: true }),
      seconds: fc.record({
        printing: seconds(4000),
        cutting: seconds(4000),
        pressing: seconds(9000),
        packing: seconds(3000),
      }),
      pressed: seconds(9000),
    })
    .map((own): RunUse['transfers'][number] => ({
      ...own,
      id: `t${id}` as Id<'transfer'>,
      order: `o${order}` as Id<'order'>,
      colour: own.colour * own.footprint,
      white: own.white * own.footprint,
      assumed: null,
    }));

const machine = fc.record({ on: seconds(20_000), warmUp: seconds(900) });

const order = (id: number): fc.Arbitrary<RunUse['orders'][number]> =>
  fc.record({
    id: fc.constant(`o${id}` as Id<'order'>),
    share: fc.double({ min: 0.01, max: 1, noNaN: true }),
    newDesigns: fc.integer({ min: 0, max: 4 }),
    garments: fc.array(
      fc.record({
        count: fc.integer({ min: 0, max: 80 }),
        price: fc.option(fc.integer({ min: 0, max: 3000 }).map(asMinor)),
      }),
      { maxLength: 3 },
    ),
    replaced: fc.integer({ min: 0, max: 3 }),
    replacement: fc.option(fc.integer({ min: 0, max: 3000 }).map(asMinor)),
    supplied: fc.boolean(),
  });

/** Runs of up to six transfers of three orders. */
export const anyUse: fc.Arbitrary<RunUse> = fc.record({
  film: fc.oneof(
    fc.record({
      kind: fc.constant('roll' as const),
      length: fc.integer({ min: 1, max: 60_000 }).map((mm) => fromMm(mm)),
      price: fc.record({
        amount: fc.integer({ min: 0, max: 90_000 }).map(asMinor),
        per: fc.constant(fromMm(1000)),
      }),
    }),
    fc.record({
      kind: fc.constant('sheets' as const),
      sheets: fc.integer({ min: 1, max: 300 }),
      price: fc.integer({ min: 0, max: 900 }).map(asMinor),
    }),
  ),
  transfers: fc
    .integer({ min: 1, max: 6 })
    .chain((count) => fc.tuple(...Array.from({ length: count }, (_, at) => transfer(at, at % 3)))),
  machines: fc.option(fc.record({ printer: machine, oven: machine, press: machine, ready: seconds(600) })),
  orders: fc.tuple(order(0), order(1), order(2)).map((all) => [...all]),
}) as fc.Arbitrary<RunUse>;

export const anyCosts: fc.Arbitrary<Costs> = fc
  .record({
    colourInk: rate,
    whiteInk: rate,
    powder: rate,
    energy: rate,
    labour: fc.record({ artwork: rate, printing: rate, cutting: rate, pressing: rate, packing: rate }),
    filmBy: fc.constantFrom('footprint' as const, 'ink' as const),
    spoilage: fc.double({ min: 0, max: 1, noNaN: true }),
    overhead: fc.oneof(
      fc.record({ kind: fc.constant('hour' as const), rate }),
      fc.record({
        kind: fc.constant('share' as const),
        share: fc.double({ min: 0, max: 2, noNaN: true }),
      }),
    ),
  })
  .map((own) => ({ ...costs, ...own }));
