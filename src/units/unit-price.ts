import { fromMass, fromVolume, type MassUnit, massUnitOf, type VolumeUnit, volumeUnitOf } from './amount';
import { asMilliMinor, type MilliMinor, type PriceProblem, parseFinePrice } from './money';
import { fail, ok, type Result } from './result';

/** Splits `180 / kg` and `180 per kg` at what the price is for. */
const split = (text: string): { price: string; unit: string | null } => {
  const [price = '', unit] = text.split(/\s*\/\s*|\s+(?:per|por)\s+/i);
  return { price, unit: unit === undefined ? null : unit.trim().toLowerCase() };
};

function parsePer<Unit extends string>(
  text: string,
  currency: string,
  unit: Unit,
  unitOf: (word: string) => Unit | null,
  share: (unit: Unit) => number,
): Result<MilliMinor, PriceProblem> {
  const parts = split(text);
  const own = parts.unit === null ? unit : unitOf(parts.unit);
  if (own === null) return fail('unreadable');
  const price = parseFinePrice(parts.price, currency);
  return price.ok ? ok(asMilliMinor(price.value / share(own))) : price;
}

/** How much of a litre, or of a kilogram, a unit is. */
export const litresIn = (unit: VolumeUnit): number => fromVolume(1000, unit) / fromVolume(1000, 'l');
export const kilogramsIn = (unit: MassUnit): number => fromMass(1000, unit) / fromMass(1000, 'kg');

/**
 * Reads the price of ink: `180`, `180 / l`, `0,18 per ml`.
 * @param unit what a bare number is for
 * @returns for a litre, in thousandths of a minor unit
 */
export const parseVolumePrice = (text: string, currency: string, unit: VolumeUnit) =>
  parsePer(text, currency, unit, volumeUnitOf, litresIn);

/**
 * Reads the price of powder: `24 / kg`, `11 per lb`.
 * @param unit what a bare number is for
 * @returns for a kilogram, in thousandths of a minor unit
 */
export const parseMassPrice = (text: string, currency: string, unit: MassUnit) =>
  parsePer(text, currency, unit, massUnitOf, kilogramsIn);
