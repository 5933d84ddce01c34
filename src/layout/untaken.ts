import type { Book, Copy, Run } from '../model';

/** Copies that wait and that a run does not lay out, by what keeps them. */
export interface Untaken {
  /** Chosen for other runs. */
  readonly elsewhere: number;
  /** The run takes only what is chosen for it, and they are not. */
  readonly unchosen: number;
  /** Their orders wait for a proof or for blanks. */
  readonly unready: number;
}

/** What keeps a run from laying out a copy that has no place; `null` where nothing does. */
export function keptFrom(book: Book, run: Run, copy: Copy): keyof Untaken | 'gone' | null {
  if (copy.state === 'shelved') return 'gone';
  if (copy.run === run.id) return null;
  if (copy.run !== null) return 'elsewhere';
  const order = book.order[book.transfer[copy.transfer]?.order ?? ''];
  if (order === undefined || order.archived) return 'gone';
  if (run.takes !== 'all') return 'unchosen';
  return order.awaits.proof || order.awaits.blanks ? 'unready' : null;
}

/** Whether a run lays a copy out that has no place yet; fillers are laid afterwards. */
export const isAsked = (book: Book, run: Run, copy: Copy): boolean =>
  copy.place === null && copy.role !== 'filler' && keptFrom(book, run, copy) === null;

/** The copies that wait and that a run does not lay out; those of archived orders and fillers are not missed. */
export function untakenBy(book: Book, run: Run): Untaken {
  const counts = { elsewhere: 0, unchosen: 0, unready: 0 };
  for (const copy of Object.values(book.copy)) {
    if (copy.state !== 'waiting' || copy.role === 'filler') continue;
    const by = keptFrom(book, run, copy);
    if (by !== null && by !== 'gone') counts[by] += 1;
  }
  return counts;
}
