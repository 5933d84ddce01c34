import {
  fail,
  fromDegrees,
  ok,
  parseShare,
  parseTemperature,
  type TemperatureUnit,
  toDegrees,
} from '../../../src/units';
import { typedNumber } from '../../words/format';
import { type Codec, told } from './codec';

/** The temperature of a room, kept in degrees Celsius, under a label that names the unit. */
export const roomTemperature = (unit: TemperatureUnit): Codec<number> => ({
  show: (celsius, { locale }) => typedNumber(toDegrees(fromDegrees(celsius, 'C'), unit), locale, 1),
  read(text, { words }) {
    const read = told(parseTemperature(text, unit), words.temperatureProblems);
    return read.ok ? ok(toDegrees(read.value, 'C')) : read;
  },
  inputMode: 'decimal',
});

/** Relative humidity in per cent: 1 is all of it. */
export const humidity: Codec<number> = {
  show: (share, { locale }) => typedNumber(100 * share, locale, 0),
  read(text, { words }) {
    const read = parseShare(text);
    return read.ok ? read : fail(words.closing.humidityProblem);
  },
  inputMode: 'decimal',
};
