import type { StockUnit } from '../../src/model';
import { fromMass, fromVolume, um } from '../../src/units';
import { grams, millilitres } from '../parts/fields/amounts';
import type { Codec } from '../parts/fields/codec';
import { bareFilmLength } from '../parts/fields/lengths';
import { whole } from '../parts/fields/numbers';
import { bulkUnits, type Ways } from '../words/format';

/** The unit that a bare figure of an amount is in, as a label names it. */
export const unitLabel = (unit: StockUnit, ways: Ways): string => {
  const labels = { length: bulkUnits(ways).length, sheets: '', volume: 'ml', mass: 'g', pieces: '' };
  return labels[unit];
};

/** A figure with a unit of its own, for records that keep it bare. */
const bare = <Value extends number>(codec: Codec<Value>, of: (figure: number) => Value): Codec<number> => ({
  ...codec,
  show: (figure, reader) => codec.show(of(figure), reader),
});

const pieces = whole(0, 999_999, ({ stock }) => stock.wholeNumber);

const codecs: Readonly<Record<StockUnit, Codec<number>>> = {
  length: bare(bareFilmLength('zero'), um),
  sheets: pieces,
  volume: bare(millilitres(3), (microlitres) => fromVolume(microlitres / 1000, 'ml')),
  mass: bare(grams(3), (milligrams) => fromMass(milligrams / 1000, 'g')),
  pieces,
};

/** An amount in stock, whole in the item's base unit, not below zero. */
export const amountIn = (unit: StockUnit): Codec<number> => codecs[unit];
