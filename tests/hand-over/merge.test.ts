import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { merged } from '../../src/hand-over';

/** Ticks as several devices make them; few ids, so that some are known on both sides, and some of one id even differ. */
const tick = fc.record({
  id: fc.constantFrom('a', 'b', 'c', 'd', 'e', 'f'),
  subject: fc.constantFrom('print/0', 'cure/0'),
  done: fc.boolean(),
  at: fc.constantFrom('2026-11-25T08:00:00.000Z', '2026-11-25T09:00:00.000Z'),
  changed: fc.constant('2026-11-25T10:00:00.000Z'),
});
const ticks = fc.uniqueArray(tick, { selector: ({ id }) => id });
const sorted = (list: readonly { readonly id: string }[]) => list.toSorted((a, b) => (a.id < b.id ? -1 : 1));

describe('what two devices have ticked', () => {
  it('comes together alike, whichever side takes in the other', () => {
    fc.assert(
      fc.property(ticks, ticks, (a, b) => {
        expect(merged(a, b)).toEqual(merged(b, a));
      }),
    );
  });

  it('comes together alike, in whatever order devices meet', () => {
    fc.assert(
      fc.property(ticks, ticks, ticks, (a, b, c) => {
        expect(merged(merged(a, b), c)).toEqual(merged(a, merged(b, c)));
      }),
    );
  });

  it('stays as it is when it is taken in again', () => {
    fc.assert(
      fc.property(ticks, ticks, (a, b) => {
        const once = merged(a, b);
        expect(merged(once, b)).toEqual(once);
        expect(merged(a, a)).toEqual(sorted(a));
      }),
    );
  });

  it('loses nothing of either side', () => {
    fc.assert(
      fc.property(ticks, ticks, (a, b) => {
        const all = new Set(merged(a, b).map(({ id }) => id));
        expect(all).toEqual(new Set([...a, ...b].map(({ id }) => id)));
      }),
    );
  });
});
