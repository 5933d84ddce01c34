import {
  fail,
  fromMass,
  fromVolume,
  type Microlitres,
  type Milligrams,
  ok,
  parseMass,
  parseVolume,
  toMass,
  toVolume,
} from '../../../src/units';
import { bulkUnits, SQUARE_METRES, typedNumber } from '../../words/format';
import { type Codec, type Reader, told } from './codec';

/** A volume of ink as bottles are sold, with its unit. */
export const volume: Codec<Microlitres> = {
  show(value, reader) {
    const { volume: unit } = bulkUnits(reader);
    return `${typedNumber(toVolume(value, unit), reader.locale, 3)} ${unit}`;
  },
  read: (text, reader) => told(parseVolume(text, bulkUnits(reader).volume), reader.words.amountProblems),
};

/** A volume in millilitres under a label that says so, with so many decimals at most. */
export const millilitres = (most: number): Codec<Microlitres> => ({
  show: (value, { locale }) => typedNumber(toVolume(value, 'ml'), locale, most),
  read: (text, { words }) => told(parseVolume(text, 'ml'), words.closing.amountProblems),
  inputMode: 'decimal',
});

/** A mass in grams under a label that says so, with so many decimals at most. */
export const grams = (most: number): Codec<Milligrams> => ({
  show: (value, { locale }) => typedNumber(toMass(value, 'g'), locale, most),
  read: (text, { words }) => told(parseMass(text, 'g'), words.closing.amountProblems),
  inputMode: 'decimal',
});

const areaOf = (reader: Reader) => SQUARE_METRES[bulkUnits(reader).area];

/** Ink for an area printed in full, kept for a square metre; none would be a print without ink. */
export const volumePerArea: Codec<Microlitres> = {
  show: (value, reader) =>
    typedNumber(toVolume(value, bulkUnits(reader).volume) * areaOf(reader), reader.locale, 3),
  read(text, reader) {
    const read = volume.read(text, reader);
    if (!read.ok) return read;
    if (read.value === 0) return fail(reader.words.costsForm.zeroRate);
    return ok(fromVolume(toVolume(read.value, 'l') / areaOf(reader), 'l'));
  },
};

/** Powder for an area of white, kept for a square metre; not none. */
export const massPerArea: Codec<Milligrams> = {
  show: (value, reader) =>
    typedNumber(toMass(value, bulkUnits(reader).mass) * areaOf(reader), reader.locale, 3),
  read(text, reader) {
    const read = told(parseMass(text, bulkUnits(reader).mass), reader.words.amountProblems);
    if (!read.ok) return read;
    if (read.value === 0) return fail(reader.words.costsForm.zeroRate);
    return ok(fromMass(toMass(read.value, 'kg') / areaOf(reader), 'kg'));
  },
};
