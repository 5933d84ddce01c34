import { startingCosts, startingRates } from '../../src/costing';
import type { Costs, Heater, LabourRoom, Rates } from '../../src/model';
import {
  asSeconds,
  FINER,
  fail,
  kilogramsIn,
  litresIn,
  type Microlitres,
  type Milligrams,
  type MilliMinor,
  minorDigits,
  ok,
  type PriceProblem,
  parseDuration,
  parseFinePrice,
  parseMass,
  parseMassPrice,
  parsePrice,
  parseShare,
  parseVolume,
  parseVolumePrice,
  type Result,
  type Seconds,
  toMass,
  toVolume,
} from '../../src/units';
import { asShown } from '../parts/as-shown';
import { wordsNow } from '../words';
import { bulkUnits, SQUARE_METRES, type Ways } from '../words/format';

const priceFields = ['colourInk', 'whiteInk', 'powder', 'energy', 'overheadRate'] as const;
const otherFields = [
  'colourRate',
  'whiteRate',
  'powderRate',
  'day',
  'runsADay',
  'cleaning',
  'cleanings',
  'startColour',
  'startWhite',
  'orderTime',
  'designTime',
  'blank',
  'blanks',
  'spoilage',
  'overheadShare',
] as const;

type PriceField = (typeof priceFields)[number];
export type CostField =
  | PriceField
  | (typeof otherFields)[number]
  | `watts-${Heater}`
  | `labour-${LabourRoom}`;

/** The form as typed. */
export type CostsForm = Pick<Costs, 'filmBy'> & { readonly overhead: Costs['overhead']['kind'] } & Readonly<
    Record<CostField, string>
  >;

/** Sentences beside the fields they belong to. */
export type CostProblems = Partial<Record<CostField, string>>;

const decimal = (value: number, { locale }: Ways, most: number): string =>
  new Intl.NumberFormat(locale, { useGrouping: false, maximumFractionDigits: most }).format(value);

/** What a share of the unit that `src` prices by costs, as typed. */
const typedRate = (price: MilliMinor | null, share: number, ways: Ways): string =>
  price === null
    ? ''
    : decimal(
        (price * share) / 10 ** (FINER + minorDigits(ways.currency)),
        ways,
        FINER + minorDigits(ways.currency),
      );

/** How much of a litre, of a kilogram or of what has no other unit a field's price is for. */
const shareOf = (field: PriceField, ways: Ways): number => {
  const { ink, powder } = bulkUnits(ways);
  if (field === 'powder') return kilogramsIn(powder);
  return field === 'colourInk' || field === 'whiteInk' ? litresIn(ink) : 1;
};

const minutes = (seconds: number, ways: Ways): string => `${decimal(seconds / 60, ways, 2)} min`;

export function formOf(costs: Costs, rates: Rates, ways: Ways): CostsForm {
  const { volume, mass, area } = bulkUnits(ways);
  const square = SQUARE_METRES[area];
  const money = (amount: number) => decimal(amount / 10 ** minorDigits(ways.currency), ways, 4);
  const ink = (amount: Microlitres) => `${decimal(toVolume(amount, volume), ways, 3)} ${volume}`;
  const { maintenance, overhead, labour, watts } = costs;
  const price = (field: PriceField, value: MilliMinor | null) => typedRate(value, shareOf(field, ways), ways);
  return {
    filmBy: costs.filmBy,
    colourInk: price('colourInk', costs.colourInk),
    whiteInk: price('whiteInk', costs.whiteInk),
    powder: price('powder', costs.powder),
    energy: price('energy', costs.energy),
    colourRate: decimal(toVolume(rates.colour, volume) * square, ways, 3),
    whiteRate: decimal(toVolume(rates.white, volume) * square, ways, 3),
    powderRate: decimal(toMass(rates.powder, mass) * square, ways, 3),
    day: ink(maintenance.day),
    runsADay: String(maintenance.runsADay),
    cleaning: ink(maintenance.cleaning),
    cleanings: String(maintenance.cleanings),
    startColour: ink(maintenance.start.colour),
    startWhite: ink(maintenance.start.white),
    'watts-printer': String(watts.printer),
    'watts-oven': String(watts.oven),
    'watts-press': String(watts.press),
    'labour-artwork': typedRate(labour.artwork, 1, ways),
    'labour-printing': typedRate(labour.printing, 1, ways),
    'labour-cutting': typedRate(labour.cutting, 1, ways),
    'labour-pressing': typedRate(labour.pressing, 1, ways),
    'labour-packing': typedRate(labour.packing, 1, ways),
    orderTime: minutes(costs.artworkTime.order, ways),
    designTime: minutes(costs.artworkTime.design, ways),
    blank: costs.blank === null ? '' : money(costs.blank),
    blanks: costs.blanks.map((blank) => `${blank.style} ${money(blank.price)}`).join('\n'),
    spoilage: decimal(100 * costs.spoilage, ways, 2),
    overhead: overhead.kind,
    overheadRate: price('overheadRate', overhead.kind === 'hour' ? overhead.rate : null),
    overheadShare: decimal(100 * (overhead.kind === 'share' ? overhead.share : 0.1), ways, 2),
  };
}

/** The form with the values that a shop begins with. */
export const startingForm = (ways: Ways): CostsForm =>
  formOf(startingCosts(ways.currency), startingRates, ways);

/** A line of the list of garments: the style, and its price at the end. */
function readBlank(line: string, currency: string): Costs['blanks'][number] | null {
  const match = /^(.*\S)\s*[:;\t ]\s*(\S+)$/.exec(line.trim());
  const price = parsePrice(match?.[2] ?? '', currency);
  return match && price.ok
    ? { style: (match[1] ?? '').replace(/[:;]\s*$/, '').trim(), price: price.value }
    : null;
}

