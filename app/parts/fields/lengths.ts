import { type Micrometres, parseLength, toUnit } from '../../../src/units';
import { bulkUnits, typedLength, typedNumber, type Ways } from '../../words/format';
import { type Codec, told } from './codec';

type Least = 'zero' | 'above-zero';

/** A length of film as it is typed back into a field, in metres or feet. */
const typedFilm = (length: Micrometres, ways: Ways): string =>
  typedNumber(toUnit(length, bulkUnits(ways).length), ways.locale, 3);

const readFilm =
  (least: Least): Codec<Micrometres>['read'] =>
  (text, reader) =>
    told(parseLength(text, bulkUnits(reader).length, least), reader.words.lengthProblems);

/** A length on the bench, in millimetres or inches. */
export const benchLength = (least: Least): Codec<Micrometres> => ({
  show: (length, reader) => `${typedLength(length, reader)} ${reader.unit}`,
  read: (text, { unit, words }) => told(parseLength(text, unit, least), words.lengthProblems),
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
