import { readAmount } from './read-amount';
import { fail, ok, type Result } from './result';

declare const tenths: unique symbol;
/** An angle in whole tenths of a degree, from 0 to 3599, clockwise as an image is looked at. */
export type Angle = number & { readonly [tenths]: true };

const TENTHS = 10;
const WHOLE_TURN = 360 * TENTHS;

/** The nearest tenth of a degree, whole turns taken off: -90 is 270. */
export const angleOf = (degrees: number): Angle =>
  (((Math.round(degrees * TENTHS) % WHOLE_TURN) + WHOLE_TURN) % WHOLE_TURN) as Angle;

/** Why a text is no angle. */
type AngleProblem = 'empty' | 'unreadable';

/** Reads an angle in degrees as a person types it: `30`, `22,5°`, `-15 deg`. */
export function parseAngle(text: string): Result<Angle, AngleProblem> {
  const plain = text.trim().replace('−', '-');
  if (plain === '') return fail('empty');
  const degrees = readAmount(plain.replace(/\s*(°|º|deg(rees?)?\.?|grados?)$/i, ''));
  return degrees === null ? fail('unreadable') : ok(angleOf(degrees));
}

export const degreesOf = (angle: Angle): number => angle / TENTHS;

/** An angle turned on by another. */
export const turnedBy = (angle: Angle, degrees: number): Angle => angleOf(degreesOf(angle) + degrees);

export const UPRIGHT = angleOf(0);
export const QUARTER = angleOf(90);

/** So many quarter turns an angle is; `null` if it lies between them. */
export const quartersIn = (angle: Angle): 0 | 1 | 2 | 3 | null =>
  angle % QUARTER === 0 ? ((angle / QUARTER) as 0 | 1 | 2 | 3) : null;

/** How far something may be turned: not at all, upside down only, by quarters, to any angle. */
export const TURNINGS = ['fixed', 'half', 'quarter', 'any'] as const;
export type Turning = (typeof TURNINGS)[number];

/** Between the angles that something may lie at, in degrees; 0 where it may lie at any. */
const STEP: Readonly<Record<Turning, number>> = { fixed: 360, half: 180, quarter: 90, any: 0 };

/** The least that may be turned by quarters and otherwise as far as before. */
export const alsoByQuarters = (turning: Turning): Turning => (turning === 'any' ? 'any' : 'quarter');

/** Whether what may be turned so far may lie at an angle. */
export const mayLieAt = (turning: Turning, angle: Angle): boolean =>
  STEP[turning] === 0 || degreesOf(angle) % STEP[turning] === 0;
