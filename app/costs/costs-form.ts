import { startingCosts, startingRates } from '../../src/costing';
import type { Costs, Heater, LabourRoom, Settings } from '../../src/model';
import { fail, ok, parsePrice } from '../../src/units';
import { massPerArea, volume, volumePerArea } from '../parts/fields/amounts';
import { type Codec, optional } from '../parts/fields/codec';
import { type Entry, fieldsIn, formTable } from '../parts/fields/form';
import { inkPrice, money, powderPrice, priceEach, typedMoney } from '../parts/fields/money';
import { duration, share, whole } from '../parts/fields/numbers';
import { placesIn } from '../parts/fields/place';
import type { Words } from '../words';
import { bulkUnits, type Ways } from '../words/format';

/** What a shop pays, and what its prints take. */
type ShopCosts = Pick<Settings, 'costs' | 'rates'>;

/** A line of the list of garments: the style, and its price at the end. */
function readBlank(line: string, currency: string): Costs['blanks'][number] | null {
  const match = /^(.*\S)\s*[:;\t ]\s*(\S+)$/.exec(line.trim());
  const price = parsePrice(match?.[2] ?? '', currency);
  return match && price.ok
    ? { style: (match[1] ?? '').replace(/[:;]\s*$/, '').trim(), price: price.value }
    : null;
}

/** Garments and their prices, a line each. */
const blanks: Codec<Costs['blanks']> = {
  show: (value, ways) => value.map(({ style, price }) => `${style} ${typedMoney(price, ways)}`).join('\n'),
  read(text, { currency, words }) {
    const found: Costs['blanks'] = [];
    for (const line of text.split('\n')) {
      if (line.trim() === '') continue;
      const blank = readBlank(line, currency);
      if (!blank) return fail(words.costsForm.blanksProblem(line.trim()));
      found.push(blank);
    }
    return ok(found);
  },
};

type Said = Words['costsForm'];

/** A label that names the currency and what the price is for. */
const priced =
  (label: (words: Said) => string, per: (units: ReturnType<typeof bulkUnits>) => string) =>
  (words: Said, ways: Ways) =>
    words.price(label(words), ways.currency, per(bulkUnits(ways)));

const hourly = (label: (words: Said) => string) => priced(label, () => 'h');

const field = fieldsIn(({ costsForm }) => costsForm);
const shop = placesIn<ShopCosts>();
const costs = shop.to('costs');
const rates = shop.to('rates');
const maintenance = costs.to('maintenance');
const time = duration('min');
const power = whole(0, 100_000, ({ costsForm }) => costsForm.wattsProblem);
const inkRate = (label: 'colourRate' | 'whiteRate') => (words: Said, ways: Ways) =>
  words[label](`${bulkUnits(ways).volume}/${bulkUnits(ways).area}`);

const watts = (by: Heater) => field(costs.to('watts').to(by), power, (words) => words.watts[by]);

const labour = (room: LabourRoom) =>
  field(
    costs.to('labour').to(room),
    optional(priceEach),
    hourly((words) => words.labour[room]),
  );

/** What this shop pays. */
export const costsTable = formTable({
  name: 'costs',
  fields: {
    colourInk: field(
      costs.to('colourInk'),
      optional(inkPrice),
      priced(
        (words) => words.colourInk,
        ({ ink }) => ink,
      ),
    ),
    whiteInk: field(
      costs.to('whiteInk'),
      optional(inkPrice),
      priced(
        (words) => words.whiteInk,
        ({ ink }) => ink,
      ),
    ),
    powder: field(
      costs.to('powder'),
      optional(powderPrice),
      priced(
        (words) => words.powder,
        ({ powder }) => powder,
      ),
    ),
    colourRate: field(rates.to('colour'), volumePerArea, inkRate('colourRate')),
    whiteRate: field(rates.to('white'), volumePerArea, inkRate('whiteRate')),
    powderRate: field(rates.to('powder'), massPerArea, (words, ways) =>
      words.powderRate(`${bulkUnits(ways).mass}/${bulkUnits(ways).area}`),
    ),
    day: field(maintenance.to('day'), volume, 'day'),
    runsADay: field(
      maintenance.to('runsADay'),
      whole(1, 50, ({ costsForm }) => costsForm.wholeProblem),
      'runsADay',
    ),
    cleaning: field(maintenance.to('cleaning'), volume, 'cleaning'),
    cleanings: field(
      maintenance.to('cleanings'),
      whole(0, 50, ({ costsForm }) => costsForm.cleaningsProblem),
      'cleanings',
    ),
    startColour: field(maintenance.to('start').to('colour'), volume, 'startColour'),
    startWhite: field(maintenance.to('start').to('white'), volume, 'startWhite'),
    energy: field(
      costs.to('energy'),
      optional(priceEach),
      priced(
        (words) => words.energy,
        () => 'kWh',
      ),
    ),
    'watts-printer': watts('printer'),
    'watts-oven': watts('oven'),
    'watts-press': watts('press'),
    'labour-artwork': labour('artwork'),
    'labour-printing': labour('printing'),
    'labour-cutting': labour('cutting'),
    'labour-pressing': labour('pressing'),
    'labour-packing': labour('packing'),
    orderTime: field(costs.to('artworkTime').to('order'), time, 'orderTime'),
    designTime: field(costs.to('artworkTime').to('design'), time, 'designTime'),
    blank: field(
      costs.to('blank'),
      optional(money),
      priced(
        (words) => words.blank,
        () => '1',
      ),
    ),
    blanks: field(costs.to('blanks'), blanks, 'blanks', { rows: 3, hint: 'blanksHint' }),
    spoilage: field(costs.to('spoilage'), share(), 'spoilage'),
    overheadRate: field(
      costs
        .to('overhead')
        .only((overhead) => overhead.kind === 'hour')
        .to('rate'),
      optional(priceEach),
      hourly((words) => words.overheadRate),
    ),
    overheadShare: field(
      costs
        .to('overhead')
        .only((overhead) => overhead.kind === 'share')
        .to('share'),
      share(10),
      'overheadShare',
    ),
  },
});

export type CostField = keyof typeof costsTable.fields;

export const costsEntry = ({ costs, rates }: ShopCosts): Entry<ShopCosts, CostField> => ({
  record: { costs, rates },
  typed: {},
});

/** What a shop begins with. */
export const startingEntry = ({ currency, unit }: Pick<Ways, 'currency' | 'unit'>) =>
  costsEntry({ costs: startingCosts(currency), rates: startingRates[unit] });

/** How what is beside the work is reckoned; what was there before comes back when it is chosen again. */
export function overheadOf(kind: Costs['overhead']['kind'], opened: Costs['overhead']): Costs['overhead'] {
  if (kind === opened.kind) return opened;
  return kind === 'hour' ? { kind, rate: null } : { kind, share: 0.1 };
}
