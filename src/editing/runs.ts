import type { Draft } from 'immer';
import { type LaidRun, layRun, sheetAt, takenOffRoll } from '../layout';
import {
  type Book,
  type Copy,
  type CostBasis,
  draftRun,
  filmOf,
  type Id,
  type Instant,
  isPrinted,
  type LedgerEntry,
  type Run,
  type Snapshot,
} from '../model';
import { standing } from '../stock';
import { type Micrometres, um } from '../units';
import { counterEntry, enter } from './ledger';
import { takeOff } from './places';
import type { BookDraft, EditContext } from './step';

export function addRun(
  draft: BookDraft,
  { name, film, takes = 'all' }: { name: string; film: Id<'film'>; takes?: Run['takes'] },
  { newId, now }: EditContext,
): Id<'run'> {
  const id = newId() as Id<'run'>;
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
  if (run?.state !== 'draft' || run.printedTo > 0) return;
  for (const copy of copiesOf(draft, id)) Object.assign(copy, { run: null, place: null });
  delete draft.run[id];
}

/** Chooses waiting copies for a run, or gives them back to all; what lies on a film stays there. */
export function chooseCopies(draft: BookDraft, run: Id<'run'> | null, ids: Iterable<string>): void {
  for (const id of ids) {
    const copy = draft.copy[id];
    if (copy && copy.place === null) copy.run = run;
  }
}

/** Moves copies from one run to another, where they wait for a place. */
export function moveToRun(draft: BookDraft, run: Id<'run'>, ids: Iterable<string>): void {
  for (const id of ids) {
    const copy = draft.copy[id];
    if (copy) Object.assign(copy, { run, place: null });
  }
}

/** All that it takes to draw, print and cut a run as it is now. What is printed already keeps what it was printed from. */
function snapshotOf(book: Book, run: Run, now: Snapshot['at']): Snapshot | null {
  const film = filmOf(book, run);
  if (!film) return null;
  const done =
    run.snapshot?.copies.filter((copy) => copy.place !== null && copy.place.y < run.printedTo) ?? [];
  const doneIds = new Set(done.map(({ id }) => id));
  const copies: Copy[] = [
    ...done,
    ...Object.values(book.copy).filter((copy) => copy.run === run.id && copy.place && !doneIds.has(copy.id)),
  ];
  const pick = <Entry extends { id: string }>(
    live: Readonly<Record<string, Entry>>,
    before: readonly Entry[] | undefined,
    ids: Iterable<string>,
    isDone: (id: string) => boolean,
  ): Entry[] =>
    [...new Set(ids)].flatMap(
      (id) => (isDone(id) ? before?.find((entry) => entry.id === id) : undefined) ?? live[id] ?? [],
    );
  const doneTransfers = new Set(done.map(({ transfer }) => transfer as string));
  const transfers = pick(
    book.transfer,
    run.snapshot?.transfers,
    copies.map(({ transfer }) => transfer),
    (id) => doneTransfers.has(id),
  );
  const orders = pick(
    book.order,
    run.snapshot?.orders,
    transfers.map(({ order }) => order),
    () => false,
  );
  const isOn = new Set(orders.map(({ id }) => id));
  const garments = Object.values(book.garment).filter(({ order }) => isOn.has(order));
  const placements = Object.values(book.placement).filter(({ order }) => isOn.has(order));
  return { at: now, film, orders, transfers, copies, garments, placements };
}

/** Brings a run to a state, and notes when. */
export function moveTo(run: Draft<Run>, state: Run['state'], now: Instant): void {
  run.state = state;
  run.history.push({ state, at: now });
}

/**
 * Sends a draft to print: it embeds all it needs, and no later edit changes it.
 * @param basis what its cost rests on; `null` where that is not known
 */
export function lockRun(
  draft: BookDraft,
  id: string,
  { now }: EditContext,
  basis: CostBasis | null = null,
): void {
  const run = draft.run[id];
  if (run?.state !== 'draft') return;
  const snapshot = snapshotOf(draft as Book, run as Run, now);
  if (!snapshot || snapshot.copies.length === 0) return;
  run.snapshot = copyOf(snapshot);
  run.basis = copyOf(basis);
  moveTo(run, 'locked', now);
}

/** A copy of its own, since a draft's records may not lie in two places. */
const copyOf = <Value>(value: Value): Value => JSON.parse(JSON.stringify(value)) as Value;

/** Takes a locked run back to a draft: nothing of it was printed, or no more than before. */
export function unlockRun(draft: BookDraft, id: string, { now }: EditContext): void {
  const run = draft.run[id];
  if (run?.state !== 'locked') return;
  moveTo(run, 'draft', now);
  if (run.printedTo === 0) run.snapshot = null;
}

/**
 * Says how far a locked run is printed: what begins before is done, the rest is a draft again and can be laid out
 * anew behind it.
 */
export function printedTo(draft: BookDraft, id: string, to: Micrometres, { now }: EditContext): void {
  const run = draft.run[id];
  if (run?.state !== 'locked') return;
  moveTo(run, 'draft', now);
  run.printedTo = um(Math.max(run.printedTo, to));
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
  const run = draft.run[id];
  const laid = layRun(draft as Book, run as Run);
  if (!run || !laid || isPrinted(run)) return 0;
  const touched = laid.copies.filter((copy) => copy.y < to && copy.y + copy.length > from);
  takeOff(
    draft,
    touched.map((copy) => copy.id),
  );
  const ids = new Set<string>(touched.map((copy) => copy.id));
  if (run.snapshot) run.snapshot.copies = run.snapshot.copies.filter((copy) => !ids.has(copy.id));
  run.spoiled.push({ from, to, copies: touched.map((copy) => copy.id), at: now });
  run.printedTo = um(Math.max(run.printedTo, to));
  if (run.state !== 'draft') moveTo(run, 'draft', now);
  return touched.length;
}

/** What a run takes of its film, in the film's base unit. */
const filmTaken = (laid: LaidRun): number =>
  laid.film.kind === 'roll' ? takenOffRoll(laid) : sheetAt(laid.film, laid.lengthUsed);

/** Closes the printing of a locked run: its film is off the roll, or its sheets off the stack. */
export function finishRun(draft: BookDraft, id: Id<'run'>, context: EditContext): void {
  const run = draft.run[id];
  const film = run && draft.film[run.film];
  const laid = run && layRun(draft as Book, run as Run);
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
  const laid = run && layRun(draft as Book, run as Run);
  if (run?.state !== 'printed' || !film || !laid) return;
  moveTo(run, 'locked', context.now);
  const own = ({ item, kind, run: by }: LedgerEntry) => item === film.id && kind === 'printed' && by === id;
  const ledger = draft.entry as Book['entry'];
  for (const entry of standing(ledger, own)) counterEntry(draft, entry.id, context);
  // Printed before there was a ledger.
  if (!Object.values(ledger).some(own)) {
    enter(draft, film.id, filmTaken(laid), { kind: 'returned', run: id }, context);
  }
  if (film.kind === 'roll' && laid.film.kind === 'roll') {
    film.noPrint = laid.film.noPrint.map((stretch) => ({ ...stretch }));
  }
}
