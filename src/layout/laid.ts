import {
  type Book,
  byId,
  type Copy,
  type Film,
  filmOf,
  type Id,
  type Order,
  type Place,
  type Run,
  type Transfer,
} from '../model';
import { knifeLines, type Span } from '../packing';
import { type Micrometres, um } from '../units';
import { type Progress, sheetAt, sheetStart } from './film-shape';

/** A copy as it lies on the film; `width` across it, `length` along it, turned or not. */
export interface LaidCopy {
  readonly id: Id<'copy'>;
  readonly order: Pick<Order, 'id' | 'code' | 'name' | 'tint'>;
  /** Counted within the order: `HB 7` is code and number. */
  readonly number: number;
  readonly transfer: Pick<Transfer, 'id' | 'name' | 'turn' | 'artwork' | 'shade'>;
  readonly x: Micrometres;
  readonly y: Micrometres;
  readonly width: Micrometres;
  readonly length: Micrometres;
  readonly turned: boolean;
  readonly pinned: boolean;
  /** Printed, or sent to print: it stays where it is. */
  readonly fixed: boolean;
}

/** A run with all that it takes to draw, print or cut it. */
export interface LaidRun extends Progress {
  readonly id: Id<'run'>;
  readonly name: string;
  readonly state: Run['state'];
  readonly film: Film;
  /** From the leading edge on. */
  readonly copies: readonly LaidCopy[];
  /** Far end of the last copy and the tail, or of the film printed; of sheets, all that are used; 0 if there is none. */
  readonly lengthUsed: Micrometres;
  /** From 0 to `lengthUsed`; one span, if the film is not cut; `null` if no lines can cut it as the film asks. */
  readonly spans: readonly Span[] | null;
}

/** How a transfer lies when it is, or is not, turned by a quarter. */
const footprint = ({ width, height }: Pick<Transfer, 'width' | 'height'>, turned: boolean) =>
  turned ? { width: height, length: width } : { width, length: height };

/**
 * Where a point of a copy's image lies on the film. A turned copy is turned a quarter clockwise as an image.
 * @param across from the image's left edge, before it is turned
 * @param down from its top edge
 */
export const onFilm = (
  { x, y, width, turned }: Pick<LaidCopy, 'x' | 'y' | 'width' | 'turned'>,
  across: number,
  down: number,
): { x: number; y: number } =>
  turned ? { x: x + width - down, y: y + across } : { x: x + across, y: y + down };

/** Where orders and transfers are looked up: a book, or what a locked run embeds. */
type Source = Pick<Book, 'order' | 'transfer'>;

/** The copies of a run with their places, and the source of each: what is printed shows what it was printed from. */
function* placedCopies(
  book: Book,
  run: Run,
): Generator<{ copy: Copy; place: Place; fixed: boolean; source: Source }> {
  const { snapshot } = run;
  const embedded = snapshot && { order: byId(snapshot.orders), transfer: byId(snapshot.transfers) };
  const isDone = (place: Place) => run.state !== 'draft' || place.y < run.printedTo;
  for (const copy of snapshot?.copies ?? []) {
    if (embedded && copy.place && isDone(copy.place)) {
      yield { copy, place: copy.place, fixed: true, source: embedded };
    }
  }
  if (run.state !== 'draft') return;
  for (const copy of Object.values(book.copy)) {
    const { place } = copy;
    if (copy.run === run.id && place && !(embedded && isDone(place))) {
      yield { copy, place, fixed: isDone(place), source: book };
    }
  }
}

function layCopy(source: Source, copy: Copy, place: Place, fixed: boolean): LaidCopy | null {
  const transfer = source.transfer[copy.transfer];
  const order = transfer && source.order[transfer.order];
  if (!order) return null;
  const { x, y, turned, pinned } = place;
  const { id, number } = copy;
  return { id, order, number, transfer, x, y, ...footprint(transfer, turned), turned, pinned, fixed };
}

/** The far end of the copy that reaches furthest along the film; 0 without copies. */
export const furthestEnd = (copies: readonly Pick<LaidCopy, 'y' | 'length'>[]): number =>
  copies.reduce((furthest, { y, length }) => Math.max(furthest, y + length), 0);

/** Film used by copies that lie on it, and where it is cut. */
export function measureRun(
  copies: readonly LaidCopy[],
  film: Film,
  { printedTo }: Progress,
): Pick<LaidRun, 'lengthUsed' | 'spans'> {
  const end = furthestEnd(copies);
  if (film.kind === 'sheets') {
    const sheets = copies.length > 0 ? Math.max(...copies.map(({ y }) => sheetAt(film, y))) + 1 : 0;
    const spans = Array.from({ length: sheets }, (_, sheet) => ({
      from: sheetStart(film, sheet),
      to: sheetStart(film, sheet + 1),
    }));
    return { lengthUsed: sheetStart(film, sheets), spans };
  }
  const lengthUsed = um(Math.max(copies.length > 0 ? end + film.margins.tail : 0, printedTo));
  const { gap, spanMax, cutBlank } = film;
  return { lengthUsed, spans: knifeLines(copies, { gap, spanMax, cutBlank, lengthUsed }) };
}

/** The copies of a run where they lie. */
export function layRun(book: Book, run: Run): LaidRun | null {
  const film = filmOf(book, run);
  if (!film) return null;
  const copies: LaidCopy[] = [];
  for (const { copy, place, fixed, source } of placedCopies(book, run)) {
    const laid = layCopy(source, copy, place, fixed);
    if (laid) copies.push(laid);
  }
  copies.sort((a, b) => a.y - b.y || a.x - b.x);
  const { id, name, state, printedTo, spoiled } = run;
  return { id, name, state, film, printedTo, spoiled, copies, ...measureRun(copies, film, run) };
}

/** A run with some copies lying elsewhere, or added: what it would be if they were dropped there. */
export function withCopies(run: LaidRun, moved: readonly LaidCopy[]): LaidRun {
  const ids = new Set(moved.map(({ id }) => id));
  const copies = [...run.copies.filter((other) => !ids.has(other.id)), ...moved];
  return { ...run, copies, ...measureRun(copies, run.film, run) };
}

/** A roll's run cut into spans of another length where it lies; the same run, if it is on sheets. */
export function withSpans(run: LaidRun, spanMax: Micrometres): LaidRun {
  if (run.film.kind === 'sheets') return run;
  const film = { ...run.film, spanMax };
  return { ...run, film, ...measureRun(run.copies, film, run) };
}
