import { ok } from '../../../src/units';
import type { Codec } from './codec';

/** A line of text without blanks around it. */
export const text: Codec<string> = { show: (value) => value, read: (typed) => ok(typed.trim()) };
