import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { countBy } from '../../src/units';

describe('a count by key', () => {
  it('has every item once, but for those without a key', () => {
    fc.assert(
      fc.property(fc.array(fc.option(fc.constantFrom('a', 'b', 'c'))), (items) => {
        const counts = countBy(items, (item) => item);
        for (const key of ['a', 'b', 'c'] as const) {
          expect(counts.get(key) ?? 0).toBe(items.filter((item) => item === key).length);
        }
        expect(counts.has(null as never)).toBe(false);
      }),
    );
  });
});
