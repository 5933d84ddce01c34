import { fail, ok, type Result } from './result';

declare const seconds: unique symbol;
/** A length of time in whole seconds. */
export type Seconds = number & { readonly [seconds]: true };

export const asSeconds = (value: number): Seconds => Math.round(value) as Seconds;

export const fromMinutes = (minutes: number): Seconds => asSeconds(minutes * 60);

export type DurationProblem = 'empty' | 'unreadable' | 'too-long';

/** Nothing a shop waits for takes longer: a day. */
const LONGEST = 24 * 60 * 60;

/** In the languages of the app. */
const SECONDS_PER: Readonly<Record<string, number>> = {
  s: 1,
  sec: 1,
  second: 1,
  seconds: 1,
  m: 60,
  min: 60,
  minute: 60,
  minutes: 60,
  h: 3600,
  hour: 3600,
  hours: 3600,
  seg: 1,
  segundo: 1,
  segundos: 1,
  minuto: 60,
  minutos: 60,
  hora: 3600,
  horas: 3600,
};

/**
 * Reads a length of time as a person types it: `15`, `15 s`, `2.5 min`, `2:30`.
 * @param unit the unit of a bare number
 */
export function parseDuration(text: string, unit: 's' | 'min'): Result<Seconds, DurationProblem> {
  const plain = text.trim().toLowerCase();
  if (plain === '') return fail('empty');
  const clock = /^(\d{1,3}):([0-5]\d)$/.exec(plain);
  const match = /^(\d+(?:[.,]\d+)?)\s*([a-z]+)?\.?$/.exec(plain);
  const each = SECONDS_PER[match?.[2] ?? unit];
  if (!clock && (!match || each === undefined)) return fail('unreadable');
  const value = clock
    ? Number(clock[1]) * 60 + Number(clock[2])
    : Number((match?.[1] ?? '').replace(',', '.')) * (each ?? 1);
  return value > LONGEST ? fail('too-long') : ok(asSeconds(value));
}
