import type { Book, Instant, UpkeepEntry } from '../model';
import type { Machine } from '../pressing';
import { groupBy, type LocalDate, type Micrometres, um } from '../units';
import type { Printed } from './printed';
import { checksOf, doneWith, type ShopCheck, type StartingCheck } from './starting';
import { isOfPrinter, machinesOf, subjectOf } from './subjects';

/** How a check stands: done for now, or due, and for how long it has been. */
export type Standing =
  | { readonly kind: 'done' }
  /** Nobody has ever noted it. */
  | { readonly kind: 'never' }
  /** Due again since so many days: 0 for today. */
  | { readonly kind: 'days'; readonly over: number }
  /** So much film beyond the length after which it is due. */
  | { readonly kind: 'film'; readonly over: Micrometres }
  /** Due as soon as its printer is to print. */
  | { readonly kind: 'before-run' };

export interface CheckState {
  readonly check: ShopCheck;
  /** Which of the shop's machines it is of; `null` for the shop as a whole. */
  readonly machine: Machine | null;
  /** When it was done last; `null` if never, or if that was taken back. */
  readonly last: UpkeepEntry | null;
  readonly standing: Standing;
}

/** When it is. */
export interface Clock {
  readonly now: Instant;
  /** The calendar day of an instant, where the shop is. */
  readonly dayOf: (at: string) => LocalDate;
}

const HOUR = 60 * 60 * 1000;
const DAY = 24 * HOUR;

/** Whole days from one calendar day to another. */
const daysBetween = (from: LocalDate, to: LocalDate): number =>
  Math.round((Date.parse(to) - Date.parse(from)) / DAY);

/** The check at which a printer prints, if no run. */
const NOZZLES: StartingCheck = 'nozzles';

/** The entry that holds of those of one check, in the order in which they were made: the last one that was not taken back. */
function standingOne(entries: readonly UpkeepEntry[]): UpkeepEntry | null {
  const done: UpkeepEntry[] = [];
  for (const entry of entries) {
    // One that failed says nothing of those that passed before.
    if (entry.failed) continue;
    if (entry.done) done.push(entry);
    else done.pop();
  }
  return done.at(-1) ?? null;
}

/** The latest of some entries. */
const latest = (entries: readonly (UpkeepEntry | null)[]): UpkeepEntry | null =>
  entries.reduce((last, entry) => (entry && (!last || entry.at > last.at) ? entry : last), null);

/** What was noted, by its check. */
class Notes {
  private readonly byCheck: Map<string, UpkeepEntry[]>;

  /** What is dated later than now was noted by a clock that has been set back since: nobody knows when. */
  constructor(entries: Iterable<UpkeepEntry>, now: Instant) {
    this.byCheck = groupBy(
      [...entries]
        .filter(({ at }) => at <= now)
        .sort((a, b) => a.at.localeCompare(b.at) || a.id.localeCompare(b.id)),
      ({ check }) => check,
    );
  }

  /** What was noted of a check at a machine, or at one that nobody told. */
  private of(check: string, machine: Machine | null): UpkeepEntry[] {
    const all = this.byCheck.get(check) ?? [];
    return machine ? all.filter((entry) => entry.machine === null || entry.machine === machine.id) : all;
  }

  /** When a check, or one that is the same act, was done last. */
  lastDone(check: string, machine: Machine | null): UpkeepEntry | null {
    return latest(doneWith(check).map((each) => standingOne(this.of(each, machine))));
  }

  /** When a printer last printed its nozzles, whether all of them were there or not. */
  lastNozzles(printer: Machine): string | null {
    const entries = this.of(NOZZLES, printer);
    const failed = entries.findLast((entry) => entry.failed !== null) ?? null;
    return latest([standingOne(entries), failed])?.at ?? null;
  }
}

/** The later of two instants. */
const later = (a: string | null, b: string | null): string | null =>
  a === null || (b !== null && b > a) ? b : a;

/**
 * How a check stands that is counted from what a printer has printed. One that has printed nothing yet has not stood still; nobody knows,
 * though, how long its ink has.
 */
function standingStill(
  { interval }: ShopCheck,
  last: UpkeepEntry | null,
  { run, nozzles }: { readonly run: string | null; readonly nozzles: string | null },
  { now, dayOf }: Clock,
): Standing {
  if (interval.kind === 'pause') {
    const since = later(run, last?.at ?? null);
    if (since === null) return { kind: 'never' };
    return Date.parse(now) - Date.parse(since) >= interval.hours * HOUR
      ? { kind: 'before-run' }
      : { kind: 'done' };
  }
  const since = later(later(run, nozzles), last?.at ?? null);
  if (interval.kind !== 'idle' || since === null) return { kind: 'done' };
  // Days that have passed without a print: today may still see one.
  const over = daysBetween(dayOf(since), dayOf(now)) - 1 - interval.days;
  return over >= 0 ? { kind: 'days', over } : { kind: 'done' };
}

function standingOf(
  { interval }: ShopCheck,
  last: UpkeepEntry | null,
  filmSince: (at: string) => Micrometres,
  { now, dayOf }: Clock,
): Standing {
  if (!last) return { kind: 'never' };
  if (interval.kind === 'film') {
    const over = filmSince(last.at) - interval.length;
    return over >= 0 ? { kind: 'film', over: um(over) } : { kind: 'done' };
  }
  const over = daysBetween(last.day, dayOf(now)) - (interval.kind === 'days' ? interval.days : 1);
  return over >= 0 ? { kind: 'days', over } : { kind: 'done' };
}

/** How each check stands that is still done; one of machines for each of these. */
export function checkStates(
  { check: own, upkeep, settings }: Pick<Book, 'check' | 'upkeep' | 'settings'>,
  printed: Printed,
  clock: Clock,
): CheckState[] {
  const { shop } = settings;
  const notes = new Notes(Object.values(upkeep), clock.now);
  const runOn = ({ id }: Machine): string | null =>
    printed
      .runsOn(id)
      .filter((at) => at <= clock.now)
      .reduce(later, null);
  return checksOf(own, shop?.unit ?? 'mm').flatMap((check) => {
    if (check.archived) return [];
    const subject = subjectOf(check);
    const machines = subject === 'shop' ? [null] : shop ? machinesOf(shop.station, subject) : [];
    return machines.map((machine): CheckState => {
      const last = notes.lastDone(check.id, machine);
      if (machine && isOfPrinter(check.interval)) {
        const prints = { run: runOn(machine), nozzles: notes.lastNozzles(machine) };
        return { check, machine, last, standing: standingStill(check, last, prints, clock) };
      }
      const printer = machine?.kind === 'printer' ? machine.id : null;
      const filmSince = (at: string) => printed.filmSince(at, printer);
      return { check, machine, last, standing: standingOf(check, last, filmSince, clock) };
    });
  });
}

/** Whether a check is counted from what its printer prints, and is due: it is asked for at the print that comes next. */
export const isDueAtPrint = ({ check, standing }: CheckState): boolean =>
  isOfPrinter(check.interval) && standing.kind !== 'done';
