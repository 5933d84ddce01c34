import type { Part } from './archive';

const MEGABYTE = 1_000_000;

/** What a backup may unpack to: some ten times the largest that a shop is known to need (common practice, no source). */
export const limits = {
  /** Bytes of the book. */
  book: 100 * MEGABYTE,
  /** Bytes of one image. */
  image: 200 * MEGABYTE,
  /** Bytes of all of it: an archive without 64-bit sizes holds no more (PKWARE APPNOTE 6.3, 4.4.9). */
  total: 4000 * MEGABYTE,
  images: 20_000,
  /** Bytes unpacked for one packed: records of a book come to some 30. */
  ratio: 200,
  /** Characters of one text. */
  text: 1_000_000,
} as const;

/** What is too much of a backup. */
export type TooMuch = keyof typeof limits;

/** What of an archive is too much, by its directory alone; `null` if nothing is. */
export function tooMuchOf(parts: readonly Part[], isBook: (part: Part) => boolean): TooMuch | null {
  if (parts.length > limits.images) return 'images';
  for (const part of parts) {
    if (part.size > (isBook(part) ? limits.book : limits.image)) return isBook(part) ? 'book' : 'image';
    // A small part may be all alike.
    if (part.size > MEGABYTE && part.size > part.packed * limits.ratio) return 'ratio';
  }
  return parts.reduce((sum, { size }) => sum + size, 0) > limits.total ? 'total' : null;
}

/** Whether a text within a value is longer than any that is typed. */
export function hasLongText(value: unknown): boolean {
  if (typeof value === 'string') return value.length > limits.text;
  if (typeof value !== 'object' || value === null) return false;
  return Object.entries(value).some(([name, within]) => name.length > limits.text || hasLongText(within));
}
