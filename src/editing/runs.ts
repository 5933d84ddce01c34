import type { Draft } from 'immer';
import { type LaidRun, layRun, sheetAt, takenOffRoll } from '../layout';
import {
  type CostBasis,
  type DraftRun,
  draftRun,
  type Film,
  type Id,
  type Instant,
  isFixed,
  isPrinted,
  type LedgerEntry,
  type LockedRun,
  type OnRun,
  ordersOfRun,
  type Run,
  type RunView,
  runViewOf,
  type Snapshot,
  takenBefore,
  takes,
} from '../model';
import { standing } from '../stock';
import { type Micrometres, quartersIn, um } from '../units';
import { counterEntry, enter } from './ledger';
import { bring, letGo } from './places';
import { type BookDraft, bookSoFar, type EditContext } from './step';

export function addRun(
  draft: BookDraft,
  { name, film, takes = 'all' }: { name: string; film: Id<'film'>; takes?: Run['takes'] },
  { newId, now }: EditContext,
): Id<'run'> {
  const id = newId<'run'>();
  draft.run[id] = draftRun({ id, name, film, takes, changed: now });
  return id;
}

export function editRun(
  draft: BookDraft,
  id: string,
  fields: Partial<Pick<Run, 'name' | 'film' | 'takes'>>,
): void {
  const run = draft.run[id];
  if (run) Object.assign(run, fields);
}

const copiesOf = (draft: BookDraft, run: string) =>
  Object.values(draft.copy).filter((copy) => copy.run === run);

/** Removes a draft on which nothing is printed; its copies wait again. */
export function removeRun(draft: BookDraft, id: string): void {
  const run = draft.run[id];
  if (run?.state !== 'draft' || run.printed) return;
  for (const copy of copiesOf(draft, id)) bring(copy, { state: 'waiting', run: null, place: null });
  delete draft.run[id];
}

/** Chooses waiting copies for a draft, or gives them back to all; what lies on a film stays there. */
export function chooseCopies(draft: BookDraft, run: Id<'run'> | null, ids: Iterable<string>): void {
  if (run !== null && draft.run[run]?.state !== 'draft') return;
  for (const id of ids) {
    const copy = draft.copy[id];
    if (copy?.state === 'waiting') copy.run = run;
  }
}

/** Moves copies from one run to a draft, where they wait for a place; those in print stay. */
export function moveToRun(draft: BookDraft, run: Id<'run'>, ids: Iterable<string>): void {
  if (draft.run[run]?.state !== 'draft') return;
  for (const id of ids) {
    const copy = draft.copy[id];
    if (copy && copy.state !== 'shelved' && !isFixed(draft, copy))
      bring(copy, { state: 'waiting', run, place: null });
  }
}

/** All that it takes to draw, print, cut and press some copies of a run as they are now. */
function snapshotOf(
  draft: BookDraft,
  view: RunView & { readonly film: Film },
  copies: readonly OnRun[],
  now: Instant,
): Snapshot {
  const { run, film, garment, placement } = view;
  const reprints = view.reprints();
  const { onto } = view.dealt();
  const first = takes(
    view,
    copies.map(({ copy }) => copy),
    onto,
    takenBefore(bookSoFar(draft), run),
  );
  const each = <Entry>(entryOf: (copy: OnRun) => Entry): Entry[] => [...new Set(copies.map(entryOf))];
  const told = ordersOfRun(bookSoFar(draft), run);
  const orders = each(({ order }) => order.id).flatMap((id) => told[id] ?? []);
  const isOn = new Set(orders.map(({ id }) => id));
  return {
    at: now,
    film,
    printer: view.printer ?? null,
    orders,
    transfers: each(({ transfer }) => transfer),
    copies: copies.map(({ copy }) => ({
      ...copy,
      onto: onto.get(copy.id) ?? null,
      reprint: reprints.has(copy.id),
    })),
    garments: Object.values(garment).flatMap((line) =>
      isOn.has(line.order) ? [{ ...line, takes: first.get(line.id) ?? 0 }] : [],
    ),
    placements: Object.values(placement).filter(({ order }) => isOn.has(order)),
    outlines: Object.fromEntries(
      copies.flatMap(({ copy, transfer, outline, byOutline }) =>
        outline && (byOutline || quartersIn(copy.place.angle) === null) ? [[transfer.id, outline]] : [],
      ),
    ),
  };
}

