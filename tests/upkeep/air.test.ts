import { describe, expect, it } from 'vitest';
import { noteAir } from '../../src/editing';
import type { Instant } from '../../src/model';
import type { LocalDate } from '../../src/units';
import { airOf, humidityRemark, latestReading, parseHumidity, temperatureRemark } from '../../src/upkeep';
import { context, edited, smallBook } from '../editing/book';

describe('the air of the room', () => {
  // 20-28 degrees Celsius and 40-60% relative humidity: common practice, no source.
  it.each([
    [20, null],
    [28, null],
    [19.9, 'cold'],
    [28.1, 'warm'],
    [71.6, 'impossible'],
    [-40, 'impossible'],
  ])('%s degrees Celsius', (temperature, remark) => {
    expect(temperatureRemark(temperature)).toBe(remark);
  });

  it.each([
    [0.4, null],
    [0.6, null],
    [0.39, 'dry'],
    [0.61, 'damp'],
    [0.01, 'impossible'],
    [1.2, 'impossible'],
  ])('%s of humidity', (humidity, remark) => {
    expect(humidityRemark(humidity)).toBe(remark);
  });

  it.each([
    ['52', 0.52],
    [' 52,5 % ', 0.525],
    ['100%', 1],
  ])('reads %s as a gauge shows it', (text, humidity) => {
    expect(parseHumidity(text)).toEqual({ ok: true, value: humidity });
  });

  it.each([
    ['', 'unreadable'],
    ['damp', 'unreadable'],
    ['-5', 'unreadable'],
    ['0.52', 'impossible'],
    ['140', 'impossible'],
  ])('says why %s is no humidity', (text, problem) => {
    expect(parseHumidity(text)).toEqual({ ok: false, problem });
  });

  it('of a day is what was read last, each figure by itself', () => {
    const { book } = smallBook();
    const ids = context();
    const day = '2026-11-25' as LocalDate;
    const reading = (hour: string, temperature: number | null, humidity: number | null, on = day) =>
      [
        { temperature, humidity },
        { by: 'MK', day: on },
        { ...ids, now: `${on}T${hour}:00:00.000Z` as Instant },
      ] as const;
    const read = edited(book, (draft) => {
      noteAir(draft, ...reading('08', 21, 0.52));
      noteAir(draft, ...reading('12', 24.5, null));
      noteAir(draft, ...reading('09', 30, 0.7, '2026-11-24' as LocalDate));
      noteAir(draft, ...reading('13', null, null));
    });
    const all = Object.values(read.reading);
    expect(all).toHaveLength(3);
    expect(airOf(all, day)).toEqual({ temperature: 24.5, humidity: 0.52 });
    expect(airOf(all, '2026-11-23' as LocalDate)).toEqual({ temperature: null, humidity: null });
    expect(latestReading(all, null)?.temperature).toBe(24.5);
    expect(latestReading(all, '2026-11-24' as LocalDate)?.humidity).toBe(0.7);
    expect(latestReading([], null)).toBeNull();
  });
});
