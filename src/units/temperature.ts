import { fail, ok, type Result } from './result';
import { withoutAccents } from './text';

declare const temperature: unique symbol;
/** A temperature in whole tenths of a degree Celsius: fine enough that whole degrees Fahrenheit come back as typed. */
export type Temperature = number & { readonly [temperature]: true };

export type TemperatureUnit = 'C' | 'F';

const TENTHS = 10;

/** t(C) = (t(F) - 32) / 1.8 exactly: NIST SP 811, appendix B. */
export const fromDegrees = (degrees: number, unit: TemperatureUnit): Temperature =>
  Math.round(TENTHS * (unit === 'C' ? degrees : (degrees - 32) / 1.8)) as Temperature;

/** Degrees, unrounded; whole degrees are what a press shows. */
export const toDegrees = (value: Temperature, unit: TemperatureUnit): number =>
  unit === 'C' ? value / TENTHS : (value / TENTHS) * 1.8 + 32;

/** Why a text is no temperature. `impossible`: colder than anything can be, or hotter than any oven. */
export type TemperatureProblem = 'empty' | 'unreadable' | 'impossible';

const COLDEST = fromDegrees(-273.1, 'C');
const HOTTEST = fromDegrees(1000, 'C');

const UNITS: Readonly<Record<string, TemperatureUnit>> = {
  c: 'C',
  celsius: 'C',
  centigrados: 'C',
  f: 'F',
  fahrenheit: 'F',
};

/**
 * Reads a temperature as a person types it: `330`, `330 F`, `165,6 °C`, `165 deg C`.
 * @param unit the unit of a bare number
 * @returns tenths of a degree Celsius, rounded once
 */
export function parseTemperature(
  text: string,
  unit: TemperatureUnit,
): Result<Temperature, TemperatureProblem> {
  const plain = withoutAccents(text)
    .trim()
    .toLowerCase()
    .replace(/[\u00a0\u2009\u202f]/g, ' ');
  if (plain === '') return fail('empty');
  const match = /^([-+−]?\d+(?:[.,]\d+)?)\s*(?:°|º|deg(?:rees?)?\.?|grados?)?\s*([a-z]+)?\.?$/.exec(plain);
  const named = match?.[2] === undefined ? unit : UNITS[match[2]];
  if (!match || named === undefined) return fail('unreadable');
  const value = fromDegrees(Number((match[1] ?? '').replace('−', '-').replace(',', '.')), named);
  if (value < COLDEST || value > HOTTEST) return fail('impossible');
  return ok(value);
}
