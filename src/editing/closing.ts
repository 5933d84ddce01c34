import type { Closing, Id, LedgerEntry, SupplyKind } from '../model';
import { inUse, leftOfFilm, shared, standing, type TakenBlanks, takenBlanks, takenByRun } from '../stock';
import { sum } from '../units';
import { counterEntry, enter } from './ledger';
import { moveTo } from './runs';
import { shelveOvers } from './shelf';
import type { BookDraft, EditContext } from './step';

/** What is told of a run as it is closed, or later. */
type ToldClosing = Omit<Closing, 'at' | 'changed' | 'earlier'>;

/** All that was told of a run before, the latest last. */
function versionsOf(told: Closing | undefined): Closing['earlier'] {
  if (!told) return [];
  const { id: _, earlier, ...last } = told;
  return [...earlier, last];
}

/**
 * Closes a pressed run: keeps its record, takes ink, powder and garments out of stock, and puts its spare copies on the shelf.
 */
export function closeRun(
  draft: BookDraft,
  closing: ToldClosing,
  blanks: readonly TakenBlanks[],
  context: EditContext,
): void {
  const { now } = context;
  const run = draft.run[closing.id];
  if (run?.state !== 'pressed') return;
  shelveOvers(draft, run.id, now);
  moveTo(run, 'closed', now);
  draft.closing[run.id] = { ...closing, at: now, changed: now, earlier: versionsOf(draft.reopened[run.id]) };
  delete draft.reopened[run.id];
  settleStock(draft, closing, blanks, context);
}

/** Corrects what was told of a closed run; what was told before stays readable, and stock gets the difference. */
export function correctClosing(
  draft: BookDraft,
  closing: ToldClosing,
  blanks: readonly TakenBlanks[],
  context: EditContext,
): void {
  const before = draft.closing[closing.id];
  if (draft.run[closing.id]?.state !== 'closed' || !before) return;
  const { at, day } = before;
  draft.closing[closing.id] = { ...closing, at, day, changed: context.now, earlier: versionsOf(before) };
  settleStock(draft, closing, blanks, context);
}

/**
 * Brings the stock to what a run has used. Film was taken when the run was printed, powder when it was weighed out, and all else when
 * it was closed, if it was: only the difference follows.
 */
function settleStock(
  draft: BookDraft,
  closing: ToldClosing,
  blanks: readonly TakenBlanks[],
  context: EditContext,
): void {
  const reason = { kind: 'used', run: closing.id } as const;
  const film = draft.film[draft.run[closing.id]?.film ?? ''];
  if (film) {
    const [used, planned] =
      film.kind === 'roll'
        ? [closing.actual.film, closing.planned.film]
        : [closing.actual.sheets, closing.planned.sheets];
    // Of a run that was printed before there was a ledger, what was planned is off the film.
    const isKnown = Object.values(draft.entry).some(
      ({ kind, run: by }) => kind === 'printed' && by === closing.id,
    );
    const gone = takenByRun(draft, closing.id, [film.id]) + (isKnown ? 0 : planned);
    enter(draft, film.id, gone - used, reason, context);
  }
  for (const kind of ['colour', 'white', 'powder'] as const) {
    takeSupply(draft, kind, closing.actual[kind], closing.id, context);
  }
  for (const { blank, order, used, spoiled } of blanks) {
    const taken = takenBlanks(draft.entry, closing.id, blank, order);
    enter(draft, blank, taken.used - used, { ...reason, order }, context);
    enter(draft, blank, taken.spoiled - spoiled, { ...reason, order, kind: 'spoiled' }, context);
  }
}

/**
 * Takes what was used of a kind from the items in use, in equal parts; what was weighed out for the run is taken already.
 * @param used `null` where nobody measured: no more is taken than what was weighed out
 */
function takeSupply(
  draft: BookDraft,
  kind: SupplyKind,
  used: number | null,
  run: Id<'run'>,
  context: EditContext,
): void {
  const items = inUse(draft, kind);
  const all: string[] = Object.values(draft.item).flatMap(({ id, kind: own }) => (own === kind ? [id] : []));
  const taken = takenByRun(draft, run, all);
  const byClosing = standing(draft.entry, (entry) => entry.run === run && entry.kind === 'used');
  const weighed = taken + sum(byClosing.flatMap(({ item, amount }) => (all.includes(item) ? [amount] : [])));
  const rest = (used ?? weighed) - taken;
  shared(rest, items.length).forEach((part, at) => {
    const item = items[at];
    if (item) enter(draft, item.id, -part, { kind: 'used', run }, context);
  });
}

/** Takes the closing of a run back: what it took of the stock is there again, and what was told of it waits for it to be closed again. */
export function takeBackClosing(draft: BookDraft, id: Id<'run'>, context: EditContext): void {
  const told = draft.closing[id];
  if (told) draft.reopened[id] = told;
  delete draft.closing[id];
  const byClosing = ({ run, kind, order }: LedgerEntry) =>
    run === id && (kind === 'used' || (kind === 'spoiled' && order !== null));
  for (const { id: entry, item, amount } of standing(draft.entry, byClosing)) {
    const film = draft.film[item];
    // A film that got back more than it has left since has no less than nothing.
    if (film && leftOfFilm(film) - amount < 0) continue;
    counterEntry(draft, entry, context);
  }
}
