import { fromInches, type Micrometres, withoutAccents } from '../units';
import type { PlaceName } from './garment-place';
import type { Garment, Placement, PrintedWidth } from './records';

/** Groups of garment sizes that are printed at one width. */
export const sizeGroups = ['adult', 'youth', 'toddler'] as const;

export type SizeGroup = (typeof sizeGroups)[number];

/** What a size is called by, and what tells an adult's `M` from a child's. */
export type SizedGarment = Pick<Garment, 'style' | 'size'>;

/** What a printed width of one size is kept by: its group and the size, in capitals. */
export const sizeKey = (garment: SizedGarment): string =>
  `${groupOf(garment)} ${garment.size.trim().toUpperCase()}`;

/** The width that a place is printed at on a garment: its size's own, or its group's. */
export const widthFor = (
  { sizes, widths }: Pick<Placement, 'sizes' | 'widths'>,
  garment: SizedGarment,
): PrintedWidth => sizes[sizeKey(garment)] ?? widths[groupOf(garment)];

/** Words of a style or a size, in the languages of the app and without accents (common practice, no source). */
const WORDS: readonly (readonly [SizeGroup, RegExp])[] = [
  [
    'toddler',
    /\b(?:toddlers?|infants?|bab(?:y|ies)|newborn|onesies?|rompers?|bodysuits?|bebes?|recien nacid[oa]s?|pelele|mameluco)\b/,
  ],
  [
    'youth',
    /\b(?:youth|kids?|child(?:ren)?s?|boys?|girls?|juniors?|juvenil(?:es)?|nin[oa]s?|infantil(?:es)?|chic[oa]s?)\b/,
  ],
  [
    'adult',
    /\b(?:adults?|men|mens|women|womens|ladies|unisex|adult[oa]s?|hombres?|mujer(?:es)?|damas?|caballeros?)\b/,
  ],
];

