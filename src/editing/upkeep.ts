import type { Check, Id, Reading, UpkeepEntry } from '../model';
import { inUse, shared } from '../stock';
import type { LocalDate } from '../units';
import { type ShopCheck, startingCheck } from '../upkeep';
import { enter } from './ledger';
import type { BookDraft, EditContext } from './step';

/** Who did something, and on which day of the shop's calendar. */
interface Doer {
  readonly by: string;
  readonly day: LocalDate;
}

/** What is noted of a check. */
export type Note = Pick<UpkeepEntry, 'check' | 'machine' | 'name' | 'done' | 'note'>;

/** What mending took that a check had failed for. */
export type Failed = NonNullable<UpkeepEntry['failed']>;

/**
 * Notes that a check was done, or takes the last such note back: entries are only ever added.
 * @param name what the check, and the machine among several, is called on the screen of whoever did it
 */
export function noteCheck(
  draft: BookDraft,
  { check, machine, name, done, note }: Note,
  { by, day }: Doer,
  { newId, now }: EditContext,
): void {
  const id = newId<'upkeep'>();
  draft.upkeep[id] = { id, check, machine, name, done, at: now, day, by, note, failed: null, changed: now };
}

/** Notes a check that failed, and takes the ink that mending took out of stock: it is due until it passes. */
export function noteFailedCheck(
  draft: BookDraft,
  { check, machine, name, note }: Omit<Note, 'done'>,
  failed: Failed,
  { by, day }: Doer,
  context: EditContext,
): void {
  const { newId, now } = context;
  const id = newId<'upkeep'>();
  draft.upkeep[id] = { id, check, machine, name, done: false, at: now, day, by, note, failed, changed: now };
  for (const kind of ['colour', 'white'] as const) {
    const items = inUse(draft, kind);
    shared(failed[kind], items.length).forEach((part, at) => {
      enter(draft, items[at]?.id ?? '', -part, { kind: 'used', note: name }, context);
    });
  }
}

/** Notes the air of the room. */
export function noteAir(
  draft: BookDraft,
  { temperature, humidity }: Pick<Reading, 'temperature' | 'humidity'>,
  { by, day }: Doer,
  { newId, now }: EditContext,
): void {
  if (temperature === null && humidity === null) return;
  const id = newId<'reading'>();
  draft.reading[id] = { id, at: now, day, temperature, humidity, by, changed: now };
}

/** Notes the air of the room, and with it the check that asks for it, if the shop has one. */
export function noteRoom(
  draft: BookDraft,
  air: Pick<Reading, 'temperature' | 'humidity'>,
  check: Note | null,
  doer: Doer,
  context: EditContext,
): void {
  noteAir(draft, air, doer, context);
  if (check) noteCheck(draft, check, doer, context);
}

/** Adds a check of the shop's own. */
export function addCheck(
  draft: BookDraft,
  fields: Pick<Check, 'name' | 'interval' | 'of' | 'hazard'>,
  { newId, now }: EditContext,
): Id<'check'> {
  const id = newId<'check'>();
  draft.check[id] = { id, ...fields, archived: false, changed: now };
  return id;
}

/** Changes a check, one to start with too; what was noted of it stays. */
export function editCheck(
  draft: BookDraft,
  check: ShopCheck,
  fields: Partial<Pick<Check, 'name' | 'interval' | 'of' | 'hazard' | 'archived'>>,
  { now }: EditContext,
): void {
  draft.check[check.id] = { ...check, ...fields, changed: now };
}

/** A check to start with is again as it was then. */
export function resetCheck(draft: BookDraft, id: Id<'check'>): void {
  if (startingCheck(id)) delete draft.check[id];
}
