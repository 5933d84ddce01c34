import type { Pricing, Settings } from '../../src/model';
import { fail, ok, parseShare } from '../../src/units';
import type { Codec } from '../parts/fields/codec';
import { type Entry, fieldsIn, formTable } from '../parts/fields/form';
import { money, pricePerLength } from '../parts/fields/money';
import { share, whole } from '../parts/fields/numbers';
import { placesIn } from '../parts/fields/place';
import { text } from '../parts/fields/text';
import type { Words } from '../words';
import { bulkUnits, type Ways } from '../words/format';

/** How a shop prices its work, and who its quotes come from. */
type ShopPrices = Pick<Settings, 'pricing' | 'letterhead' | 'mark'>;

type Aim = Pricing['aim'];

/** A margin stays below the whole price. */
const isTooMuch = ({ kind, share }: Aim): boolean => kind === 'margin' && share > 0.99;

/** The share that prices aim at, of a kind. */
export const aimShare = (kind: Aim['kind']): Codec<number> => ({
  ...share(100),
  read(text, reader) {
    const read = share(100).read(text, reader);
    return read.ok && isTooMuch({ kind, share: read.value }) ? fail(reader.words.prices.marginProblem) : read;
  },
});

/** What is taken off from a count on, in the order of the counts: `24: 5%; 48: 10%`. */
const breaks: Codec<Pricing['breaks']> = {
  show: (value, reader) => value.map(({ from, off }) => `${from}: ${share().show(off, reader)}%`).join('; '),
  read(typed, { words }) {
    const found: Pricing['breaks'] = [];
    for (const part of typed.split(/[;\n]/)) {
      if (part.trim() === '') continue;
      const match = /^\s*(\d{1,6})\s*[:=–-]\s*(.+)$/.exec(part);
      const off = parseShare(match?.[2] ?? '');
      const from = Number(match?.[1]);
      if (!off.ok || !(from >= 2)) return fail(words.prices.breaksProblem);
      found.push({ from, off: off.value });
    }
    return ok(found.sort((a, b) => a.from - b.from));
  },
};

type Said = Words['prices'];
type Amount = 'placement' | 'artworkFee' | 'minimum';
const inMoney =
  (name: Amount) =>
  (words: Said, { currency }: Ways) =>
    `${words[name]} (${currency})`;

const field = fieldsIn(({ prices }) => prices);
const shop = placesIn<ShopPrices>();
const pricing = shop.to('pricing');
const letterhead = shop.to('letterhead');
const tax = pricing.to('tax').only((each) => each !== null);
const days = whole(1, 365, ({ prices }) => prices.daysProblem);

export const pricesTable = formTable({
  name: 'prices',
  fields: {
    placement: field(
      pricing.when(({ by }) => by === 'placement').to('placement'),
      money,
      inMoney('placement'),
    ),
    length: field(
      pricing.when(({ by }) => by === 'length').to('length'),
      pricePerLength,
      (words, ways) => `${words.length(bulkUnits(ways).length)} (${ways.currency})`,
    ),
    aimShare: field(pricing.to('aim').to('share'), share(100), 'aimShare'),
    breaks: field(pricing.to('breaks'), breaks, 'breaks', { hint: 'breaksHint' }),
    artworkFee: field(pricing.to('artworkFee'), money, inMoney('artworkFee')),
    rush: field(pricing.to('rush'), share(10), 'rush'),
    minimum: field(pricing.to('minimum'), money, inMoney('minimum')),
    deposit: field(pricing.to('deposit'), share(), 'deposit'),
    taxName: field(tax.to('name'), text, 'taxName'),
    taxShare: field(tax.to('share'), share(), 'taxShare'),
    name: field(letterhead.to('name'), text, 'name'),
    address: field(letterhead.to('address'), text, 'address', { rows: 3 }),
    validDays: field(pricing.to('validDays'), days, 'validDays'),
  },
  problemsOf({ pricing: { aim, by, placement, length } }, { words: { prices: words } }) {
    return {
      ...(isTooMuch(aim) ? { aimShare: words.marginProblem } : {}),
      // What nobody is asked for may be zero; once prints are sold by it, it may not.
      ...(by === 'placement' && placement === 0 ? { placement: words.zeroPrice } : {}),
      ...(by === 'length' && length.amount === 0 ? { length: words.zeroPrice } : {}),
    };
  },
});

type PriceField = keyof typeof pricesTable.fields;

export const pricesEntry = ({ pricing, letterhead, mark }: ShopPrices): Entry<ShopPrices, PriceField> => ({
  record: { pricing, letterhead, mark },
  typed: {},
});

/** Tax of a kind, or none; what there was before comes back when it is chosen again. */
export const taxOf = (
  kind: NonNullable<Pricing['tax']>['kind'] | 'none',
  opened: Pricing['tax'],
): Pricing['tax'] => (kind === 'none' ? null : { ...(opened ?? { name: '', share: 0 }), kind });