/** What holds for a run as an edit has left it so far; `null` if there is no such run, or its film is gone. */
function viewOf(draft: BookDraft, id: string): (RunView & { readonly film: Film }) | null {
  const view = runViewOf(bookSoFar(draft), id);
  return view?.film ? { ...view, film: view.film } : null;
}

/** Brings a locked run to a state beyond, or to one before, and notes when. */
export function moveTo(run: Draft<LockedRun>, state: LockedRun['state'], now: Instant): void {
  run.state = state;
  run.history.push({ state, at: now });
}

/** A run as a draft again, of which some may be printed. */
const asDraft = (run: Run, now: Instant): DraftRun => ({
  ...draftRun(run),
  history: run.state === 'draft' ? run.history : [...run.history, { state: 'draft', at: now }],
  laidBy: run.laidBy,
  printed: run.printed,
  spoiled: run.spoiled,
});

/**
 * Sends a draft to print: it embeds all it needs, and no later edit changes it. What was chosen for it and does not lie on its film
 * waits for any run.
 * @param basis what its cost rests on; `null` where that is not known
 */
export function lockRun(
  draft: BookDraft,
  id: string,
  { now }: EditContext,
  basis: CostBasis | null = null,
): void {
  const view = viewOf(draft, id);
  if (view?.run.state !== 'draft' || view.placed.length === 0) return;
  const { run, placed } = view;
  const rest = placed.filter(({ fixed }) => !fixed);
  draft.run[id] = {
    ...run,
    // What was written of the draft may be of another layout.
    imageFeed: null,
    state: 'locked',
    history: [...run.history, { state: 'locked', at: now }],
    snapshot: snapshotOf(draft, view, rest, now),
    basis,
  };
  for (const copy of copiesOf(draft, id)) {
    if (copy.state === 'waiting') bring(copy, { state: 'waiting', run: null, place: null });
  }
}

/** Takes a locked run back to a draft: nothing of it was printed, or no more than before. */
export function unlockRun(draft: BookDraft, id: string, { now }: EditContext): void {
  const run = bookSoFar(draft).run[id];
  if (run?.state === 'locked' && !run.received) draft.run[id] = asDraft(run, now);
}

/** What is printed of a run that stopped at a place: what was before, and what begins before that place, as it is now. */
function printedAt(
  draft: BookDraft,
  view: RunView & { readonly film: Film },
  to: Micrometres,
  now: Instant,
): NonNullable<Run['printed']> {
  const { printed } = view.run;
  const before = printed?.as ?? [];
  const known = new Set(before.flatMap(({ copies }) => copies.map(({ id }) => id)));
  const more = view.placed.filter(({ copy }) => copy.place.y < to && !known.has(copy.id));
  return {
    to: um(Math.max(printed?.to ?? 0, to)),
    as: more.length > 0 ? [...before, snapshotOf(draft, view, more, now)] : before,
  };
}

/** Notes what the print-ready image of a locked run was made shorter by along the film; that of a draft may not be the last. */
export function noteImage(draft: BookDraft, id: string, feed: number): void {
  const run = draft.run[id];
  if (run && run.state !== 'draft' && !run.received) run.imageFeed = feed;
}

/**
 * Says how far a locked run is printed: what begins before is done, the rest is a draft again and can be laid out
 * anew behind it.
 */
