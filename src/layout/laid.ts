import type { Book, Copy, Film, Id, Order, Place, Run, Transfer } from '../model';
import { knifeLines, type Span } from '../packing';
import { type Micrometres, um } from '../units';

/** A copy as it lies on the film; `width` across it, `length` along it, turned or not. */
export interface LaidCopy {
  readonly id: Id<'copy'>;
  readonly order: Pick<Order, 'id' | 'code' | 'name' | 'tint'>;
  /** Counted within the order: `HB 7` is code and number. */
  readonly number: number;
  readonly transfer: Pick<Transfer, 'id' | 'name' | 'turn' | 'artwork'>;
  readonly x: Micrometres;
  readonly y: Micrometres;
  readonly width: Micrometres;
  readonly length: Micrometres;
  readonly turned: boolean;
  readonly pinned: boolean;
}

/** A run with all that it takes to draw, print or cut it. */
export interface LaidRun {
  readonly id: Id<'run'>;
  readonly name: string;
  readonly film: Film;
  /** From the leading edge on. */
  readonly copies: readonly LaidCopy[];
  /** Far end of the last copy and the tail; 0 if there is none. */
  readonly lengthUsed: Micrometres;
  /** From 0 to `lengthUsed`; one span, if the film is not cut; `null` if no lines can cut it as the film asks. */
  readonly spans: readonly Span[] | null;
}

/** How a transfer lies when it is, or is not, turned by a quarter. */
const footprint = ({ width, height }: Pick<Transfer, 'width' | 'height'>, turned: boolean) =>
  turned ? { width: height, length: width } : { width, length: height };

/** A copy at a place, or `null` if the book lacks its transfer or order. */
function layCopy(book: Book, copy: Copy, place: Omit<Place, 'run'>): LaidCopy | null {
  const transfer = book.transfer[copy.transfer];
  const order = transfer && book.order[transfer.order];
  if (!order) return null;
  const { x, y, turned, pinned } = place;
  return {
    id: copy.id,
    order,
    number: copy.number,
    transfer,
    x,
    y,
    ...footprint(transfer, turned),
    turned,
    pinned,
  };
}

/** Film used by copies that lie on it, and where it is cut. */
export function measureRun(copies: readonly LaidCopy[], film: Film): Pick<LaidRun, 'lengthUsed' | 'spans'> {
  const end = copies.reduce((furthest, copy) => Math.max(furthest, copy.y + copy.length), 0);
  const lengthUsed = um(copies.length > 0 ? end + film.margins.tail : 0);
  return { lengthUsed, spans: knifeLines(copies, { gap: film.gap, spanMax: film.spanMax, lengthUsed }) };
}

/** The copies of a run where they lie. */
export function layRun(book: Book, run: Run): LaidRun | null {
  const film = book.film[run.film];
  if (!film) return null;
  const copies: LaidCopy[] = [];
  for (const copy of Object.values(book.copy)) {
    if (copy.place?.run !== run.id) continue;
    const laid = layCopy(book, copy, copy.place);
    if (laid) copies.push(laid);
  }
  copies.sort((a, b) => a.y - b.y || a.x - b.x);
  return { id: run.id, name: run.name, film, copies, ...measureRun(copies, film) };
}

/** A run with one copy lying elsewhere, or added: what it would be if the copy were dropped there. */
export function withCopy(run: LaidRun, copy: LaidCopy): LaidRun {
  const copies = [...run.copies.filter((other) => other.id !== copy.id), copy];
  return { ...run, copies, ...measureRun(copies, run.film) };
}
