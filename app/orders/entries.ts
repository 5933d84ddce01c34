import { MOST_COPIES } from '../../src/intake';
import {
  fail,
  type LengthUnit,
  type Micrometres,
  ok,
  parseLength,
  type Result,
  unitNamed,
} from '../../src/units';
import { wordsNow } from '../words';
import type { Ways } from '../words/format';
import { whole } from '../words/format';

/** A size as typed, with its unit even where the user left it out: what a bare figure meant must not change later. */
export const typedWithUnit = (typed: string, unit: LengthUnit): string =>
  unitNamed(typed) === null ? `${typed} ${unit}` : typed;

export function readSize(typed: string, { unit }: Ways): Result<Micrometres, string> {
  const read = parseLength(typed, unit);
  return read.ok ? read : fail(wordsNow().lengthProblems[read.problem]);
}

/** A whole number of copies, not more than one transfer may have. */
export function readCount(typed: string, ways: Ways): Result<number, string> {
  const plain = typed.trim();
  const count = /^\d{1,9}$/.test(plain) ? Number(plain) : 0;
  return count >= 1 && count <= MOST_COPIES
    ? ok(count)
    : fail(wordsNow().orders.countProblem(whole(MOST_COPIES, ways)));
}

export function readName(typed: string): Result<string, string> {
  const name = typed.trim().replace(/\s+/g, ' ').slice(0, 120);
  return name === '' ? fail(wordsNow().orders.nameEmpty) : ok(name);
}

/** A code of one to four letters or figures that no other order has. */
export function readCode(typed: string, taken: ReadonlySet<string>): Result<string, string> {
  const code = typed.trim().toUpperCase();
  if (!/^[\p{L}\p{N}]{1,4}$/u.test(code)) return fail(wordsNow().orders.codeShape);
  return taken.has(code) ? fail(wordsNow().orders.codeTaken(code)) : ok(code);
}
