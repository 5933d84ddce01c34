import type { Closing, Stage } from '../model';
import { keysOf, type LocalDate, type Micrometres, um, utcDay } from '../units';
import type { LogRow } from './rows';

/** A run's film of a week, and how many runs that were. */
export interface FilmWeek {
  /** Its Monday. */
  readonly monday: LocalDate;
  readonly film: Micrometres;
  readonly runs: number;
}

const DAY = 86_400_000;

/** The Monday of a day's week: ISO 8601 weeks begin on it. */
function mondayOf(day: LocalDate): LocalDate {
  const noon = Date.parse(`${day}T12:00:00Z`);
  const since = (new Date(noon).getUTCDay() + 6) % 7;
  return utcDay(noon - since * DAY);
}

/** Film of each week from the first to the last with a closed run, weeks without one included. */
export function filmByWeek(rows: readonly LogRow[]): FilmWeek[] {
  const weeks = new Map<string, { film: number; runs: number }>();
  for (const { closing } of rows) {
    const monday = mondayOf(closing.day);
    const known = weeks.get(monday) ?? { film: 0, runs: 0 };
    weeks.set(monday, { film: known.film + closing.actual.film, runs: known.runs + 1 });
  }
  const mondays = [...weeks.keys()].sort();
  const [first] = mondays;
  const last = mondays.at(-1);
  if (first === undefined || last === undefined) return [];
  const found: FilmWeek[] = [];
  for (let at = Date.parse(`${first}T12:00:00Z`); at <= Date.parse(`${last}T12:00:00Z`); at += 7 * DAY) {
    const monday = utcDay(at);
    const { film, runs } = weeks.get(monday) ?? { film: 0, runs: 0 };
    found.push({ monday, film: um(film), runs });
  }
  return found;
}

/** Copies that came to nothing at a stage for one reason. */
export interface SpoiledReason {
  readonly stage: Stage;
  /** As it was typed first; empty for film that was spoiled. */
  readonly reason: string;
  readonly copies: number;
  readonly runs: number;
}

/** Spoiled copies by stage and reason, the most first; capitals make no difference. */
export function spoiledByReason(rows: readonly LogRow[]): SpoiledReason[] {
  const reasons = new Map<string, SpoiledReason>();
  for (const { closing } of rows) {
    for (const { stage, reason, copies } of closing.spoiled) {
      const key = `${stage} ${reason.trim().toLocaleLowerCase()}`;
      const known = reasons.get(key);
      reasons.set(key, {
        stage,
        reason: known?.reason ?? reason.trim(),
        copies: copies + (known?.copies ?? 0),
        runs: 1 + (known?.runs ?? 0),
      });
    }
  }
  return [...reasons.values()].sort((a, b) => b.copies - a.copies || a.reason.localeCompare(b.reason));
}

/** What can be compared between plan and fact. */
export const compared = ['film', 'white', 'colour', 'powder', 'printer', 'hands', 'press'] as const;
export type Compared = (typeof compared)[number];

const amountsOf = ({ planned, actual }: Closing, what: Compared): readonly [number | null, number | null] => {
  if (what === 'film' || what === 'white' || what === 'colour' || what === 'powder') {
    return [planned[what], actual[what]];
  }
  return [planned.time[what], actual.time[what]];
};

/** A run with what was planned and what was measured, both known. */
export interface PlanAndFact {
  readonly closing: Closing;
  readonly planned: number;
  readonly actual: number;
}

/** Runs that planned and measured something, in the order given. */
export const planAndFact = (rows: readonly LogRow[], what: Compared): PlanAndFact[] =>
  rows.flatMap(({ closing }) => {
    const [planned, actual] = amountsOf(closing, what);
    return planned !== null && actual !== null && planned > 0 ? [{ closing, planned, actual }] : [];
  });

/** The middle one; of an even number, the mean of the two in the middle. 0 of none. */
export function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  const upper = sorted[middle] ?? 0;
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] ?? 0) + upper) / 2;
}

/** Share of a run's copies that came to nothing, beside the air of the room. */
export interface SpoiledAir {
  readonly closing: Closing;
  /** Relative humidity between 0 and 1. */
  readonly humidity: number;
  readonly share: number;
}

const spoiledShare = ({ closing, spoiled }: LogRow): number =>
  closing.work.copies > 0 ? Math.min(1, spoiled / closing.work.copies) : 0;

export const spoiledByHumidity = (rows: readonly LogRow[]): SpoiledAir[] =>
  rows.flatMap((row) => {
    const { humidity } = row.closing.air;
    return humidity === null ? [] : [{ closing: row.closing, humidity, share: spoiledShare(row) }];
  });

/** A lot that runs drew on, and the share of their copies that came to nothing. */
export interface LotRecord {
  readonly kind: keyof Closing['lots'];
  readonly lot: string;
  readonly runs: number;
  readonly copies: number;
  readonly spoiled: number;
}

/** Every lot, of each kind the one used last first. */
export function spoiledByLot(rows: readonly LogRow[]): LotRecord[] {
  const lots = new Map<string, LotRecord>();
  for (const { closing, spoiled } of rows) {
    for (const kind of keysOf(closing.lots)) {
      const lot = closing.lots[kind];
      if (lot === '') continue;
      const known = lots.get(`${kind} ${lot}`);
      lots.set(`${kind} ${lot}`, {
        kind,
        lot,
        runs: 1 + (known?.runs ?? 0),
        copies: closing.work.copies + (known?.copies ?? 0),
        spoiled: spoiled + (known?.spoiled ?? 0),
      });
    }
  }
  const order = ['film', 'white', 'colour', 'powder'];
  return [...lots.values()].sort((a, b) => order.indexOf(a.kind) - order.indexOf(b.kind));
}

/** The waste of some runs together: what of all their film is not copies. 0 without film. */
export function wasteTogether(rows: readonly LogRow[]): number {
  let [film, printed] = [0, 0];
  for (const { closing, waste } of rows) {
    const area = closing.film.width * closing.actual.film;
    film += area;
    printed += area * (1 - waste);
  }
  return film > 0 ? 1 - printed / film : 0;
}
