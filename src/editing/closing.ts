import type { Closing, Id, LedgerEntry, SupplyKind } from '../model';
import { inUse, leftOfFilm, shared, standing, type TakenBlanks, takenByRun } from '../stock';
import { counterEntry, enter } from './ledger';
import { moveTo } from './runs';
import { shelveOvers } from './shelf';
import type { BookDraft, EditContext } from './step';

/**
 * Closes a pressed run: keeps its record, takes ink, powder and garments out of stock, and puts its spare copies on the shelf.
 * Film was taken when the run was printed, powder when it was weighed out: only the difference to what was really used follows.
 */
export function closeRun(
  draft: BookDraft,
  closing: Omit<Closing, 'at' | 'changed'>,
  blanks: readonly TakenBlanks[],
  context: EditContext,
): void {
  const { now } = context;
  const run = draft.run[closing.id];
  if (run?.state !== 'pressed') return;
  shelveOvers(draft, run.id, now);
  moveTo(run, 'closed', now);
  draft.closing[run.id] = { ...closing, at: now, changed: now };
  const reason = { kind: 'used', run: closing.id } as const;

  const film = draft.film[run.film];
  if (film) {
    const [used, planned] =
      film.kind === 'roll'
        ? [closing.actual.film, closing.planned.film]
        : [closing.actual.sheets, closing.planned.sheets];
    // Of a run that was printed before there was a ledger, what was planned is off the film.
    const isKnown = Object.values(draft.entry).some(
      ({ kind, run: by }) => kind === 'printed' && by === run.id,
    );
    const gone = isKnown ? takenByRun(draft, closing.id, [film.id]) : planned;
    enter(draft, film.id, gone - used, reason, context);
  }
  for (const kind of ['colour', 'white', 'powder'] as const) {
    const used = closing.actual[kind];
    if (used !== null) takeSupply(draft, kind, used, closing.id, context);
  }
  for (const { blank, order, used, spoiled } of blanks) {
    enter(draft, blank, -used, { ...reason, order }, context);
    enter(draft, blank, -spoiled, { ...reason, order, kind: 'spoiled' }, context);
  }
}

/** Takes what was used of a kind from the items in use, in equal parts; what was weighed out for the run is taken already. */
function takeSupply(
  draft: BookDraft,
  kind: SupplyKind,
  used: number,
  run: Id<'run'>,
  context: EditContext,
): void {
  const items = inUse(draft, kind);
  const all = Object.values(draft.item).flatMap(({ id, kind: own }) => (own === kind ? [id] : []));
  const rest = used - takenByRun(draft, run, all);
  shared(rest, items.length).forEach((part, at) => {
    const item = items[at];
    if (item) enter(draft, item.id, -part, { kind: 'used', run }, context);
  });
}

/** Takes the closing of a run back: what it took of the stock is there again, and its record is gone. */
export function takeBackClosing(draft: BookDraft, id: Id<'run'>, context: EditContext): void {
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
