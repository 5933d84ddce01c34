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

/** A figure and the name of its unit, which may be left out where it is alone. */
const PART = /(\d+(?:[.,]\d+)?)\s*([a-z]*)\.?\s*/y;

/** Seconds of `2 h 15 min`, the larger unit first; `null` where it is not such a time. */
function sumOfParts(text: string, unit: 's' | 'min'): number | null {
  const parts: { figure: string; name: string }[] = [];
  PART.lastIndex = 0;
  for (let at = 0; at < text.length; at = PART.lastIndex) {
    const [, figure = '', name = ''] = PART.exec(text) ?? [];
    if (figure === '') return null;
    parts.push({ figure, name });
  }
  let sum = 0;
  let before = Number.POSITIVE_INFINITY;
  for (const { figure, name } of parts) {
    const each = SECONDS_PER[name === '' && parts.length === 1 ? unit : name];
    if (each === undefined || each >= before) return null;
    before = each;
    sum += Number(figure.replace(',', '.')) * each;
  }
  return sum;
}

/**
 * Reads a length of time as a person types it: `15`, `15 s`, `2.5 min`, `2:30`, `2 h 15 min`.
 * @param unit the unit of a bare number
 */
export function parseDuration(text: string, unit: 's' | 'min'): Result<Seconds, DurationProblem> {
  const plain = text.trim().toLowerCase();
  if (plain === '') return fail('empty');
  const clock = /^(\d{1,3}):([0-5]\d)$/.exec(plain);
  const value = clock ? Number(clock[1]) * 60 + Number(clock[2]) : sumOfParts(plain, unit);
  if (value === null) return fail('unreadable');
  return value > LONGEST ? fail('too-long') : ok(asSeconds(value));
}
