import type { StockItem, StockUnit } from '../../src/model';
import { optional } from '../parts/fields/codec';
import { type Entry, fieldsIn, formTable } from '../parts/fields/form';
import { type Place, placesIn } from '../parts/fields/place';
import { text } from '../parts/fields/text';
import { amountIn, unitLabel } from './amounts';

/** What is written on a box, and when more is ordered. */
export type Box = Pick<StockItem, 'lot' | 'bestBefore' | 'opened' | 'reorder' | 'order'>;

const field = fieldsIn(({ stock }) => stock);

/** The fields of a box, wherever in a record it lies. */
export const boxFields = <Whole>(box: Place<Whole, Box>, unit: StockUnit) => ({
  lot: field(box.to('lot'), text, 'lotLabel'),
  reorder: field(box.to('reorder'), optional(amountIn(unit)), (words, ways) =>
    words.reorderLabel(unitLabel(unit, ways)),
  ),
  order: field(box.to('order'), text, 'orderLabel'),
});

export const boxTable = (unit: StockUnit) =>
  formTable({ name: 'box', fields: boxFields(placesIn<Box>(), unit) });

type BoxField = keyof ReturnType<typeof boxTable>['fields'];

/** The box of an item that nobody may have noted anything of. */
export const boxEntry = (known: Box | null): Entry<Box, BoxField> => {
  const { lot, bestBefore, opened, reorder, order }: Box = known ?? {
    lot: '',
    bestBefore: null,
    opened: null,
    reorder: null,
    order: '',
  };
  return { record: { lot, bestBefore, opened, reorder, order }, typed: {} };
};