const plainText = (text: string): string =>
  withoutAccents(text)
    .trim()
    .toLowerCase()
    .replace(/['’]s\b/g, 's');

const groupInWords = (text: string): SizeGroup | null =>
  WORDS.find(([, words]) => words.test(text))?.[0] ?? null;

/** Body heights in centimetres that children's garments are marked with, every 6 from 56 to 164: EN 13402-3, from memory. */
const isHeight = (figure: number): boolean => figure >= 56 && figure <= 164 && (figure - 56) % 6 === 0;
/** The tallest that infants' garments are marked with (EN 13402-3, from memory). */
const INFANT_HEIGHT = 104;
/** The oldest that toddlers' garments are for, in years. */
const TODDLER_YEARS = 4;
/** Plain numbers of US children's sizes (ASTM D5826 for children of 2 to 6X, D6192 for girls of 7 to 16, from memory; boys' to 20). */
const US = { first: 2, last: 20 };

/** A size's one figure, or the larger of its two: `128`, `122/128`, `7-8`. */
const figureOf = (size: string): number | null => {
  const [, first, second] = /^(?:eu|us|uk)?\s?(\d{1,3})(?:\s?[-/]\s?(\d{1,3}))?(?=\D|$)/.exec(size) ?? [];
  return first === undefined ? null : Number(second ?? first);
};

/** Whom a size is for by itself: `2T`, months, years, body heights, US numbers, `YM`; `null` for letters and all else. */
function groupInSize(size: string): SizeGroup | null {
  if (/^\d{1,2}(?:\s?[-/]\s?\d{1,2})?\s?(?:t|m|mo|mos|months?|meses)$|^nb$|^pre+mie$/.test(size))
    return 'toddler';
  if (/^y\s?(?:\d?x{0,2}[sml]|\d)/.test(size)) return 'youth';
  const figure = figureOf(size);
  if (figure === null) return null;
  const rest = size.replace(/^(?:eu|us|uk)?\s?[\d\s/-]+/, '');
  if (/^(?:years?|yrs?|y|anos?|a)$/.test(rest)) return figure <= TODDLER_YEARS ? 'toddler' : 'youth';
  if (figure === 6 && rest === 'x') return 'youth';
  if (!/^(?:cm)?$/.test(rest)) return null;
  if (isHeight(figure)) return figure <= INFANT_HEIGHT ? 'toddler' : 'youth';
  if (figure < US.first || figure > US.last) return null;
  return figure <= (/[-/]/.test(size) ? TODDLER_YEARS : 3) ? 'toddler' : 'youth';
}

/** The group of a garment, by the words of its style and of its size, and else by the size itself: the `M` of a youth style is no adult's. */
export function groupOf({ style, size }: SizedGarment): SizeGroup {
  const [inStyle, plain] = [groupInWords(plainText(style)), plainText(size)];
  if (inStyle === 'adult') return inStyle;
  const inSize = groupInWords(plain) ?? groupInSize(plain);
  // A toddler's size of a style for kids is a toddler's.
  return inStyle === 'youth' && inSize === 'toddler' ? inSize : (inStyle ?? inSize ?? 'adult');
}

/** Places that garments are printed in, and the width to start with for each group (common practice, no source). */
export const startingWidths = {
  front: { adult: fromInches(11), youth: fromInches(8.5), toddler: fromInches(6) },
  back: { adult: fromInches(11), youth: fromInches(8.5), toddler: fromInches(6) },
  'left chest': { adult: fromInches(3.5), youth: fromInches(3), toddler: fromInches(2.5) },
  sleeve: { adult: fromInches(3), youth: fromInches(2.5), toddler: fromInches(2) },
  'neck tag': { adult: fromInches(2.5), youth: fromInches(2), toddler: fromInches(1.5) },
  'right chest': { adult: fromInches(3.5), youth: fromInches(3), toddler: fromInches(2.5) },
  pocket: { adult: fromInches(3), youth: fromInches(2.5), toddler: fromInches(2) },
  hood: { adult: fromInches(4), youth: fromInches(3.5), toddler: fromInches(3) },
  leg: { adult: fromInches(3.5), youth: fromInches(3), toddler: fromInches(2.5) },
  cap: { adult: fromInches(4), youth: fromInches(3.5), toddler: fromInches(3) },
  tote: { adult: fromInches(10), youth: fromInches(8), toddler: fromInches(6) },
} as const satisfies Record<PlaceName, Record<SizeGroup, Micrometres>>;

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

/** The widest print that lies flat on a garment's body (common practice, no source): by group, and less on the small sizes. */
const bodyWidths: Record<SizeGroup, { small: Micrometres; other: Micrometres }> = {
  adult: { small: fromInches(11.5), other: fromInches(13) },
  youth: { small: fromInches(8.5), other: fromInches(10) },
  toddler: { small: fromInches(6), other: fromInches(7) },
};

/** Ranks of a group behind one another: a child's sizes come before an adult's. */
const FIRST: Record<SizeGroup, number> = { toddler: 0, youth: 1000, adult: 2000 };

/** Where a size stands among others of its group, from the smallest; last what is no known size. */
function rankIn(group: SizeGroup, size: string): number {
  const plain = plainText(size);
  const letters = /(?:^|[^\p{L}\p{N}]|^y)(\d*)(x*)(s|m|l)$/u.exec(plain);
  if (letters && !(group === 'toddler' && /^\d+m$/.test(plain.replace(/\s/g, '')))) {
    const [, times = '', marks = '', letter = ''] = letters;
    const more = times === '' ? marks.length : Number(times) * Math.max(1, marks.length);
    const middle = { s: 0, m: 1, l: 2 }[letter] ?? 0;
    return 500 + middle + (letter === 's' ? -more : more);
  }
  const figure = /\d+/.exec(plain);
  if (group === 'toddler') return figure ? Number(figure[0]) * (/t$/.test(plain) ? 12 : 1) : 0;
  return figure ? Number(figure[0]) : Number.POSITIVE_INFINITY;
}

/** Compares two garments of a style by how large they are: `NB`, `6M`, `2T`, `YS`, `10-12`, `XS` to `5XL`. */
export function bySize(a: SizedGarment, b: SizedGarment): number {
  const rank = (garment: SizedGarment) => {
    const group = groupOf(garment);
    return FIRST[group] + rankIn(group, garment.size);
  };
  const [first, second] = [rank(a), rank(b)];
  return first === second ? 0 : first - second;
}

/** The smallest sizes of each group, which take less. */
const isSmall = (group: SizeGroup, size: string): boolean => {
  const plain = plainText(size);
  if (/(?:^|[^\p{L}\p{N}]|^y)\d*x*s$/u.test(plain)) return true;
  const figure = figureOf(plain);
  if (figure === null || group === 'adult') return false;
  if (group === 'toddler')
    return isHeight(figure) ? figure <= 92 : !/m|mo|meses|months?/.test(plain) && figure <= 3;
  return isHeight(figure) ? figure <= 122 : figure <= 6;
};

/** The widest print that a garment takes. */
export function widestFor(garment: SizedGarment): Micrometres {
  const group = groupOf(garment);
  const { small, other } = bodyWidths[group];
  return isSmall(group, garment.size) ? small : other;
}
