import { readAmount } from './read-amount';
import { fail, ok, type Result } from './result';
import { withoutAccents } from './text';

declare const micrometres: unique symbol;
/** A length in whole micrometres. All lengths in `src` are of this type; mm and inches exist at the edges. */
export type Micrometres = number & { readonly [micrometres]: true };

/** Units of length a user may type. */
export type LengthUnit = 'mm' | 'cm' | 'm' | 'in' | 'ft';

/** 1 in = 25.4 mm and 1 ft = 12 in exactly: NIST SP 811, appendix B. */
const MICROMETRES_PER: Record<LengthUnit, number> = {
  mm: 1_000,
  cm: 10_000,
  m: 1_000_000,
  in: 25_400,
  ft: 304_800,
};

/** Rounds to the nearest whole micrometre. */
export const um = (value: number): Micrometres => Math.round(value) as Micrometres;

export const fromUnit = (value: number, unit: LengthUnit): Micrometres => um(value * MICROMETRES_PER[unit]);

export const fromMm = (value: number): Micrometres => fromUnit(value, 'mm');

export const fromInches = (value: number): Micrometres => fromUnit(value, 'in');

export const toUnit = (length: Micrometres, unit: LengthUnit): number => length / MICROMETRES_PER[unit];

export const toMm = (length: Micrometres): number => toUnit(length, 'mm');

export const toInches = (length: Micrometres): number => toUnit(length, 'in');

/** A length as it is typed in a shop of a unit: `203.5 mm`, `8.01 in`. */
export const writtenLength = (length: Micrometres, unit: 'mm' | 'in'): string =>
  `${Number(toUnit(length, unit).toFixed(unit === 'mm' ? 1 : 3))} ${unit}`;

/** Why a text is no length: nothing there, not a number with a unit, or not above zero. */
export type LengthProblem = 'empty' | 'unreadable' | 'not-positive' | 'too-long';

/** In the languages of the app, without accents. */
const UNIT_WORDS: Record<string, LengthUnit> = {
  mm: 'mm',
  millimetre: 'mm',
  millimetres: 'mm',
  millimeter: 'mm',
  millimeters: 'mm',
  cm: 'cm',
  m: 'm',
  in: 'in',
  inch: 'in',
  inches: 'in',
  '"': 'in',
  '”': 'in',
  '″': 'in',
  "''": 'in',
  ft: 'ft',
  feet: 'ft',
  foot: 'ft',
  "'": 'ft',
  '’': 'ft',
  '′': 'ft',
  milimetro: 'mm',
  milimetros: 'mm',
  centimetro: 'cm',
  centimetros: 'cm',
  metro: 'm',
  metros: 'm',
  pulg: 'in',
  pulgada: 'in',
  pulgadas: 'in',
  pie: 'ft',
  pies: 'ft',
};

const VULGAR: Record<string, string> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** Nothing a print shop measures is longer than this: 10 km. */
const LONGEST = 10_000_000_000;

/**
 * Reads one length as a person types it: `89 mm`, `8,9 cm`, `3.5in`, `3 1/2"`, `3½`, `1' 6"`.
 * @param text what was typed
 * @param unit the unit of a bare number
 * @param least `zero` allows 0, as margins do; a size must be above it
 * @returns whole micrometres, rounded once
 */
export function parseLength(
  text: string,
  unit: LengthUnit,
  least: 'above-zero' | 'zero' = 'above-zero',
): Result<Micrometres, LengthProblem> {
  const plain = withoutAccents(text)
    .trim()
    .toLowerCase()
    .replace(/[½¼¾⅛⅜⅝⅞]/g, (sign) => ` ${VULGAR[sign]}`)
    .replace(/[\u00a0\u2009\u202f]/g, ' ')
    .trim();
  if (plain === '') return fail('empty');
  const feetAndInches = /^(\d+)\s*(?:'|’|′|ft)\s*(\d.*?)\s*(?:"|”|″|''|in)$/.exec(plain);
  const parts: [string, LengthUnit][] = [];
  if (feetAndInches) {
    parts.push([feetAndInches[1] ?? '', 'ft'], [feetAndInches[2] ?? '', 'in']);
  } else {
    const match = /^(.*?[\d.,])\s*([a-z]+\.?|["”″'’′]{1,2})?$/.exec(plain);
    const word = match?.[2]?.replace('.', '');
    const named = word === undefined ? unit : UNIT_WORDS[word];
    if (!match || named === undefined) return fail('unreadable');
    parts.push([match[1] ?? '', named]);
  }
  let total = 0;
  for (const [amountText, amountUnit] of parts) {
    const amount = readAmount(amountText);
    if (amount === null) return fail('unreadable');
    total += amount * MICROMETRES_PER[amountUnit];
  }
  const length = um(total);
  if (length < 0 || (length === 0 && least === 'above-zero')) return fail('not-positive');
  if (length > LONGEST) return fail('too-long');
  return ok(length);
}

/** The unit named in a text, `null` if it names none: what decides how a size is shown again. */
export function unitNamed(text: string): LengthUnit | null {
  const word = /([a-z]+|["”″'’′]{1,2})\.?\s*$/i.exec(withoutAccents(text).trim())?.[1]?.toLowerCase();
  return word === undefined ? null : (UNIT_WORDS[word] ?? null);
}

/** A length as typed, with its unit even where it was left out: what a bare figure meant must not change later. */
export const withUnit = (text: string, unit: LengthUnit): string =>
  unitNamed(text) === null ? `${text} ${unit}` : text;

/** A length to the nearest 1/16 in, as a tape shows it: `{ whole: 24, over: 1, under: 16 }` is 24 1/16 in. */
export interface TapeInches {
  readonly whole: number;
  readonly over: number;
  readonly under: 1 | 2 | 4 | 8 | 16;
}

export function nearestSixteenth(length: Micrometres): TapeInches {
  let over = Math.round((length / MICROMETRES_PER.in) * 16);
  const whole = Math.floor(over / 16);
  over -= whole * 16;
  let under = 16;
  while (under > 1 && over % 2 === 0) {
    over /= 2;
    under /= 2;
  }
  return { whole, over, under: under as TapeInches['under'] };
}
