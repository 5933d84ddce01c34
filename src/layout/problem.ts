import {
  type Book,
  type Copy,
  copiesByTransfer,
  type Film,
  type Id,
  isByOutlines,
  ordersByDue,
  outlineOf,
  type Place,
  progressOf,
  type Run,
  type Transfer,
  turnsOf,
} from '../model';
import {
  type Piece,
  type Placed,
  type Plan,
  type Problem,
  tooLargeFor as pieceTooLarge,
  type UnplacedReason,
} from '../packing';
import { type Micrometres, UPRIGHT, um } from '../units';
import { shapeOf, sheetAt, sheetStart, untouched } from './film-shape';
import { type LaidRun, layRun } from './laid';
import { printedRings } from './printed-rings';
import { isAsked, keptFrom } from './untaken';

/**
 * Which copies stay where they are while the rest is laid out: the pinned ones, all that lie on the film, or all that begin
 * before a place on it, where nothing new is laid either.
 */
export type Keep = 'pinned' | 'placed' | { readonly before: Micrometres };

const stays = (place: Place, keep: Keep): boolean =>
  place.pinned || keep === 'placed' || (typeof keep === 'object' && place.y < keep.before);

/** What stands behind a piece of a run's packing problem. */
interface RunPiece {
  readonly transfer: Id<'transfer'>;
  /** Those to be laid, in the order of their numbers. */
  readonly copies: readonly Copy[];
  /** Fillers that lie on the film and give way to them: they come off, and are placed again where they add no film. */
  readonly giveWay: readonly Copy[];
  /** One printed copy, as it was printed: no other copy of its transfer need be like it. */
  readonly fixed: boolean;
}

/** A run's packing problem, and for each of its pieces what stands behind it. */
export interface RunProblem {
  readonly problem: Problem;
  readonly pieces: readonly RunPiece[];
}

/** The copies that a problem is to lay. */
export const copiesToLay = ({ pieces }: RunProblem): Copy[] => pieces.flatMap(({ copies }) => copies);

/** A problem with other copies to be laid; pieces of printed copies have none. */
function laying(
  { problem, pieces }: RunProblem,
  copiesOf: (transfer: Id<'transfer'>) => readonly Copy[],
): RunProblem {
  const others = pieces.map((own) => ({
    ...own,
    copies: own.fixed ? [] : copiesOf(own.transfer),
    giveWay: [],
  }));
  return {
    problem: {
      ...problem,
      pieces: problem.pieces.map((piece, index) => ({ ...piece, count: others[index]?.copies.length ?? 0 })),
    },
    pieces: others,
  };
}

/** A place in the engine's terms: the sheet, and where on it. */
export const placedOf = (
  piece: number,
  { x, y, angle }: Pick<Place, 'x' | 'y' | 'angle'>,
  film: Film,
): Placed => {
  const sheet = sheetAt(film, y);
  return { piece, sheet, x, y: um(y - sheetStart(film, sheet)), angle };
};

/** Which orders come first on a film, the lower the sooner. */
const ranksOf = (book: Book, { together }: Film): Map<Id<'order'>, number> =>
  together.kind === 'by-due'
    ? turnsOf(ordersByDue(book))
    : new Map(ordersByDue(book).map((order, rank) => [order.id, rank]));

/**
 * The packing problem of a run: the copies that it takes, waiting or on its film, those of the soonest order
 * ranked first. What is printed already stays. Fillers are left out: see {@link fillerProblem}.
 */
export function problemOf(book: Book, run: Run, film: Film, keep: Keep): RunProblem {
  const ranks = ranksOf(book, film);
  const byTransfer = copiesByTransfer(book);
  const asked: Problem['pieces'][number][] = [];
  const pieces: RunPiece[] = [];
  const pinned: Placed[] = [];
  const progress = progressOf(run);
  for (const copy of layRun(book, run)?.copies ?? []) {
    if (!copy.fixed) continue;
    // As it was printed and lies, whatever its transfer has become since.
    const { width, length, outline } = copy;
    pinned.push(placedOf(pieces.length, { ...copy, angle: UPRIGHT }, film));
    asked.push({ id: copy.transfer.id, width, length, outline, count: 0, turn: 'fixed', rank: 0 });
    pieces.push({ transfer: copy.transfer.id, copies: [], giveWay: [], fixed: true });
  }
  for (const transfer of Object.values(book.transfer)) {
    const toLay: Copy[] = [];
    const giveWay: Copy[] = [];
    for (const copy of byTransfer.get(transfer.id) ?? []) {
      const { place } = copy;
      if (copy.run === run.id && place) {
        if (place.y < progress.printedTo) continue;
        if (stays(place, keep)) pinned.push(placedOf(pieces.length, place, film));
        else (copy.role === 'filler' ? giveWay : toLay).push(copy);
      } else if (isAsked(book, run, copy)) toLay.push(copy);
    }
    const outline = outlineOf(book, transfer, film);
    asked.push({
      id: transfer.id,
      width: transfer.width,
      length: transfer.height,
      outline: outline && printedRings(outline, transfer),
      count: toLay.length,
      turn: transfer.turn,
      rank: ranks.get(transfer.order) ?? ranks.size,
    });
    pieces.push({ transfer: transfer.id, copies: toLay, giveWay, fixed: false });
  }
  const { printedTo, spoiled } = progress;
  const until = typeof keep === 'object' ? um(Math.max(printedTo, keep.before)) : printedTo;
  return { problem: { ...shapeOf(film, { printedTo: until, spoiled }), pieces: asked, pinned }, pieces };
}

