import { fail, ok, parseDuration, parseShare, type Seconds } from '../../../src/units';
import type { Words } from '../../words';
import { typedNumber, type Ways } from '../../words/format';
import { type Codec, told } from './codec';

/** A whole number of what is counted, from the least to the most. */
export const whole = (
  least: number,
  most: number,
  problem: (words: Words, ways: Ways) => string,
): Codec<number> => ({
  show: String,
  read(text, reader) {
    const value = /^\s*\d{1,6}\s*$/.test(text) ? Number(text) : -1;
    return value >= least && value <= most ? ok(value) : fail(problem(reader.words, reader));
  },
  inputMode: 'numeric',
});

/** A share of something in per cent, up to a most: 1 is all of it. */
export const share = (most = 1): Codec<number> => ({
  show: (value, { locale }) => typedNumber(100 * value, locale, 2),
  read: (text, { words }) => told(parseShare(text, most), words.shareProblems),
});

/** A length of time; a bare number is one of the unit. */
export const duration = (unit: 's' | 'min'): Codec<Seconds> => ({
  show: (value) => (unit === 'min' && value % 60 === 0 ? `${value / 60} min` : `${value} s`),
  read: (text, { words }) => told(parseDuration(text, unit), words.durationProblems),
});

/** A length of time in seconds under a label that says so. */
export const seconds: Codec<Seconds> = {
  show: String,
  read: (text, { words }) => told(parseDuration(text, 's'), words.durationProblems),
};

/** A length of time in minutes under a label that says so. */
export const minutes: Codec<Seconds> = {
  show: (value, { locale }) => typedNumber(value / 60, locale, 1),
  read: (text, { words }) => told(parseDuration(text, 'min'), words.durationProblems),
  inputMode: 'decimal',
};
