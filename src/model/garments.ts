import { fromInches, type Micrometres } from '../units';

/** Groups of garment sizes that are printed at one width. */
export const sizeGroups = ['adult', 'youth', 'toddler'] as const;

export type SizeGroup = (typeof sizeGroups)[number];

/** The group of a garment size as the trade writes it: `2T` to `6T` and months are toddlers', `YM`, `Youth L`, `10-12` youths'. */
export function groupOfSize(size: string): SizeGroup {
  const plain = size.trim().toUpperCase();
  if (/^\d{1,2}\s?(T|M|MO|MONTHS)$|^NB$|TODDLER|INFANT|BABY|BEB[EÉ]|^\d{1,2}\s?MESES/.test(plain))
    return 'toddler';
  if (/^Y|YOUTH|KID|JUVENIL|NIÑ[OA]|AÑOS|^\d{1,2}\s?[-/]\s?\d{1,2}$/.test(plain)) return 'youth';
  return 'adult';
}

/** Places that garments are printed in, and the width to start with for each group (common practice, no source). */
export const startingWidths = {
  front: { adult: fromInches(11), youth: fromInches(8.5), toddler: fromInches(6) },
  back: { adult: fromInches(11), youth: fromInches(8.5), toddler: fromInches(6) },
  'left chest': { adult: fromInches(3.5), youth: fromInches(3), toddler: fromInches(2.5) },
  sleeve: { adult: fromInches(3), youth: fromInches(2.5), toddler: fromInches(2) },
  'neck tag': { adult: fromInches(2.5), youth: fromInches(2), toddler: fromInches(1.5) },
} as const satisfies Record<string, Record<SizeGroup, Micrometres>>;

/** The sizes that one design is commonly wanted in, and the width to start each with (common practice, no source). */
export const designWidths = {
  adult: startingWidths.front.adult,
  youth: startingWidths.front.youth,
  toddler: startingWidths.front.toddler,
  'left chest': startingWidths['left chest'].adult,
  sleeve: startingWidths.sleeve.adult,
  'neck tag': startingWidths['neck tag'].adult,
} as const satisfies Record<string, Micrometres>;

export type DesignSize = keyof typeof designWidths;

export type PlaceName = keyof typeof startingWidths;

/** The widest print that lies flat on a garment's body (common practice, no source): by group, and less on the small sizes. */
const bodyWidths: Record<SizeGroup, { small: Micrometres; other: Micrometres }> = {
  adult: { small: fromInches(11.5), other: fromInches(13) },
  youth: { small: fromInches(8.5), other: fromInches(10) },
  toddler: { small: fromInches(6), other: fromInches(7) },
};

/** Ranks of a group behind one another: a child's sizes come before an adult's. */
const FIRST: Record<SizeGroup, number> = { toddler: 0, youth: 1000, adult: 2000 };

/** Where a size stands among others, from the smallest: `NB`, `6M`, `2T`, `YS`, `10-12`, `XS` to `5XL`; last what is no known size. */
function rankOf(size: string): number {
  const plain = size.trim().toUpperCase();
  const group = groupOfSize(plain);
  const letters = /(?:^|[^\p{L}\p{N}]|^Y)(\d*)(X*)(S|M|L)$/u.exec(plain);
  if (letters && group !== 'toddler') {
    const [, times = '', marks = '', letter = ''] = letters;
    const more = times === '' ? marks.length : Number(times) * Math.max(1, marks.length);
    const middle = { S: 0, M: 1, L: 2 }[letter] ?? 0;
    return FIRST[group] + 500 + middle + (letter === 'S' ? -more : more);
  }
  const figure = /\d+/.exec(plain);
  if (group === 'toddler') return figure ? Number(figure[0]) * (/T$/.test(plain) ? 12 : 1) : 0;
  return figure ? FIRST[group] + Number(figure[0]) : Number.POSITIVE_INFINITY;
}

/** Compares two garment sizes by how large they are. */
export function bySize(a: string, b: string): number {
  const [first, second] = [rankOf(a), rankOf(b)];
  return first === second ? 0 : first - second;
}

const isSmall = (size: string): boolean => /^(X*S|Y?X*S|[2-3]\s?T|YOUTH X*S)$/i.test(size.trim());

/** The widest print that a garment of a size takes. */
export function widestFor(size: string): Micrometres {
  const widths = bodyWidths[groupOfSize(size)];
  return isSmall(size) ? widths.small : widths.other;
}
