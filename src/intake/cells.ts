import { fail, ok, type Result, type Turning, withoutAccents } from '../units';

/** No transfer has more copies than this; more is a slip of the finger. */
export const MOST_COPIES = 5_000;

/** No table brings more copies than this in all. */
export const MOST_COPIES_IN_ALL = 20_000;

export type CountProblem = 'unreadable' | 'zero' | 'too-many';

/** Reads a number of copies; nothing there means one. `12.0` is how some spreadsheets write 12. */
export function readCount(text: string): Result<number, CountProblem> {
  const plain = text.trim();
  if (plain === '') return ok(1);
  const digits = /^(\d+)(?:[.,]0{1,2})?$/.exec(plain)?.[1];
  if (digits === undefined) return fail('unreadable');
  const count = Number(digits);
  if (count === 0) return fail('zero');
  return count > MOST_COPIES ? fail('too-many') : ok(count);
}

/** In the languages of the app, without accents. */
const YES = new Set([
  '',
  'yes',
  'y',
  'true',
  '1',
  'x',
  '✓',
  'turn',
  'quarter',
  '90',
  '90°',
  'si',
  's',
  'girar',
]);
const NO = new Set(['no', 'n', 'false', '0', '-', '–', 'fixed', 'never', 'fijo', 'nunca']);

const HALF = new Set(['half', 'upside down', '180', '180°', 'media vuelta', 'medio giro']);
const ANY = new Set([
  'any',
  'any angle',
  'free',
  'freely',
  '360',
  '360°',
  'cualquiera',
  'cualquier angulo',
  'libre',
]);

/** How far may a transfer be turned? By quarters, where nothing is said. */
export function readTurn(text: string): Result<Turning, 'unreadable'> {
  const plain = withoutAccents(text).trim().toLowerCase();
  if (YES.has(plain)) return ok('quarter');
  if (HALF.has(plain)) return ok('half');
  if (ANY.has(plain)) return ok('any');
  return NO.has(plain) ? ok('fixed') : fail('unreadable');
}
