import {
  asId,
  type Book,
  type Copy,
  copiesOfOrder,
  draftRun,
  type Film,
  type Order,
  type Run,
  runCost,
} from '../model';
import type { Plan, Problem } from '../packing';
import { atOnce } from '../planning';
import { alsoByQuarters, type Micrometres, type Minor } from '../units';
import { filmTaken } from './figures';
import { untouched } from './film-shape';
import { type LaidRun, layRun } from './laid';
import { type Places, withPlaces } from './offered';
import { placesOf, problemOf, type RunProblem } from './problem';

/** A run as it would be on some film, to be laid out beside others; nothing of it is in the book. */
export interface Candidate {
  readonly book: Book;
  readonly run: Run;
  readonly film: Film;
  readonly problem: RunProblem;
}

/** What all copies of a run would take of a film. */
export interface FilmTried {
  readonly film: Film;
  /** Taken off a roll, what the printer feeds blank for a job included. */
  readonly length: Micrometres;
  readonly sheets: number;
  readonly cost: Minor;
  /** Copies that found no place: too large, or too little film. */
  readonly leftOut: number;
}

/** How a run is tried: on which film, with every copy free to turn, on as much film as it takes. */
export interface Trial {
  readonly film: Film;
  readonly allTurn?: boolean;
  readonly endless?: boolean;
}

const endless = (problem: Problem): Problem =>
  problem.film.kind === 'roll'
    ? { ...problem, film: { ...problem.film, lengthLimit: null } }
    : { ...problem, film: { ...problem.film, sheetLimit: null } };

const mapped = <Entry extends { id: string }>(
  entries: Readonly<Record<string, Entry>>,
  change: (entry: Entry) => Entry,
): Record<string, Entry> =>
  Object.fromEntries(Object.entries(entries).map(([id, entry]) => [id, change(entry)]));

/** A run with all its copies and those that wait for it, none of them printed or pinned, as one that is to be laid out. */
export function candidateOf(
  book: Book,
  run: Run,
  { film, allTurn = false, endless: any = false }: Trial,
): Candidate {
  const own = draftRun({ ...run, film: film.id });
  const tried: Book = {
    ...book,
    film: { ...book.film, [film.id]: film },
    run: { ...book.run, [run.id]: own },
    transfer: allTurn
      ? mapped(book.transfer, (transfer) => ({ ...transfer, turn: alsoByQuarters(transfer.turn) }))
      : book.transfer,
    copy: mapped(book.copy, (copy) =>
      copy.run === run.id && copy.state === 'placed'
        ? { ...copy, place: { ...copy.place, pinned: false } }
        : copy,
    ),
  };
  const found = problemOf(tried, own, film, 'pinned');
  return {
    book: tried,
    run: own,
    film,
    problem: any ? { ...found, problem: endless(found.problem) } : found,
  };
}

/** An order in a run of its own, as one would print it that is not laid out yet. */
export function orderAlone(book: Book, order: Order, film: Film): { readonly book: Book; readonly run: Run } {
  const run = draftRun({
    id: asId(`alone/${order.id}`),
    name: order.name,
    film: film.id,
    takes: 'chosen',
    changed: order.changed,
  });
  const copies = copiesOfOrder(book, order.id).flatMap((own): Copy[] =>
    own.state === 'shelved' ? [] : [{ ...own, state: 'waiting', run: run.id, place: null, role: 'ordered' }],
  );
  return { book: { ...book, copy: Object.fromEntries(copies.map((copy) => [copy.id, copy])) }, run };
}

/** A candidate where a plan puts its copies. */
export function laidBy(
  { book, run, film, problem }: Candidate,
  plan: Plan,
): {
  readonly book: Book;
  readonly laid: LaidRun | null;
  readonly places: Places;
} {
  const places = placesOf(plan, problem, film);
  const laidBook = withPlaces(book, run, places);
  return { book: laidBook, laid: layRun(laidBook, run), places };
}

/** What a plan takes of a candidate's film. */
export function filmTried({ film }: Candidate, { used, unplaced }: Plan): FilmTried {
  const taken = filmTaken(film, used, untouched);
  const leftOut = unplaced.reduce((sum, { count }) => sum + count, 0);
  return { film, ...taken, cost: runCost(film, taken), leftOut };
}

/** Those that take most copies first, the cheapest among them first. */
export const byThrift = (a: FilmTried, b: FilmTried): number => a.leftOut - b.leftOut || a.cost - b.cost;

/** A quick first layout of a candidate. */
export const laidQuickly = (candidate: Candidate) =>
  laidBy(candidate, atOnce.firstPlan(candidate.problem.problem));
