import { current } from 'immer';
import { type HandOver, merged, type Records, recordsOf } from '../hand-over';
import { type Aside, asId, type Book, type Id, type Spoilage, type Tick } from '../model';
import { takeOutSpoiled } from './bench';
import { own } from './own';
import type { BookDraft, EditContext } from './step';
import { followPacking, followTicks } from './ticks';

/** Why what was ticked elsewhere cannot be put to its run now. */
export type AsideReason = 'unknown' | 'draft' | 'changed' | 'closed';

/** What became of a hand-over. */
export interface TakenIn {
  /** A run that is new here, a later word of one that was received before, or ticks. */
  readonly kind: 'run' | 'again' | 'ticks' | 'aside';
  /** How many ticks and spoilages were not known here. */
  readonly ticks: number;
  readonly spoilages: number;
}

/** Why ticks wait beside their run; `null` if nothing keeps them from it. */
export function asideReason(
  book: Pick<Book, 'run'>,
  { run: id, locked }: Pick<Aside, 'run' | 'locked'>,
): AsideReason | null {
  const run = book.run[id];
  if (!run) return 'unknown';
  if (run.state === 'draft') return 'draft';
  if (run.snapshot.at !== locked) return 'changed';
  return run.state === 'closed' ? 'closed' : null;
}

/** Whether ticks that wait can be taken in at all; those of a run that is not here, or may still be moved about, cannot. */
export const mayTakeIn = (reason: AsideReason | null): boolean => reason !== 'unknown' && reason !== 'draft';

/** Puts records into a collection beside those of the run that are there; returns the new ones. */
function put<Item extends Tick | Spoilage>(
  collection: Record<string, Item>,
  known: readonly Item[],
  others: readonly Item[],
): Item[] {
  for (const item of merged(known, others)) {
    if (!known.includes(item)) collection[item.id] = own(item);
  }
  const before = new Set<string>(known.map(({ id }) => id));
  return others.filter(({ id }) => !before.has(id));
}

/** Puts records to those of a run that are here already, and lets the run follow. */
function addRecords(
  draft: BookDraft,
  run: Id<'run'>,
  { ticks, spoilages }: Records,
  context: EditContext,
): Pick<TakenIn, 'ticks' | 'spoilages'> {
  const before = recordsOf(draft, run);
  const newTicks = put(draft.tick, before.ticks, ticks);
  const newSpoilages = put(draft.spoilage, before.spoilages, spoilages);
  followTicks(draft, run, context);
  for (const { subject } of newTicks) followPacking(draft, run, subject);
  for (const spoilage of newSpoilages) takeOutSpoiled(draft, spoilage);
  return { ticks: newTicks.length, spoilages: newSpoilages.length };
}

/** Keeps a received run: the later of two words of it, and all that the other device is known to have. */
function putReceived(draft: BookDraft, { run, records }: Extract<HandOver, { kind: 'run' }>): void {
  const before = draft.run[run.id]?.received;
  const known = new Set([
    ...(before?.known ?? []),
    ...[...records.ticks, ...records.spoilages].map(({ id }) => id),
  ]);
  if (!before || before.made < run.received.made) draft.run[run.id] = own(run);
  const { received } = draft.run[run.id] ?? {};
  if (received) received.known = [...known].sort();
}

/**
 * Takes in what another device handed over. A run comes to Cut and Press as one received: a later word of it replaces an earlier one,
 * never the other way round, and what was ticked here stays. Ticks are put to their run, whichever side made them; those of a run
 * that has moved on are kept aside.
 */
export function takeIn(draft: BookDraft, handOver: HandOver, context: EditContext): TakenIn {
  const { records, made } = handOver;
  const id = handOver.kind === 'run' ? handOver.run.id : handOver.run;
  const here = draft.run[id];
  if (handOver.kind === 'run' && here?.received !== null) {
    putReceived(draft, handOver);
    return { kind: here ? 'again' : 'run', ...addRecords(draft, id, records, context) };
  }
  const about =
    handOver.kind === 'run'
      ? { name: handOver.run.name, locked: handOver.run.snapshot.at }
      : { name: handOver.name, locked: handOver.locked };
  if (asideReason(draft, { run: id, ...about }) === null)
    return { kind: 'ticks', ...addRecords(draft, id, records, context) };
  const aside = asId<'aside'>(`${id}/${made}`);
  draft.aside[aside] = own<Aside>({
    id: aside,
    run: id,
    ...about,
    made,
    ticks: [...records.ticks],
    spoilages: [...records.spoilages],
    changed: context.now,
  });
  return { kind: 'aside', ticks: records.ticks.length, spoilages: records.spoilages.length };
}

/** Takes in ticks that were kept aside, if their run is here; they are gone from there. */
export function takeAside(draft: BookDraft, id: string, context: EditContext): void {
  const aside = current(draft.aside)[id];
  if (!aside || !mayTakeIn(asideReason(draft, aside))) return;
  addRecords(draft, aside.run, aside, context);
  delete draft.aside[id];
}

export function dropAside(draft: BookDraft, id: string): void {
  delete draft.aside[id];
}

/** Notes that the other device has taken in what was handed back to it: from then on only what is new goes there. */
export function noteHandedBack(draft: BookDraft, id: string, ids: readonly string[]): void {
  const { received } = draft.run[id] ?? {};
  if (received) received.known = [...new Set([...received.known, ...ids])].sort();
}

/** Takes a received run off this device; what was ticked on it stays, should it come again. */
export function removeReceived(draft: BookDraft, id: string): void {
  if (draft.run[id]?.received) delete draft.run[id];
}
