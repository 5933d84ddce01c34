import type { Blank, Book } from '../model';
import { sumsOf } from './amount';
import { isSameBlank, suppliesOf, takenFor } from './supplies';

/** Garments of one style, colour and size: what is there and what open orders want. */
export interface BlankStock {
  /** `null` for a garment that orders want and nobody keeps. */
  readonly blank: Blank | null;
  readonly style: string;
  readonly colour: string;
  readonly size: string;
  readonly onHand: number;
  /** Wanted by open orders and not taken for them yet. */
  readonly reserved: number;
}

/** Every garment that is kept or wanted; where `reserved` is more than `onHand`, the rest has to be bought. */
export function blankStock(book: Book): BlankStock[] {
  const sums = sumsOf(book.entry);
  const blanks = suppliesOf(book, 'blank').filter((item): item is Blank => item.kind === 'blank');
  const lines: { -readonly [Key in keyof BlankStock]: BlankStock[Key] }[] = blanks.map((blank) => ({
    blank,
    style: blank.style,
    colour: blank.colour,
    size: blank.size,
    onHand: sums.get(blank.id) ?? 0,
    reserved: 0,
  }));
  // Several lines of an order may ask for the same garment: what was taken for it counts once.
  const wanted = new Map<string, { order: string; line: (typeof lines)[number]; count: number }>();
  for (const { order: id, style, colour, size, count } of Object.values(book.garment)) {
    const order = book.order[id];
    if (!order || order.archived || order.progress !== 'open' || order.wants !== 'garments') continue;
    let line = lines.find((each) => isSameBlank(each, { style, colour, size }));
    if (!line) {
      line = { blank: null, style, colour, size, onHand: 0, reserved: 0 };
      lines.push(line);
    }
    const key = `${id} ${lines.indexOf(line)}`;
    const known = wanted.get(key);
    wanted.set(key, { order: id, line, count: (known?.count ?? 0) + count });
  }
  for (const { order, line, count } of wanted.values()) {
    const taken = line.blank ? takenFor(book.entry, line.blank.id, order) : 0;
    line.reserved += Math.max(0, count - Math.max(0, taken));
  }
  return lines.filter(({ blank, reserved }) => blank !== null || reserved > 0);
}
