import {
  type Book,
  type Copy,
  copiesByTransfer,
  type Film,
  type Id,
  ordersByDue,
  type Place,
  type Run,
  type Transfer,
} from '../model';
import {
  type Placement,
  type Plan,
  type Problem,
  tooLargeFor as pieceTooLarge,
  type UnplacedReason,
} from '../packing';

/** Which copies stay where they are while the rest is laid out: the pinned ones, or all that lie on the film. */
export type Keep = 'pinned' | 'placed';

/** A run's packing problem, and the copies behind its pieces. */
export interface RunProblem {
  readonly problem: Problem;
  /** For each piece the copies to be laid, in the order of their numbers. */
  readonly copies: readonly (readonly Copy[])[];
}

const filmShape = (film: Film) => ({
  kind: 'roll' as const,
  width: film.width,
  lengthLimit: film.lengthLeft,
  spanMax: film.spanMax,
});

/**
 * The packing problem of a run: all copies that wait for a place and all that lie on its film,
 * those of the soonest order ranked first.
 */
export function problemOf(book: Book, run: Run, film: Film, keep: Keep): RunProblem {
  const ranks = new Map(ordersByDue(book).map((order, rank) => [order.id, rank]));
  const byTransfer = copiesByTransfer(book);
  const pieces: Problem['pieces'][number][] = [];
  const copies: (readonly Copy[])[] = [];
  const pinned: Placement[] = [];
  for (const transfer of Object.values(book.transfer)) {
    const toLay: Copy[] = [];
    for (const copy of byTransfer.get(transfer.id) ?? []) {
      if (copy.place === null) toLay.push(copy);
      else if (copy.place.run === run.id) {
        const { x, y, turned, pinned: isPinned } = copy.place;
        if (isPinned || keep === 'placed') pinned.push({ piece: pieces.length, sheet: 0, x, y, turned });
        else toLay.push(copy);
      }
    }
    pieces.push({
      id: transfer.id,
      width: transfer.width,
      length: transfer.height,
      count: toLay.length,
      turn: transfer.turn,
      rank: ranks.get(transfer.order) ?? ranks.size,
    });
    copies.push(toLay);
  }
  return {
    problem: { film: filmShape(film), margins: film.margins, gap: film.gap, pieces, pinned },
    copies,
  };
}

/** The problem of laying out just what lies on a run, nothing pinned: what its shortest length is asked of. */
export function problemOnFilm(book: Book, run: Run, film: Film): Problem {
  const { problem, copies } = problemOf(book, run, film, 'pinned');
  const placed = problem.pinned.map((placement) => placement.piece);
  const counts = copies.map((waiting) => waiting.filter((copy) => copy.place !== null).length);
  for (const piece of placed) counts[piece] = (counts[piece] ?? 0) + 1;
  return {
    ...problem,
    pieces: problem.pieces
      .map((piece, index) => ({ ...piece, count: counts[index] ?? 0 }))
      .filter((piece) => piece.count > 0),
    pinned: [],
  };
}

/** Why a transfer has no place anywhere on an empty film; `null` if it has one. */
export const tooLargeFor = (
  film: Film,
  { width, height, turn }: Pick<Transfer, 'width' | 'height' | 'turn'>,
) =>
  pieceTooLarge(
    { film: filmShape(film), margins: film.margins, gap: film.gap },
    { width, length: height, turn },
  );

/** A copy that got no place, and why. */
export interface LeftOut {
  readonly transfer: Id<'transfer'>;
  readonly count: number;
  readonly reason: UnplacedReason;
}

/**
 * Where a plan puts the copies behind its pieces. Along the film the numbers of a transfer go up,
 * so that they are found by looking; copies the plan has no place for come off the film.
 */
export function placesOf(
  plan: Plan,
  { problem, copies }: RunProblem,
  run: Run,
): [Id<'copy'>, Place | null][] {
  const free = copies.map((list) => [...list]);
  const places: [Id<'copy'>, Place | null][] = [];
  const laid = plan.placements.slice(problem.pinned.length).sort((a, b) => a.y - b.y || a.x - b.x);
  for (const { piece, x, y, turned } of laid) {
    const copy = free[piece]?.shift();
    if (copy) places.push([copy.id, { run: run.id, x, y, turned, pinned: false }]);
  }
  for (const copy of free.flat()) if (copy.place !== null) places.push([copy.id, null]);
  return places;
}

export const leftOut = (plan: Plan, { problem }: RunProblem): LeftOut[] =>
  plan.unplaced.flatMap(({ piece, count, reason }) => {
    const transfer = problem.pieces[piece]?.id as Id<'transfer'> | undefined;
    return transfer ? [{ transfer, count, reason }] : [];
  });
