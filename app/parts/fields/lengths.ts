import { fail, type Micrometres, ok, parseLength, toUnit } from '../../../src/units';
import type { Words } from '../../words';
import { bulkUnits, isOnTape, rulerLength, typedLength, typedNumber, type Ways } from '../../words/format';
import { type Codec, told } from './codec';

type Least = 'zero' | 'above-zero';

/** A length of film as it is typed back into a field, in metres or feet. */
const typedFilm = (length: Micrometres, ways: Ways): string =>
  typedNumber(toUnit(length, bulkUnits(ways).length), ways.locale, 3);

const readFilm =
  (least: Least): Codec<Micrometres>['read'] =>
  (text, reader) =>
    told(parseLength(text, bulkUnits(reader).length, least), reader.words.lengthProblems);

/** A length on the bench, in millimetres or inches: what was typed in sixteenths stays so. */
export const shortLength = (least: Least): Codec<Micrometres> => ({
  show: (length, reader) =>
    reader.unit === 'in' && isOnTape(length)
      ? rulerLength(length, reader).replaceAll('\u00a0', ' ')
      : `${typedLength(length, reader)} ${reader.unit}`,
  read: (text, { unit, words }) => told(parseLength(text, unit, least), words.lengthProblems),
});

/** A length to hundredths of a millimetre or ten thousandths of an inch, as it is shown. */
const typedFine = (length: Micrometres, { unit, locale }: Ways): string =>
  `${typedNumber(toUnit(length, unit), locale, unit === 'mm' ? 2 : 4)} ${unit}`;

/** A length so small that it is told finely, up to a most, which may be shown rounded up. */
export const fineLength = (
  most: Micrometres,
  problem: (words: Words, most: string) => string,
): Codec<Micrometres> => ({
  show: typedFine,
  read(text, reader) {
    const read = told(parseLength(text, reader.unit, 'zero'), reader.words.lengthProblems);
    if (!read.ok || read.value <= most) return read;
    return typedFine(read.value, reader) === typedFine(most, reader)
      ? ok(most)
      : fail(problem(reader.words, typedFine(most, reader)));
  },
});

/** A length of film, in metres or feet. */
export const filmLength = (least: Least): Codec<Micrometres> => ({
  show: (length, reader) => `${typedFilm(length, reader)} ${bulkUnits(reader).length}`,
  read: readFilm(least),
});

/** A length of film under a label that names its unit. */
export const bareFilmLength = (least: Least): Codec<Micrometres> => ({
  show: typedFilm,
  read: readFilm(least),
  inputMode: 'decimal',
});
