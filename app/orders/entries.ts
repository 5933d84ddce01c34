import { codeFlaw, type TakenCodes } from '../../src/editing';
import { MOST_COPIES } from '../../src/intake';
import { fail, type Micrometres, ok, withUnit } from '../../src/units';
import type { Codec } from '../parts/fields/codec';
import { shortLength } from '../parts/fields/lengths';
import { whole } from '../parts/fields/numbers';
import { whole as wholeText } from '../words/format';

/** A size, and how it was typed. */
export interface Sized {
  readonly length: Micrometres;
  readonly typed: string;
}

/** A size that is shown as it was typed. */
export const sizeAsTyped: Codec<Sized> = {
  show: ({ typed }) => typed,
  read(text, reader) {
    const read = shortLength('above-zero').read(text, reader);
    return read.ok ? ok({ length: read.value, typed: withUnit(text.trim(), reader.unit) }) : read;
  },
};

/**
 * A whole number of copies, not more than one transfer may have.
 * @param inPrint how many are printed, or sent to print: it may not be fewer
 */
export function copiesFrom(least: 0 | 1, inPrint = 0): Codec<number> {
  const any = whole(least, MOST_COPIES, ({ orders }, ways) =>
    orders.countProblem(least, wholeText(MOST_COPIES, ways)),
  );
  return {
    ...any,
    read(typed, reader) {
      const read = any.read(typed, reader);
      return read.ok && read.value < inPrint ? fail(reader.words.orders.countInPrint(inPrint, reader)) : read;
    },
  };
}

/** A tidy name that is never empty. */
export const name: Codec<string> = {
  show: (value) => value,
  read(typed, { words }) {
    const tidy = typed.trim().replace(/\s+/g, ' ').slice(0, 120);
    return tidy === '' ? fail(words.orders.nameEmpty) : ok(tidy);
  },
};

/**
 * A code of one to four letters or figures that is told apart from those of all other orders, see {@link codeFlaw}.
 * @param taken what they are, asked when a code was typed
 */
export const codeBeside = (taken: () => TakenCodes): Codec<string> => ({
  show: (code) => code,
  read(typed, { words: { orders } }) {
    const code = typed.trim().toUpperCase();
    if (!/^[\p{L}\p{N}]{1,4}$/u.test(code)) return fail(orders.codeShape);
    const { all, open } = taken();
    if (all.has(code)) return fail(orders.codeTaken(code));
    const flaw = codeFlaw(code, open);
    if (!flaw) return ok(code);
    return fail(flaw.code === 'ends-in-figure' ? orders.codeEnd : orders.codeBegins(code, flaw.other));
  },
});
