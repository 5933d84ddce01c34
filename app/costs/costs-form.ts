import { startingCosts, startingRates } from '../../src/costing';
import type { Costs, Heater, LabourRoom, Rates } from '../../src/model';
import {
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
  toMass,
  toVolume,
} from '../../src/units';
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

/** Reads the whole form; every field that cannot be used is named with its reason. */
export function readForm(form: CostsForm, ways: Ways): Result<{ costs: Costs; rates: Rates }, CostProblems> {
  const problems: CostProblems = {};
  const words = wordsNow();
  const { currency } = ways;
  const { ink, powder, volume, mass, area } = bulkUnits(ways);
  const rate = (field: CostField, read: Result<MilliMinor, PriceProblem>): MilliMinor | null => {
    if (form[field].trim() === '') return null;
    if (!read.ok) problems[field] = words.rateProblems[read.problem];
    else if (read.value === 0) problems[field] = words.rateProblems.zero;
    return read.ok && read.value > 0 ? read.value : null;
  };
  const plain = (field: CostField) => rate(field, parseFinePrice(form[field], currency));
  const share = (field: CostField, most: number): number => {
    const read = parseShare(form[field], most);
    if (!read.ok) problems[field] = words.shareProblems[read.problem];
    return read.ok ? read.value : 0;
  };
  const whole = (field: CostField, least: number, most: number, sentence: string): number => {
    const value = /^\s*\d{1,6}\s*$/.test(form[field]) ? Number(form[field]) : -1;
    if (value < least || value > most) problems[field] = sentence;
    return value;
  };
  const time = (field: CostField) => {
    const read = parseDuration(form[field], 'min');
    if (!read.ok) problems[field] = words.durationProblems[read.problem];
    return read.ok ? read.value : (0 as never);
  };
  const amount = (field: CostField): Microlitres => {
    const read = parseVolume(form[field], volume);
    if (!read.ok) problems[field] = words.amountProblems[read.problem];
    return read.ok ? read.value : (0 as Microlitres);
  };
  const perArea = <Amount extends Microlitres | Milligrams>(
    field: CostField,
    read: Result<Amount, keyof typeof words.amountProblems>,
  ): Amount => {
    if (!read.ok) problems[field] = words.amountProblems[read.problem];
    else if (read.value === 0) problems[field] = words.costsForm.zeroRate;
    return (read.ok ? Math.round(read.value / SQUARE_METRES[area]) : 0) as Amount;
  };
  const blanks = form.blanks.split('\n').flatMap((line) => {
    if (line.trim() === '') return [];
    const blank = readBlank(line, currency);
    if (!blank) problems.blanks = words.costsForm.blanksProblem(line.trim());
    return blank ?? [];
  });
  const blank = parsePrice(form.blank, currency);
  if (!blank.ok && blank.problem !== 'empty') problems.blank = words.moneyProblems[blank.problem];
  const watts = (by: Heater) => whole(`watts-${by}`, 0, 100_000, words.costsForm.wattsProblem);
  const costs: Costs = {
    filmBy: form.filmBy,
    colourInk: rate('colourInk', parseVolumePrice(form.colourInk, currency, ink)),
    whiteInk: rate('whiteInk', parseVolumePrice(form.whiteInk, currency, ink)),
    powder: rate('powder', parseMassPrice(form.powder, currency, powder)),
    maintenance: {
      day: amount('day'),
      runsADay: whole('runsADay', 1, 50, words.costsForm.wholeProblem),
      cleaning: amount('cleaning'),
      cleanings: whole('cleanings', 0, 50, words.costsForm.cleaningsProblem),
    },
    energy: plain('energy'),
    watts: { printer: watts('printer'), oven: watts('oven'), press: watts('press') },
    labour: {
      artwork: plain('labour-artwork'),
      printing: plain('labour-printing'),
      cutting: plain('labour-cutting'),
      pressing: plain('labour-pressing'),
      packing: plain('labour-packing'),
    },
    artworkTime: { order: time('orderTime'), design: time('designTime') },
    blank: blank.ok ? blank.value : null,
    blanks,
    spoilage: share('spoilage', 1),
    overhead:
      form.overhead === 'hour'
        ? { kind: 'hour', rate: plain('overheadRate') }
        : { kind: 'share', share: share('overheadShare', 10) },
  };
  const rates: Rates = {
    colour: perArea('colourRate', parseVolume(form.colourRate, volume)),
    white: perArea('whiteRate', parseVolume(form.whiteRate, volume)),
    powder: perArea('powderRate', parseMass(form.powderRate, mass)),
  };
  return Object.keys(problems).length > 0 ? fail(problems) : ok({ costs, rates });
}
