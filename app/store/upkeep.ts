import { useMemo } from 'react';
import { edits } from '../../src/editing';
import { asInstant, type Book, type UpkeepEntry } from '../../src/model';
import {
  type CheckState,
  checkStates,
  type PastDate,
  pastDate,
  printedBy,
  type ShopCheck,
  startingCheck,
} from '../../src/upkeep';
import { allWordsNow, type Words } from '../words';
import { MINUTE, useMinute } from './minute';
import { act, useShop } from './shop';
import { dayOf, today } from './today';

/** What in stock is past its date today. */
export function usePastDate(): readonly PastDate[] {
  const book = useShop((shop) => shop.book);
  const day = today();
  return useMemo(() => pastDate(book, day), [book, day]);
}

let last: { book: Book; minute: number; states: CheckState[] } | null = null;

/**
 * How each check stands in a minute; the same list for the same book.
 * @param minute in milliseconds: what is noted in the course of it counts
 */
function checkStatesOf(book: Book, minute: number): CheckState[] {
  const isSame =
    last !== null &&
    last.minute === minute &&
    last.book.check === book.check &&
    last.book.upkeep === book.upkeep &&
    last.book.run === book.run &&
    last.book.tick === book.tick &&
    last.book.copy === book.copy &&
    last.book.closing === book.closing &&
    last.book.settings === book.settings;
  if (!last || !isSame) {
    const now = asInstant(new Date(minute + MINUTE - 1));
    last = { book, minute, states: checkStates(book, printedBy(book), { now, dayOf }) };
  }
  return last.states;
}

export function useCheckStates(): CheckState[] {
  const minute = useMinute();
  const book = useShop((shop) => shop.book);
  return useMemo(() => checkStatesOf(book, minute), [book, minute]);
}

/** What a check is called: as the shop calls it, or as the catalogue does. */
export function checkName({ id, name }: Pick<ShopCheck, 'id' | 'name'>, { upkeep }: Words): string {
  const starting = startingCheck(id);
  return name === '' && starting ? upkeep.checks[starting] : name;
}

/** A check by its name, and by that of its machine where there are several of these. */
export function stateName({ check, machine }: Pick<CheckState, 'check' | 'machine'>, words: Words): string {
  const name = checkName(check, words);
  if (!machine || machine.of === 1) return name;
  return `${name} · ${machine.name || words.upkeep.numbered[machine.kind](machine.number)}`;
}

/** The initials of who noted something last. */
export function lastInitials({ upkeep, reading }: Book): string {
  let latest: Pick<UpkeepEntry, 'at' | 'by'> | null = null;
  for (const entry of [...Object.values(upkeep), ...Object.values(reading)])
    if (!latest || entry.at > latest.at) latest = entry;
  return latest?.by ?? '';
}

/** Notes a check as done, at its machine; gives the name under which it is noted. */
export function noteDone(
  { check, machine }: Pick<CheckState, 'check' | 'machine'>,
  note: string,
  by: string,
) {
  const name = stateName({ check, machine }, allWordsNow());
  const of = { check: check.id, machine: machine?.id ?? null };
  act(edits.noteCheck({ ...of, name, done: true, note }, { by, day: today() }));
  return name;
}

/** Takes back what was noted. */
export function takeBackNote({ check, machine, name }: UpkeepEntry, by: string): void {
  act(edits.noteCheck({ check, machine, name, done: false, note: '' }, { by, day: today() }));
}
