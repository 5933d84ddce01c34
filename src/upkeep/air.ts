import type { Reading } from '../model';
import { fail, type LocalDate, ok, type Result } from '../units';

/** Common practice, no source: degrees Celsius, and relative humidity between 0 and 1. The makers' sheets prevail. */
export const usualAir = {
  temperature: { least: 20, most: 28 },
  humidity: { least: 0.4, most: 0.6 },
} as const;

/** What a workroom can be at all: beyond it a figure was read or typed wrongly. */
const possibleAir = {
  temperature: { least: -10, most: 50 },
  humidity: { least: 0.05, most: 1 },
} as const;

/** Why a reading is spoken of. `impossible` asks for another figure; the others tell what they may do to film and powder. */
export type AirRemark = 'impossible' | 'cold' | 'warm' | 'dry' | 'damp';

interface Air {
  readonly temperature: number | null;
  readonly humidity: number | null;
}

const outside = (value: number, { least, most }: { readonly least: number; readonly most: number }) =>
  value < least ? 'below' : value > most ? 'above' : null;

export function temperatureRemark(temperature: number): AirRemark | null {
  if (outside(temperature, possibleAir.temperature)) return 'impossible';
  const side = outside(temperature, usualAir.temperature);
  return side && (side === 'below' ? 'cold' : 'warm');
}

export function humidityRemark(humidity: number): AirRemark | null {
  if (outside(humidity, possibleAir.humidity)) return 'impossible';
  const side = outside(humidity, usualAir.humidity);
  return side && (side === 'below' ? 'dry' : 'damp');
}

/** The latest reading; of one day, if a day is given. */
export function latestReading(readings: Iterable<Reading>, day: LocalDate | null): Reading | null {
  let latest: Reading | null = null;
  for (const reading of readings) {
    if (day !== null && reading.day !== day) continue;
    if (!latest || reading.at > latest.at) latest = reading;
  }
  return latest;
}

/** The air of a day as it was read last, each figure by itself; `null` where nobody did. */
export function airOf(readings: Iterable<Reading>, day: LocalDate): Air {
  const own = [...readings].filter((reading) => reading.day === day).sort((a, b) => a.at.localeCompare(b.at));
  return {
    temperature: own.findLast(({ temperature }) => temperature !== null)?.temperature ?? null,
    humidity: own.findLast(({ humidity }) => humidity !== null)?.humidity ?? null,
  };
}

/** Reads relative humidity as a gauge shows it: `52`, `52,5 %`. */
export function parseHumidity(text: string): Result<number, 'unreadable' | 'impossible'> {
  const figures = /^(\d{1,3}(?:[.,]\d+)?)\s*%?$/.exec(text.trim());
  if (!figures) return fail('unreadable');
  const humidity = Number((figures[1] ?? '').replace(',', '.')) / 100;
  return humidityRemark(humidity) === 'impossible' ? fail('impossible') : ok(humidity);
}
