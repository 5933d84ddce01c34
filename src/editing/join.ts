import { copiesToLay, layRun, problemOfJoining, sheetAt, soundPlaces } from '../layout';
import {
  type Book,
  type DraftRun,
  filmOf,
  type Id,
  printerOfRun,
  progressOf,
  type Run,
  waitingReprints,
} from '../model';
import type { AtOnce } from '../packing';
import { BEGUN, printKey, READY, ticked, ticksOf } from '../pressing';
import { type Micrometres, um } from '../units';
import { setPlaces } from './places';
import { printedTo, unlockRun } from './runs';
import { applyEdit, type BookDraft, bookSoFar, type EditContext } from './step';

/** A span of a run that is not printed yet, nor at the printer: what joins the run comes to lie on it or behind. */
interface OpenSpan {
  /** Among the spans of the run, from 0. */
  readonly span: number;
  readonly from: Micrometres;
}

/**
 * The next span of a run that can still be changed: of a draft the first behind what is printed, of a run that is being printed span by
 * span, or sheet by sheet, the first that is neither printed nor at the printer.
 * @returns `null` where there is none: a run that was sent whole lies in the printer as it is
 */
export function nextOpenSpan(book: Book, run: Run): OpenSpan | null {
  const spans = layRun(book, run)?.spans ?? [];
  const after = (from: Micrometres): OpenSpan | null => {
    const span = spans.findIndex((own) => own.from >= from);
    return span === -1 ? null : { span, from };
  };
  if (run.received || spans.length === 0) return null;
  if (run.state === 'draft') return after(progressOf(run).printedTo);
  const isBySpan = filmOf(book, run)?.kind === 'sheets' || printerOfRun(book, run)?.sends === 'by-span';
  if (run.state !== 'locked' || !isBySpan) return null;
  const done = ticked(ticksOf(book, run.id));
  const { printedTo: before } = progressOf(run);
  const isPrinted = (span: number) => done.has(printKey(span)) || (spans[span]?.to ?? 0) <= before;
  const printed = spans.findLastIndex((_, span) => isPrinted(span)) + 1;
  const isAtPrinter = done.has(BEGUN) || done.has(READY) || (printed > 0 && done.size > 0);
  const next = printed + Number(isAtPrinter);
  const open = spans[next];
  return open ? { span: next, from: open.from } : null;
}

/** Where the reprints that wait would lie on a draft, behind a place and on the film that it takes already, those in a rush first. */
function placesFor(book: Book, run: DraftRun, from: Micrometres, engine: AtOnce) {
  const laid = layRun(book, run);
  const film = book.film[run.film];
  if (!laid || !film) return [];
  const ids = new Set(waitingReprints(book).map(({ id }) => id));
  const asked = problemOfJoining(book, run, film, ids, {
    length: laid.lengthUsed,
    sheets: sheetAt(film, laid.lengthUsed),
  });
  if (copiesToLay(asked).length === 0) return [];
  const { film: shape } = asked.problem;
  // Nothing new lies on what is printed, nor on what is at the printer now.
  const behind =
    shape.kind === 'roll'
      ? { ...shape, noPrint: [...shape.noPrint, ...(from > 0 ? [{ from: um(0), to: from }] : [])] }
      : { ...shape, printed: Math.max(shape.printed, sheetAt(film, from)) };
  const problem = { ...asked, problem: { ...asked.problem, film: behind } };
  const places = soundPlaces({ book, run, film }, problem, engine.firstPlan(problem.problem)) ?? [];
  return places.filter(([, place]) => place !== null);
}

/** Makes a locked run a draft behind a place. */
function openFrom(draft: BookDraft, id: Id<'run'>, from: Micrometres, context: EditContext): void {
  if (from > 0) printedTo(draft, id, from, context);
  else unlockRun(draft, id, context);
}

/** What came of joining a run. */
interface Joined {
  readonly copies: number;
  /** The spans that they came to lie on, from 0. */
  readonly spans: readonly number[];
}

/**
 * Puts reprints that wait on the next span of a run that has room for them, without moving anything or taking more film. A run that is being
 * printed becomes a draft behind what is printed or at the printer, to be locked again; one that has no room stays as it is.
 * @returns `null` where none of them fits
 */
function joinNextSpan(draft: BookDraft, id: Id<'run'>, engine: AtOnce, context: EditContext): Joined | null {
  const book = bookSoFar(draft);
  const run = book.run[id];
  const open = run && nextOpenSpan(book, run);
  if (!open) return null;
  // Tried first on a book of its own: a run that has no room stays sent to print.
  const opened =
    run.state === 'draft'
      ? book
      : applyEdit(book, (trial) => openFrom(trial, id, open.from, context), context.now).book;
  const own = opened.run[id];
  if (own?.state !== 'draft') return null;
  const places = placesFor(opened, own, open.from, engine);
  if (places.length === 0) return null;
  if (run.state !== 'draft') openFrom(draft, id, open.from, context);
  setPlaces(draft, id, places);
  const joined = bookSoFar(draft);
  const spans = (joined.run[id] && layRun(joined, joined.run[id])?.spans) ?? [];
  const on = places.map(([, place]) => spans.findLastIndex(({ from }) => from <= (place?.y ?? 0)));
  return { copies: places.length, spans: [...new Set(on)].sort((x, y) => x - y) };
}

/** The same for a draft alone. */
export const joinDraft = (
  draft: BookDraft,
  id: Id<'run'>,
  engine: AtOnce,
  context: EditContext,
): Joined | null => (draft.run[id]?.state === 'draft' ? joinNextSpan(draft, id, engine, context) : null);

/** The same for a run that is sent to print alone. */
export const joinPrinting = (
  draft: BookDraft,
  id: Id<'run'>,
  engine: AtOnce,
  context: EditContext,
): Joined | null => (draft.run[id]?.state === 'locked' ? joinNextSpan(draft, id, engine, context) : null);
