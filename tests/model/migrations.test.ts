import { describe, expect, it } from 'vitest';
import { MODEL_VERSION, migrate, readRecord } from '../../src/model';

/** A film as version 1 stored it. */
const filmOne = {
  id: 'film-1',
  name: 'Roll',
  width: 330_000,
  margins: { side: 4000, lead: 10_000, tail: 12_000 },
  lengthLeft: 60_000_000,
  price: { amount: 840, per: 1_000_000 },
  gap: 5000,
  spanMax: null,
  changed: '2026-01-05T08:00:00.000Z',
};
const other = ['order/1', { id: '1', code: 'HB' }] as const;

describe('migration', () => {
  it('keeps the sides of a film apart from version 2 on', () => {
    const migrated = migrate(new Map<string, unknown>([['film/film-1', filmOne], other]), 1);
    const film = readRecord('film', migrated?.get('film/film-1'));
    expect(film?.margins).toEqual({ left: 4000, right: 4000, lead: 10_000, tail: 12_000 });
    expect(migrated?.get(other[0])).toBe(other[1]);
  });

  it('leaves records of the present version alone', () => {
    const records = new Map<string, unknown>([other]);
    expect(migrate(records, MODEL_VERSION)).toEqual(records);
  });

  it('lets nothing of a newer version, or of none, be taken for ours', () => {
    for (const version of [MODEL_VERSION + 1, 0, 1.5, Number.NaN])
      expect(migrate(new Map(), version)).toBeNull();
  });
});