/** A problem on no more film than is used already. */
function onFilmUsed({ problem, pieces }: RunProblem, used: { length: number; sheets: number }): RunProblem {
  const film =
    problem.film.kind === 'roll'
      ? { ...problem.film, lengthLimit: um(used.length) }
      : { ...problem.film, sheetLimit: used.sheets };
  return { problem: { ...problem, film }, pieces };
}

/** The problem of laying fillers around all that lies on a run, on no more film than it takes now. */
export function fillerProblem(
  book: Book,
  run: Run,
  film: Film,
  used: { length: number; sheets: number },
): RunProblem {
  const byTransfer = copiesByTransfer(book);
  const fillers = laying(problemOf(book, run, film, 'placed'), (transfer) =>
    (byTransfer.get(transfer) ?? []).filter(
      (copy) => copy.role === 'filler' && !copy.place && keptFrom(book, run, copy) === null,
    ),
  );
  return onFilmUsed(fillers, used);
}

/** The problem of laying some copies that wait around all that lies on a run, as near to its front as they go, on no more film than it takes now. */
export const problemOfJoining = (
  book: Book,
  run: Run,
  film: Film,
  ids: ReadonlySet<Id<'copy'>>,
  used: { length: number; sheets: number },
): RunProblem => onFilmUsed(problemOfSome(book, run, film, ids), used);

/**
 * The problem of laying out anew all that lies on a run's film and may be moved, fillers too; nothing waits. What is printed or
 * pinned stays.
 */
export function problemAgain(book: Book, run: Run, film: Film): RunProblem {
  const byTransfer = copiesByTransfer(book);
  return laying(problemOf(book, run, film, 'pinned'), (transfer) =>
    (byTransfer.get(transfer) ?? []).filter(
      ({ run: on, place }) => on === run.id && place && !place.pinned && place.y >= progressOf(run).printedTo,
    ),
  );
}

/** The problem of laying some copies that wait around all that lies on a run. */
export function problemOfSome(book: Book, run: Run, film: Film, ids: ReadonlySet<Id<'copy'>>): RunProblem {
  const byTransfer = copiesByTransfer(book);
  return laying(problemOf(book, run, film, 'placed'), (transfer) =>
    (byTransfer.get(transfer) ?? []).filter(({ id, place }) => ids.has(id) && !place),
  );
}

/** The problem of laying out just what lies on a run, nothing pinned: what its shortest length is asked of. */
export function problemOnFilm(run: LaidRun): Problem {
  const ranks = new Map<string, number>();
  const pieces = new Map<string, { -readonly [Key in keyof Piece]: Piece[Key] }>();
  const byOutlines = isByOutlines(run.view.run, run.film);
  for (const { order, transfer, ink } of run.copies) {
    const rank = ranks.get(order.id) ?? ranks.size;
    ranks.set(order.id, rank);
    const { width, height } = transfer;
    const key = `${transfer.id} ${width} ${height}`;
    const piece = pieces.get(key) ?? {
      id: transfer.id,
      width,
      length: height,
      outline: byOutlines ? ink : null,
      count: 0,
      turn: transfer.turn,
      rank,
    };
    piece.count += 1;
    pieces.set(key, piece);
  }
  const shape = shapeOf(run.film, untouched);
  const cutting = byOutlines ? 'outlines' : shape.cutting;
  return { ...shape, cutting, pieces: [...pieces.values()], pinned: [] };
}

/** Why a transfer has no place anywhere on an empty film; `null` if it has one. */
export const tooLargeFor = (
  film: Film,
  { width, height, turn }: Pick<Transfer, 'width' | 'height' | 'turn'>,
) => pieceTooLarge(shapeOf(film, untouched), { width, length: height, turn });

/** A copy that got no place, and why. */
export interface LeftOut {
  readonly transfer: Id<'transfer'>;
  readonly count: number;
  readonly reason: UnplacedReason;
}

/**
 * Where a plan puts the copies behind its pieces. Along the film the numbers of a transfer go up,
 * so that they are found by looking; copies the plan has no place for come off the film, and so do fillers that give way.
 */
export function placesOf(
  plan: Plan,
  { problem, pieces }: RunProblem,
  film: Film,
): [Id<'copy'>, Place | null][] {
  const free = pieces.map(({ copies }) => [...copies]);
  const places: [Id<'copy'>, Place | null][] = [];
  const laid = plan.placed
    .slice(problem.pinned.length)
    .map((copy) => ({ ...copy, y: um(copy.y + sheetStart(film, copy.sheet)) }))
    .sort((a, b) => a.y - b.y || a.x - b.x);
  for (const { piece, x, y, angle } of laid) {
    const copy = free[piece]?.shift();
    if (copy) places.push([copy.id, { x, y, angle, pinned: false }]);
  }
  for (const copy of [...free, ...pieces.map(({ giveWay }) => giveWay)].flat()) {
    if (copy.place !== null) places.push([copy.id, null]);
  }
  return places;
}

export const leftOut = (plan: Plan, { pieces }: RunProblem): LeftOut[] =>
  plan.unplaced.flatMap(({ piece, count, reason }) => {
    const own = pieces[piece];
    return own ? [{ transfer: own.transfer, count, reason }] : [];
  });
