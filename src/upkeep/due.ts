import type { Book, UpkeepEntry } from '../model';
import { type LocalDate, type Micrometres, um } from '../units';
import { checksOf, type ShopCheck } from './starting';

/** How a check stands: done for now, or due, and for how long it has been. */
export type Standing =
  | { readonly kind: 'done' }
  /** Nobody has ever noted it. */
  | { readonly kind: 'never' }
  /** Due again since so many days: 0 for today. */
  | { readonly kind: 'days'; readonly over: number }
  /** So much film beyond the length after which it is due. */
  | { readonly kind: 'film'; readonly over: Micrometres };

export interface CheckState {
  readonly check: ShopCheck;
  /** When it was done last; `null` if never, or if that was taken back. */
  readonly last: UpkeepEntry | null;
  readonly standing: Standing;
}

const DAY = 24 * 60 * 60 * 1000;

/** Whole days from one calendar day to another. */
const daysBetween = (from: LocalDate, to: LocalDate): number =>
  Math.round((Date.parse(to) - Date.parse(from)) / DAY);

/** Film that went through the printer after an instant. */
export type FilmSince = (at: string) => Micrometres;

/** For each check the entry that holds: the last one that was not taken back. */
function lastDone(entries: Iterable<UpkeepEntry>): ReadonlyMap<string, UpkeepEntry> {
  const done = new Map<string, UpkeepEntry[]>();
  for (const entry of [...entries].sort((a, b) => a.at.localeCompare(b.at) || a.id.localeCompare(b.id))) {
    // One that failed says nothing of those that passed before.
    if (entry.failed) continue;
    const own = done.get(entry.check) ?? [];
    if (entry.done) own.push(entry);
    else own.pop();
    done.set(entry.check, own);
  }
  return new Map([...done].flatMap(([check, own]) => own.slice(-1).map((entry) => [check, entry] as const)));
}

function standingOf(
  { interval }: ShopCheck,
  last: UpkeepEntry | null,
  today: LocalDate,
  filmSince: FilmSince,
): Standing {
  if (!last) return { kind: 'never' };
  if (interval.kind === 'film') {
    const over = filmSince(last.at) - interval.length;
    return over >= 0 ? { kind: 'film', over: um(over) } : { kind: 'done' };
  }
  const over = daysBetween(last.day, today) - (interval.kind === 'day' ? 1 : interval.days);
  return over >= 0 ? { kind: 'days', over } : { kind: 'done' };
}

/**
 * How each check stands that is still done.
 * @param today the calendar day, where the shop is
 */
export function checkStates(
  { check: own, upkeep, settings }: Pick<Book, 'check' | 'upkeep' | 'settings'>,
  today: LocalDate,
  filmSince: FilmSince,
): CheckState[] {
  const done = lastDone(Object.values(upkeep));
  return checksOf(own, settings.shop?.unit ?? 'mm').flatMap((check) => {
    if (check.archived) return [];
    const last = done.get(check.id) ?? null;
    return [{ check, last, standing: standingOf(check, last, today, filmSince) }];
  });
}
