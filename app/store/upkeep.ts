import { useMemo } from 'react';
import { edits, type Note } from '../../src/editing';
import type { Book, UpkeepEntry } from '../../src/model';
import type { LocalDate } from '../../src/units';
import {
  type CheckState,
  checkStates,
  filmSince,
  type PastDate,
  pastDate,
  type ShopCheck,
  startingCheck,
} from '../../src/upkeep';
import type { FirstWords } from '../words';
import { act, useShop } from './shop';
import { today } from './today';

/** What in stock is past its date today. */
export function usePastDate(): readonly PastDate[] {
  const book = useShop((shop) => shop.book);
  const day = today();
  return useMemo(() => pastDate(book, day), [book, day]);
}

let last: { book: Book; day: LocalDate; states: CheckState[] } | null = null;

/** How each check stands today; the same list for the same book. */
function statesOf(book: Book): CheckState[] {
  const day = today();
  const isSame =
    last !== null &&
    last.day === day &&
    last.book.check === book.check &&
    last.book.upkeep === book.upkeep &&
    last.book.run === book.run &&
    last.book.copy === book.copy &&
    last.book.closing === book.closing;
  if (!last || !isSame) last = { book, day, states: checkStates(book, day, filmSince(book)) };
  return last.states;
}

export const useCheckStates = (): CheckState[] => useShop(({ book }) => statesOf(book));

/** What a check is called: as the shop calls it, or as the catalogue does. */
export function checkName({ id, name }: Pick<ShopCheck, 'id' | 'name'>, { upkeep }: FirstWords): string {
  const starting = startingCheck(id);
  return name === '' && starting ? upkeep.checks[starting] : name;
}

/** The initials of who noted something last. */
export function lastInitials({ upkeep, reading }: Book): string {
  let latest: Pick<UpkeepEntry, 'at' | 'by'> | null = null;
  for (const entry of [...Object.values(upkeep), ...Object.values(reading)])
    if (!latest || entry.at > latest.at) latest = entry;
  return latest?.by ?? '';
}

/** Notes a check as done, or the last such note as taken back. */
export const noteDone = (entry: Note, by: string): void => {
  act(edits.noteCheck(entry, { by, day: today() }));
};
