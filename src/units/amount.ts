import { readAmount } from './read-amount';
import { fail, ok, type Result } from './result';

declare const microlitres: unique symbol;
/** A volume of ink in whole microlitres. */
export type Microlitres = number & { readonly [microlitres]: true };

declare const milligrams: unique symbol;
/** A mass of powder in whole milligrams. */
export type Milligrams = number & { readonly [milligrams]: true };

/** A figure as a volume, rounded to whole microlitres. */
export const asMicrolitres = (value: number): Microlitres => Math.round(value) as Microlitres;

/** A figure as a mass, rounded to whole milligrams. */
export const asMilligrams = (value: number): Milligrams => Math.round(value) as Milligrams;

export type VolumeUnit = 'ml' | 'l' | 'fl oz';
export type MassUnit = 'g' | 'kg' | 'oz' | 'lb';

/** 1 US fl oz = 29.573 529 562 5 ml: NIST SP 811, appendix B. */
const MICROLITRES_PER: Readonly<Record<VolumeUnit, number>> = {
  ml: 1_000,
  l: 1_000_000,
  'fl oz': 29_573.529_562_5,
};

/** 1 lb = 453.592 37 g exactly, 1 oz a sixteenth of it: NIST SP 811, appendix B. */
const MILLIGRAMS_PER: Readonly<Record<MassUnit, number>> = {
  g: 1_000,
  kg: 1_000_000,
  oz: 28_349.523_125,
  lb: 453_592.37,
};

export const fromVolume = (value: number, unit: VolumeUnit): Microlitres =>
  asMicrolitres(value * MICROLITRES_PER[unit]);

export const toVolume = (volume: Microlitres, unit: VolumeUnit): number => volume / MICROLITRES_PER[unit];

export const fromMass = (value: number, unit: MassUnit): Milligrams =>
  asMilligrams(value * MILLIGRAMS_PER[unit]);

export const toMass = (mass: Milligrams, unit: MassUnit): number => mass / MILLIGRAMS_PER[unit];

/** Why a text is no amount. */
export type AmountProblem = 'empty' | 'unreadable' | 'negative' | 'too-much';

const volumeWords: Readonly<Record<string, VolumeUnit>> = {
  ml: 'ml',
  l: 'l',
  litre: 'l',
  litres: 'l',
  liter: 'l',
  liters: 'l',
  litro: 'l',
  litros: 'l',
  'fl oz': 'fl oz',
  floz: 'fl oz',
};

const massWords: Readonly<Record<string, MassUnit>> = {
  g: 'g',
  gram: 'g',
  grams: 'g',
  gramo: 'g',
  gramos: 'g',
  kg: 'kg',
  kilo: 'kg',
  kilos: 'kg',
  oz: 'oz',
  lb: 'lb',
  lbs: 'lb',
};

/** Nothing a print shop keeps is more than this: 10,000 l, 10,000 kg. */
const MOST = 10_000_000_000;

function parseIn<Unit extends string>(
  text: string,
  unit: Unit,
  unitWords: Readonly<Record<string, Unit>>,
  per: Readonly<Record<Unit, number>>,
): Result<number, AmountProblem> {
  const plain = text
    .toLowerCase()
    .replace(/[\s\u00a0\u2009\u202f]+/g, ' ')
    .trim();
  if (plain === '') return fail('empty');
  const match = /^(.*?[\d.,]) ?([a-z ]+)?\.?$/.exec(plain);
  const word = match?.[2]?.trim();
  const named = word === undefined ? unit : unitWords[word];
  const amount = readAmount(match?.[1] ?? '');
  if (named === undefined || amount === null) return fail('unreadable');
  if (amount < 0) return fail('negative');
  const whole = Math.round(amount * per[named]);
  return whole > MOST ? fail('too-much') : ok(whole);
}

/**
 * Reads a volume as a person types it: `120 ml`, `1,5 l`, `4 fl oz`.
 * @param unit the unit of a bare number
 * @returns whole microlitres, rounded once
 */
export const parseVolume = (text: string, unit: VolumeUnit): Result<Microlitres, AmountProblem> =>
  parseIn(text, unit, volumeWords, MICROLITRES_PER) as Result<Microlitres, AmountProblem>;

/**
 * Reads a mass as a person weighs it: `350 g`, `1,2 kg`, `2 1/2 lb`.
 * @param unit the unit of a bare number
 * @returns whole milligrams, rounded once
 */
export const parseMass = (text: string, unit: MassUnit): Result<Milligrams, AmountProblem> =>
  parseIn(text, unit, massWords, MILLIGRAMS_PER) as Result<Milligrams, AmountProblem>;

/** The unit of volume that a word names, `null` for none. */
export const volumeUnitOf = (word: string): VolumeUnit | null => volumeWords[word] ?? null;

/** The unit of mass that a word names, `null` for none. */
export const massUnitOf = (word: string): MassUnit | null => massWords[word] ?? null;