type Known = { readonly costs: Costs; readonly rates: Rates };

/**
 * Reads the whole form; every field that cannot be used is named with its reason, and one that is as it was shown keeps its value.
 * @param known what the form was opened with
 */
export function readForm(form: CostsForm, known: Known, ways: Ways): Result<Known, CostProblems> {
  const keep = asShown<CostField>(form, formOf(known.costs, known.rates, ways));
  const { maintenance, artworkTime, labour, overhead } = known.costs;
  const problems: CostProblems = {};
  const words = wordsNow();
  const { currency } = ways;
  const { ink, powder, volume, mass, area } = bulkUnits(ways);
  const rate = (
    field: CostField,
    before: MilliMinor | null | undefined,
    parse: (text: string) => Result<MilliMinor, PriceProblem> = (text) => parseFinePrice(text, currency),
  ): MilliMinor | null =>
    keep(field, before, () => {
      if (form[field].trim() === '') return null;
      const read = parse(form[field]);
      if (!read.ok) problems[field] = words.rateProblems[read.problem];
      else if (read.value === 0) problems[field] = words.rateProblems.zero;
      return read.ok && read.value > 0 ? read.value : null;
    });
  const share = (field: CostField, before: number | undefined, most: number): number =>
    keep(field, before, () => {
      const read = parseShare(form[field], most);
      if (!read.ok) problems[field] = words.shareProblems[read.problem];
      return read.ok ? read.value : 0;
    });
  const whole = (field: CostField, least: number, most: number, sentence: string): number => {
    const value = /^\s*\d{1,6}\s*$/.test(form[field]) ? Number(form[field]) : -1;
    if (value < least || value > most) problems[field] = sentence;
    return value;
  };
  const time = (field: CostField, before: Seconds): Seconds =>
    keep(field, before, () => {
      const read = parseDuration(form[field], 'min');
      if (!read.ok) problems[field] = words.durationProblems[read.problem];
      return read.ok ? read.value : asSeconds(0);
    });
  const amount = (field: CostField, before: Microlitres): Microlitres =>
    keep(field, before, () => {
      const read = parseVolume(form[field], volume);
      if (!read.ok) problems[field] = words.amountProblems[read.problem];
      return read.ok ? read.value : (0 as Microlitres);
    });
  const perArea = <Amount extends Microlitres | Milligrams>(
    field: CostField,
    before: Amount,
    parse: (text: string) => Result<Amount, keyof typeof words.amountProblems>,
  ): Amount =>
    keep(field, before, () => {
      const read = parse(form[field]);
      if (!read.ok) problems[field] = words.amountProblems[read.problem];
      else if (read.value === 0) problems[field] = words.costsForm.zeroRate;
      return (read.ok ? Math.round(read.value / SQUARE_METRES[area]) : 0) as Amount;
    });
  const inkPrice = (text: string) => parseVolumePrice(text, currency, ink);
  const blanks = keep('blanks', known.costs.blanks, () =>
    form.blanks.split('\n').flatMap((line) => {
      if (line.trim() === '') return [];
      const blank = readBlank(line, currency);
      if (!blank) problems.blanks = words.costsForm.blanksProblem(line.trim());
      return blank ?? [];
    }),
  );
  const blank = keep('blank', known.costs.blank, () => {
    const read = parsePrice(form.blank, currency);
    if (!read.ok && read.problem !== 'empty') problems.blank = words.moneyProblems[read.problem];
    return read.ok ? read.value : null;
  });
  const watts = (by: Heater) => whole(`watts-${by}`, 0, 100_000, words.costsForm.wattsProblem);
  const costs: Costs = {
    filmBy: form.filmBy,
    colourInk: rate('colourInk', known.costs.colourInk, inkPrice),
    whiteInk: rate('whiteInk', known.costs.whiteInk, inkPrice),
    powder: rate('powder', known.costs.powder, (text) => parseMassPrice(text, currency, powder)),
    maintenance: {
      day: amount('day', maintenance.day),
      runsADay: whole('runsADay', 1, 50, words.costsForm.wholeProblem),
      cleaning: amount('cleaning', maintenance.cleaning),
      cleanings: whole('cleanings', 0, 50, words.costsForm.cleaningsProblem),
      start: {
        colour: amount('startColour', maintenance.start.colour),
        white: amount('startWhite', maintenance.start.white),
      },
    },
    energy: rate('energy', known.costs.energy),
    watts: { printer: watts('printer'), oven: watts('oven'), press: watts('press') },
    labour: {
      artwork: rate('labour-artwork', labour.artwork),
      printing: rate('labour-printing', labour.printing),
      cutting: rate('labour-cutting', labour.cutting),
      pressing: rate('labour-pressing', labour.pressing),
      packing: rate('labour-packing', labour.packing),
    },
    artworkTime: {
      order: time('orderTime', artworkTime.order),
      design: time('designTime', artworkTime.design),
    },
    blank,
    blanks,
    spoilage: share('spoilage', known.costs.spoilage, 1),
    overhead:
      form.overhead === 'hour'
        ? {
            kind: 'hour',
            rate: rate('overheadRate', overhead.kind === 'hour' ? overhead.rate : undefined),
          }
        : {
            kind: 'share',
            share: share('overheadShare', overhead.kind === 'share' ? overhead.share : undefined, 10),
          },
  };
  const rates: Rates = {
    colour: perArea('colourRate', known.rates.colour, (text) => parseVolume(text, volume)),
    white: perArea('whiteRate', known.rates.white, (text) => parseVolume(text, volume)),
    powder: perArea('powderRate', known.rates.powder, (text) => parseMass(text, mass)),
  };
  return Object.keys(problems).length > 0 ? fail(problems) : ok({ costs, rates });
}
