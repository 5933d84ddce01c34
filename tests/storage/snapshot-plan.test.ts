import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { SnapshotReason } from '../../src/storage';
import { isDue, keptOf } from '../../src/storage/snapshot-plan';

const HOUR = 3_600_000;
const DAY = 24 * HOUR;
const NOW = Date.parse('2026-11-27T15:00:00.000Z');
const dayOf = (at: string) => at.slice(0, 10);

/** A snapshot so many hours old. */
const old = (hours: number, why: SnapshotReason = 'hour') => ({
  at: new Date(NOW - hours * HOUR).toISOString(),
  why,
});
const ages = (kept: readonly { at: string }[]) => kept.map(({ at }) => (NOW - Date.parse(at)) / HOUR);

describe('a snapshot of the hour', () => {
  it.each([
    ['where there is none', [], true],
    ['an hour after the last', [old(1)], true],
    ['not within the hour', [old(0.9), old(5)], false],
    ['of its own time, whatever was restored since', [old(1.2), old(0.2, 'before-restoring')], true],
    ['where the last is of the future, since the clock was put right', [old(-3)], true],
    ['not beside one of the day that an earlier version took', [old(0.5, 'day')], false],
  ] as const)('is due %s', (_, taken, due) => expect(isDue(taken, NOW)).toBe(due));
});

describe('snapshots', () => {
  it.each([
    ['of the last day are all kept', [0, 1, 2, 13, 23], [0, 1, 2, 13, 23]],
    // 15:00: what is 25 to 39 hours old is of yesterday.
    [
      'of yesterday and before are kept by the last of each day',
      [0, 1, 2, 25, 30, 50, 60],
      [0, 1, 2, 25, 50],
    ],
    ['are kept for a month', [0, 1, 2, 30 * 24, 32 * 24], [0, 1, 2, 30 * 24]],
    [
      'are kept of any age where there are no more than three',
      [40 * 24, 41 * 24, 50 * 24],
      [40 * 24, 41 * 24, 50 * 24],
    ],
    ['of the future are kept', [-5, 0], [-5, 0]],
  ])('%s', (_, taken, kept) =>
    expect(
      ages(
        keptOf(
          taken.map((age) => old(age)),
          NOW,
          dayOf,
        ),
      ),
    ).toEqual(kept),
  );

  it('of before a restore are kept for a month, the latest twelve', () => {
    const taken = Array.from({ length: 20 }, (_, age) => old(age, 'before-restoring'));
    expect(ages(keptOf(taken, NOW, dayOf))).toEqual(Array.from({ length: 12 }, (_, age) => age));
    expect(ages(keptOf([old(0), old(1), old(2), old(40, 'before-migrating')], NOW, dayOf))).toContain(40);
  });

  it('that are kept stay few, begin with the latest, and are found to be kept again', () => {
    const taken = fc.array(
      fc.record({
        at: fc.integer({ min: -2, max: 100 * 24 * 4 }).map((quarters) => old(quarters / 4).at),
        why: fc.constantFrom<SnapshotReason>('hour', 'day', 'before-restoring', 'before-migrating'),
      }),
      { maxLength: 200 },
    );
    fc.assert(
      fc.property(taken, (all) => {
        const kept = keptOf(all, NOW, dayOf);
        expect(keptOf(kept, NOW, dayOf)).toEqual(kept);
        expect(kept.length > 0).toBe(all.length > 0);
        const latest = Math.max(...all.map(({ at }) => Date.parse(at)));
        if (all.length > 0) expect(Date.parse(kept[0]?.at ?? '')).toBe(latest);
        // Whatever was taken within the month is still there as of the end of its day.
        const days = new Set(
          all
            .filter((one) => !one.why.startsWith('before') && NOW - Date.parse(one.at) < 31 * DAY)
            .map(({ at }) => dayOf(at)),
        );
        const keptDays = new Set(kept.map(({ at }) => dayOf(at)));
        for (const day of days) expect(keptDays).toContain(day);
      }),
    );
  });

  it('taken every hour for a year are never more than 60', () => {
    let kept: ReturnType<typeof old>[] = [];
    let most = 0;
    for (let hour = 0; hour < 365 * 24; hour += 1) {
      const now = NOW + hour * HOUR;
      kept = keptOf([...kept, old(-hour)], now, dayOf);
      most = Math.max(most, kept.length);
    }
    expect(most).toBeLessThan(60);
    expect(most).toBeGreaterThan(50);
  });
});
