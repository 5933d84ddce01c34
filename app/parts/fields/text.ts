import { fail, ok } from '../../../src/units';
import type { Words } from '../../words';
import type { Codec } from './codec';

/** A line of text without blanks around it. */
export const text: Codec<string> = { show: (value) => value, read: (typed) => ok(typed.trim()) };

/** A line of text that is never empty. */
export const someText = (problem: (words: Words) => string): Codec<string> => ({
  ...text,
  read: (typed, { words }) => (typed.trim() === '' ? fail(problem(words)) : ok(typed.trim())),
});
