import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Reader } from '../../app/parts/fields/codec';
import { hours } from '../../app/parts/fields/hours';
import { en } from '../../app/words/en';

const readerOf = (locale: string): Reader => ({ locale, unit: 'in', currency: 'USD', words: en });

const minute = fc.integer({ min: 0, max: 1439 });
const time = (at: number) =>
  `${String(Math.floor(at / 60)).padStart(2, '0')}:${String(at % 60).padStart(2, '0')}`;

/** Stretches that do not touch, the earliest first. */
const day = fc
  .uniqueArray(minute, { maxLength: 6 })
  .map((all) => all.toSorted((a, b) => a - b))
  .map((all) =>
    Array.from({ length: Math.floor(all.length / 2) }, (_, at) => ({
      from: time(all[2 * at] ?? 0),
      to: time(all[2 * at + 1] ?? 0),
    })),
  );

describe('opening hours', () => {
  it.each([
    ['en-GB', '07:00–12:00, 12:30–21:00'],
    ['en-US', '7:00\u00a0AM–12:00\u00a0PM, 12:30\u00a0PM–9:00\u00a0PM'],
    ['es-MX', '7:00\u00a0a.m.–12:00\u00a0p.m., 12:30\u00a0p.m.–9:00\u00a0p.m.'],
  ])('are shown as %s writes them', (locale, shown) => {
    const stretches = [
      { from: '07:00', to: '12:00' },
      { from: '12:30', to: '21:00' },
    ];
    expect(hours.show(stretches, readerOf(locale))).toBe(shown);
  });

  it.each(['en-GB', 'en-US', 'es-ES', 'es-MX', 'es-US'])('are read as they are shown in %s', (locale) => {
    const reader = readerOf(locale);
    fc.assert(
      fc.property(day, (stretches) => {
        expect(hours.read(hours.show(stretches, reader), reader)).toEqual({ ok: true, value: stretches });
      }),
    );
  });
});
