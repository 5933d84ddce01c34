import {
  fail,
  type LengthProblem,
  type LengthUnit,
  type Micrometres,
  ok,
  parseLength,
  type Result,
  unitNamed,
  withUnit,
} from '../units';

/** One side of a printed size, and how it was typed, with a unit. */
export interface Side {
  readonly length: Micrometres;
  readonly typed: string;
}

export interface Size {
  readonly width: Side;
  readonly height: Side;
}

/** Reads one side; a bare number is in the unit given. */
export function readSide(text: string, unit: LengthUnit): Result<Side, LengthProblem> {
  const read = parseLength(text, unit);
  if (!read.ok) return read;
  return ok({ length: read.value, typed: withUnit(text, unit) });
}

const BETWEEN = /\s*[x×*]\s*|\s+(?:by|por)\s+/i;
/** Which side it is, said behind the figure. */
const WHICH = /^(.*?[\d"”″'’½¼¾⅛⅜⅝⅞a-z])\s*\b(w|wide|width|ancho|h|high|height|alto)$/i;

/** The two figures of a text that says both sides; a garment's `XL` has none. */
function sidesOf(text: string): [string, string] | null {
  const [first, second, ...more] = text.split(BETWEEN);
  if (first === undefined || second === undefined || more.length > 0) return null;
  return [first, second].every((part) => /[\d½¼¾⅛⅜⅝⅞]/.test(part)) ? [first, second] : null;
}

/** Whether a text says both sides. */
export const isSize = (text: string): boolean => sidesOf(text) !== null;

/** A side's figure, and which side it says it is. */
function sideSaid(part: string): { figure: string; isWidth: boolean; isHeight: boolean } {
  const [, figure = part, name = ''] = WHICH.exec(part.trim()) ?? [];
  const isWidth = /^(w|an)/i.test(name);
  return { figure: figure.trim(), isWidth, isHeight: name !== '' && !isWidth };
}

/**
 * Reads width by height as they stand in one cell: `11 x 13 in`, `11" × 13"`, `28,5 por 33 cm`, `13 in H x 11 in W`. A
 * side without a unit takes the other's, or else the unit given.
 */
export function readSize(text: string, unit: LengthUnit): Result<Size, LengthProblem> {
  const sides = sidesOf(text);
  if (!sides) return fail(text === '' ? 'empty' : 'unreadable');
  const [first, second] = [sideSaid(sides[0]), sideSaid(sides[1])];
  const unitOf = (own: string, other: string) => unitNamed(own) ?? unitNamed(other) ?? unit;
  const one = readSide(first.figure, unitOf(first.figure, second.figure));
  const two = readSide(second.figure, unitOf(second.figure, first.figure));
  if (!one.ok) return one;
  if (!two.ok) return two;
  return first.isHeight || second.isWidth
    ? ok({ width: two.value, height: one.value })
    : ok({ width: one.value, height: two.value });
}
