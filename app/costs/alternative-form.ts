import type { Alternative } from '../../src/model';
import { asMinor, fromMm, fromUnit } from '../../src/units';
import { type Entry, fieldsIn, formTable } from '../parts/fields/form';
import { filmLength, shortLength } from '../parts/fields/lengths';
import { money } from '../parts/fields/money';
import { whole } from '../parts/fields/numbers';
import { place, placesIn } from '../parts/fields/place';
import { someText } from '../parts/fields/text';
import { bulkUnits, type Ways } from '../words/format';

const field = fieldsIn(({ makeOrBuy }) => makeOrBuy);
const bought = placesIn<Alternative>();
const byLength = bought.only((each) => each.kind === 'length');
const decorated = bought.only((each) => each.kind === 'decorated');

/** The price stays as typed when what it is for changes. */
const price = place<Alternative, ReturnType<typeof asMinor>>(
  (each) => (each.kind === 'length' ? each.price.amount : each.price),
  (each, amount) =>
    each.kind === 'length' ? { ...each, price: { ...each.price, amount } } : { ...each, price: amount },
);

const name = someText(({ makeOrBuy }) => makeOrBuy.nameEmpty);
const days = whole(0, 999, ({ makeOrBuy }) => makeOrBuy.daysProblem);
const colours = whole(1, 20, ({ makeOrBuy }) => makeOrBuy.coloursProblem);

/** A way to buy, of any kind, in the order its fields are asked for. */
export const alternativeTable = formTable({
  name: 'alternative',
  fields: {
    name: field(bought.to('name'), name, 'name'),
    setUp: field(decorated.to('setUp'), money, (words, { currency }) => `${words.setUp} (${currency})`),
    colours: field(decorated.to('colours'), colours, 'colours'),
    price: field(price, money, (words, { currency }, { kind }) => `${words.price[kind]} (${currency})`),
    per: field(byLength.to('price').to('per'), filmLength('above-zero'), 'per'),
    width: field(byLength.to('width'), shortLength('above-zero'), 'width'),
    shipping: field(bought.to('shipping'), money, (words, { currency }) => `${words.shipping} (${currency})`),
    days: field(bought.to('days'), days, 'days'),
  },
});

export type AlternativeField = keyof typeof alternativeTable.fields;

/** A way to buy as it begins; the width is a trade one (common practice, no source). */
function startingAlternative(kind: Alternative['kind'], id: string, ways: Ways): Alternative {
  const nothing = asMinor(0);
  const common = { id, name: '', shipping: nothing, days: 3 };
  switch (kind) {
    case 'length':
      return {
        ...common,
        kind,
        price: { amount: nothing, per: fromUnit(1, bulkUnits(ways).length) },
        width: fromMm(560),
      };
    case 'piece':
      return { ...common, kind, price: nothing };
    case 'decorated':
      return { ...common, kind, price: nothing, setUp: nothing, colours: 1 };
  }
}

/** A way to buy that is known, or one that is about to be typed. */
export const alternativeEntry = (
  known: Alternative | null,
  newId: () => string,
  ways: Ways,
): Entry<Alternative, AlternativeField> =>
  known
    ? { record: known, typed: known.kind === 'decorated' ? {} : { setUp: '' } }
    : { record: startingAlternative('length', newId(), ways), typed: { name: '', price: '', setUp: '' } };

/** Another kind of the same way, at the same figure; what a kind had before comes back when it is chosen again. */
export function ofKind(kind: Alternative['kind'], opened: Alternative, ways: Ways): Alternative {
  if (kind === opened.kind) return opened;
  const { id, name, shipping, days } = opened;
  const another = { ...startingAlternative(kind, id, ways), name, shipping, days };
  return price.put(another, price.get(opened) ?? asMinor(0));
}
