import {
  type Book,
  type Film,
  type Id,
  type OnRun,
  type OrderOnRun,
  type Progress,
  progressOf,
  type Run,
  type RunView,
  runView,
  type Transfer,
} from '../model';
import { asTurned, type Ring, turnOf } from '../outlines';
import { knifeLines, type Span } from '../packing';
import { type Angle, degreesOf, type Micrometres, onceFor, quartersIn, um } from '../units';
import { sheetAt, sheetStart, sheetsPrinted } from './film-shape';
import { printedRings } from './printed-rings';

/** A copy as it lies on the film; `width` across it, `length` along it, as it is turned. */
export interface LaidCopy {
  readonly id: Id<'copy'>;
  readonly order: Pick<OrderOnRun, 'id' | 'code' | 'tint'>;
  /** Counted within the order: `HB 7` is code and number. */
  readonly number: number;
  /** Its size is that of the image as it stands upright. */
  readonly transfer: Pick<Transfer, 'id' | 'name' | 'width' | 'height' | 'turn' | 'artwork' | 'shade'>;
  readonly x: Micrometres;
  readonly y: Micrometres;
  readonly width: Micrometres;
  readonly length: Micrometres;
  /** How far it is turned, clockwise as an image. */
  readonly angle: Angle;
  /** Where the left top corner of its image lies, from its own corner on. */
  readonly origin: { readonly x: number; readonly y: number };
  /** Its outline as it lies, from its corner on, if it keeps the gap by it; `null` if by its box. */
  readonly outline: readonly Ring[] | null;
  /** The outline of what prints, as it stands upright; `null` while it is not known. */
  readonly ink: readonly Ring[] | null;
  /** Whether its run is laid out by outlines. */
  readonly byOutline: boolean;
  readonly pinned: boolean;
  /** Printed, or sent to print: it stays where it is. */
  readonly fixed: boolean;
}

/** A run with all that it takes to draw, print or cut it. */
export interface LaidRun extends Progress {
  /** What holds for it: the records behind its copies among them. */
  readonly view: RunView;
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

/** How a copy lies at an angle: the box that it takes, and what it keeps the gap by. */
function lyingAt(
  { transfer, ink, byOutline }: Pick<LaidCopy, 'transfer' | 'ink' | 'byOutline'>,
  angle: Angle,
): Pick<LaidCopy, 'angle' | 'width' | 'length' | 'origin' | 'outline'> {
  const size = { width: transfer.width, length: transfer.height };
  const { width, length, origin, rings } = asTurned(size, ink, degreesOf(angle));
  const keepsByOutline = byOutline || quartersIn(angle) === null;
  return { angle, width: um(width), length: um(length), origin, outline: keepsByOutline ? rings : null };
}

/**
 * Where a point of a copy's image lies on the film.
 * @param across from the image's left edge, as it stands upright
 * @param down from its top edge
 */
export function onFilm(
  { x, y, angle, origin }: Pick<LaidCopy, 'x' | 'y' | 'angle' | 'origin'>,
  across: number,
  down: number,
): { x: number; y: number } {
  const { cos, sin } = turnOf(degreesOf(angle));
  return { x: x + origin.x + across * cos - down * sin, y: y + origin.y + across * sin + down * cos };
}

function layCopy({ copy, order, transfer, outline, byOutline, fixed }: OnRun): LaidCopy {
  const { id, number, place } = copy;
  const { x, y, angle, pinned } = place;
  const ink = outline && printedRings(outline, transfer);
  return {
    id,
    order,
    number,
    transfer,
    x,
    y,
    ...lyingAt({ transfer, ink, byOutline }, angle),
    ink,
    byOutline,
    pinned,
    fixed,
  };
}

/** A copy at another angle, where its corner lies. */
export const turnedTo = <Copy extends LaidCopy>(copy: Copy, angle: Angle): Copy => ({
  ...copy,
  ...lyingAt(copy, angle),
});

/** A copy at another angle, turned about the middle of its image. */
export function turnedInPlace(copy: LaidCopy, angle: Angle): LaidCopy {
  const { width, height } = copy.transfer;
  const turned = turnedTo(copy, angle);
  const [from, to] = [onFilm(copy, width / 2, height / 2), onFilm(turned, width / 2, height / 2)];
  return { ...turned, x: um(copy.x + from.x - to.x), y: um(copy.y + from.y - to.y) };
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
    const sheets = copies.reduce(
      (most, { y }) => Math.max(most, sheetAt(film, y) + 1),
      sheetsPrinted(film, { printedTo }),
    );
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

const layView = onceFor((view: RunView): LaidRun | null => {
  const { run, film, placed } = view;
  if (!film) return null;
  const copies = placed.map(layCopy).sort((a, b) => a.y - b.y || a.x - b.x);
  const progress = progressOf(run);
  const { id, name, state } = run;
  return { view, id, name, state, film, ...progress, copies, ...measureRun(copies, film, progress) };
});

/**
 * The copies of a run where they lie. It is laid once, as long as what holds for it is the same: see {@link runView}.
 * @returns `null` for a draft whose film is gone
 */
export const layRun = (book: Book, run: Run): LaidRun | null => layView(runView(book, run));

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
