import type { Blank, StockUnit } from '../../src/model';
import { fail, ok } from '../../src/units';
import type { Codec } from '../parts/fields/codec';
import { type Entry, fieldsIn, formTable } from '../parts/fields/form';
import { placesIn } from '../parts/fields/place';
import { someText, text } from '../parts/fields/text';
import { amountIn, unitLabel } from './amounts';
import { type Box, boxEntry, boxFields } from './box-form';

/** A size of a garment and how many of it there are. */
interface Size {
  readonly size: string;
  readonly count: number;
}

/** Things of one name that come into stock. */
export interface Things {
  readonly of: 'things';
  readonly name: string;
  readonly amount: number;
  readonly box: Box;
}

/** Garments of one style that come into stock, by size. */
export interface Garments {
  readonly of: 'garments';
  readonly style: string;
  readonly colour: string;
  readonly sizes: readonly Size[];
  readonly box: Box;
}

export type Added = Things | Garments;

const field = fieldsIn(({ stock }) => stock);
const added = placesIn<Added>();
const things = added.only((each): each is Things => each.of === 'things');
const garments = added.only((each): each is Garments => each.of === 'garments');

/** Sizes with their counts: `S 10, M 20, L 15`. */
const sizes: Codec<readonly Size[]> = {
  show: (all) => all.map(({ size, count }) => `${size} ${count}`).join(', '),
  read(typed, { words }) {
    const parts = typed.split(/[,;\n]+/).filter((part) => part.trim() !== '');
    const read = parts.flatMap((part): Size[] => {
      const [, size, count] = /^\s*(\S.*?)(?:\s*[:=×]|\s+x|x(?=\d)|\s)\s*(\d{1,5})\s*$/.exec(part) ?? [];
      return size && count ? [{ size, count: Number(count) }] : [];
    });
    return read.length > 0 && read.length === parts.length ? ok(read) : fail(words.stock.sizesProblem);
  },
};

/** A name that nothing else in stock has. */
const nameBeside = (taken: ReadonlySet<string>): Codec<string> => ({
  ...text,
  read(typed, reader) {
    const { stock } = reader.words;
    const name = someText(() => stock.nameEmpty).read(typed, reader);
    return name.ok && taken.has(name.value) ? fail(stock.nameTaken) : name;
  },
});

/**
 * @param unit what is added is counted in
 * @param taken names of what is in stock
 */
export const addTable = (unit: StockUnit, taken: ReadonlySet<string>) =>
  formTable({
    name: 'added',
    fields: {
      name: field(things.to('name'), nameBeside(taken), 'name'),
      amount: field(things.to('amount'), amountIn(unit), (words, ways) =>
        words.howMuch[unit](unitLabel(unit, ways)),
      ),
      style: field(
        garments.to('style'),
        someText(({ stock }) => stock.styleEmpty),
        'style',
      ),
      colour: field(garments.to('colour'), text, 'colour'),
      sizes: field(garments.to('sizes'), sizes, 'sizes', { hint: 'sizesHint' }),
      ...boxFields(added.to('box'), unit),
    },
    problemsOf: (each, { words: { stock } }) =>
      each.of === 'things' && each.amount === 0 ? { amount: stock.aboveZero } : {},
  });

const { record: box } = boxEntry(null);
/** Nothing said yet of either. */
export const nothingOf = {
  things: { of: 'things', name: '', amount: 0, box },
  garments: { of: 'garments', style: '', colour: '', sizes: [], box },
} satisfies { readonly [Of in Added['of']]: Extract<Added, { of: Of }> };

/** What is to be typed; of garments that an order lacks, all but how many there are is known. */
export const addEntry = (
  garment: Pick<Blank, 'style' | 'colour' | 'size'> | null,
): Entry<Added, keyof ReturnType<typeof addTable>['fields']> => ({
  record: garment ? nothingOf.garments : nothingOf.things,
  typed: {
    name: '',
    amount: '',
    style: garment?.style ?? '',
    colour: garment?.colour ?? '',
    sizes: garment ? `${garment.size} ` : '',
  },
});