export function printedTo(draft: BookDraft, id: string, to: Micrometres, { now }: EditContext): void {
  const view = viewOf(draft, id);
  if (view?.run.state !== 'locked' || view.run.received || to <= 0) return;
  draft.run[id] = { ...asDraft(view.run, now), printed: printedAt(draft, view, to, now) };
}

/**
 * Says that film of a locked or part printed run was spoiled: every copy it touches waits again, the film counts as used,
 * and nothing new is laid there.
 * @returns how many copies go back on the list
 */
export function spoil(
  draft: BookDraft,
  id: string,
  { from, to }: { from: Micrometres; to: Micrometres },
  { now }: EditContext,
): number {
  const view = viewOf(draft, id);
  const laid = view && laidSoFar(draft, id);
  if (!laid || isPrinted(view.run) || view.run.received || to <= from) return 0;
  const copies = laid.copies
    .filter((copy) => copy.y < to && copy.y + copy.length > from)
    .map((copy) => copy.id);
  const touched = new Set(copies);
  const printed = printedAt(draft, view, to, now);
  draft.run[id] = {
    ...asDraft(view.run, now),
    printed: {
      ...printed,
      as: printed.as.map((part) => ({
        ...part,
        copies: part.copies.filter((copy) => !touched.has(copy.id)),
      })),
    },
    spoiled: [...view.run.spoiled, { from, to, copies, at: now }],
  };
  // One that was spoiled before may lie on another film by now.
  const own = copies.filter((copy) => draft.copy[copy]?.run === id);
  letGo(draft, own);
  for (const copy of own) {
    const order = draft.order[draft.transfer[draft.copy[copy]?.transfer ?? '']?.order ?? ''];
    // What is to be printed again is in no archive.
    if (order) order.archived = false;
  }
  return own.length;
}

/** What a run takes of its film, in the film's base unit. */
const filmTaken = (laid: LaidRun): number =>
  laid.film.kind === 'roll' ? takenOffRoll(laid) : sheetAt(laid.film, laid.lengthUsed);

/** A run where it lies, as an edit has left it so far. */
function laidSoFar(draft: BookDraft, id: string): LaidRun | null {
  const book = bookSoFar(draft);
  const run = book.run[id];
  return run ? layRun(book, run) : null;
}

/** Closes the printing of a locked run: its film is off the roll, or its sheets off the stack. */
export function finishRun(draft: BookDraft, id: Id<'run'>, context: EditContext): void {
  const run = draft.run[id];
  const film = run && draft.film[run.film];
  const laid = run && laidSoFar(draft, id);
  if (run?.state !== 'locked' || !film || !laid) return;
  moveTo(run, 'printed', context.now);
  enter(draft, film.id, -filmTaken(laid), { kind: 'printed', run: id }, context);
  // What the roll's present leading edge is counted from has moved.
  if (film.kind === 'roll') {
    const off = takenOffRoll(laid);
    film.noPrint = film.noPrint
      .filter(({ to }) => to > off)
      .map(({ from, to }) => ({ from: um(Math.max(0, from - off)), to: um(to - off) }));
  }
}

/** Takes the last step back from printed to locked: the film is on the roll again. */
export function reopenRun(draft: BookDraft, id: Id<'run'>, context: EditContext): void {
  const run = draft.run[id];
  const film = run && draft.film[run.film];
  const laid = run && laidSoFar(draft, id);
  if (run?.state !== 'printed' || !film || !laid) return;
  moveTo(run, 'locked', context.now);
  const own = ({ item, kind, run: by }: LedgerEntry) => item === film.id && kind === 'printed' && by === id;
  const ledger = draft.entry;
  for (const entry of standing(ledger, own)) counterEntry(draft, entry.id, context);
  // Printed before there was a ledger.
  if (!Object.values(ledger).some(own)) {
    enter(draft, film.id, filmTaken(laid), { kind: 'returned', run: id }, context);
  }
  if (film.kind === 'roll' && laid.film.kind === 'roll') {
    film.noPrint = laid.film.noPrint.map((stretch) => ({ ...stretch }));
  }
}
