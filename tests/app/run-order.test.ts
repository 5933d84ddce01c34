import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { movedTo } from '../../app/press/run-order';

describe('runs moved in their order', () => {
  it.each([
    ['one before another', ['c'], 'a', 'before', 'cabd'],
    ['one behind another', ['a'], 'c', 'after', 'bcad'],
    ['two, in their order', ['d', 'a'], 'c', 'before', 'badc'],
    ['onto itself', ['b'], 'b', 'after', 'abcd'],
  ] as const)('%s', (_, moved, target, position, wanted) =>
    expect(movedTo([...'abcd'], new Set(moved), target, position).join('')).toBe(wanted),
  );

  it('are all there still, and those that stay keep their order', () => {
    const items = fc.uniqueArray(fc.nat(20), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(
        items,
        fc.func(fc.boolean()),
        fc.nat(),
        fc.constantFrom('before', 'after'),
        (all, isMoved, at, position) => {
          const target = all[at % all.length] ?? 0;
          const moved = new Set(all.filter((item) => isMoved(item)));
          const after = movedTo(all, moved, target, position);
          expect(after.toSorted()).toEqual(all.toSorted());
          const stays = (list: readonly number[]) => list.filter((item) => !moved.has(item));
          expect(stays(after)).toEqual(stays(all));
          if (moved.has(target) || moved.size === 0) expect(after).toEqual(all);
          else {
            const place = after.indexOf(target) + (position === 'before' ? -moved.size : 1);
            expect(new Set(after.slice(place, place + moved.size))).toEqual(moved);
          }
        },
      ),
    );
  });
});
