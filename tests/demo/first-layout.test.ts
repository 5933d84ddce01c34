import { describe, expect, it } from 'vitest';
import { faultsOf, layRun, withPlaces } from '../../src/layout';
import { settingsOf } from '../../src/model';
import { demoShop, laidByEngine } from './shop';

describe('the demo day as it is first seen', () => {
  it('is a day on which the shop is open, whatever the weekday', () => {
    const week = settingsOf(demoShop('mm'))?.station.hours.week ?? [];
    expect(week).toHaveLength(7);
    for (const day of week) expect(day).not.toEqual([]);
  });

  it.each(['mm', 'in'] as const)('lies whole and sound on its film, in %s', (unit) => {
    const book = demoShop(unit);
    const { run } = laidByEngine(book);
    expect(Object.values(book.copy).filter(({ state }) => state !== 'placed')).toEqual([]);
    const laid = layRun(book, run);
    expect(laid && faultsOf(laid)).toEqual([]);
  });

  it.each(['mm', 'in'] as const)(
    'takes no more than 3% more film than the engine would lay it on, in %s',
    (unit) => {
      const book = demoShop(unit);
      const { book: bare, run, places } = laidByEngine(book);
      const byEngine = layRun(withPlaces(bare, run, places), run)?.lengthUsed ?? 0;
      expect(byEngine).toBeGreaterThan(0);
      expect(layRun(book, run)?.lengthUsed).toBeLessThanOrEqual(1.03 * byEngine);
    },
  );
});
