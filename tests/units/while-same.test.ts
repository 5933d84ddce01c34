import { describe, expect, it } from 'vitest';
import { whileSame } from '../../src/units';

describe('what is remembered while all that it comes from is the same', () => {
  const counted = () => {
    const asked: unknown[][] = [];
    const found = whileSame((...read: readonly unknown[]) => {
      asked.push([...read]);
      return { read };
    });
    return { asked, found };
  };

  it('is found anew where a part is another, and where there are more or fewer', () => {
    const { asked, found } = counted();
    const list = [1];
    for (const read of [[], [], [list, 1], [list, 1], [[1], 1], [list, 1], [list], [list, undefined]])
      expect(found(...read).read).toEqual(read);
    expect(asked).toEqual([[], [list, 1], [[1], 1], [list, 1], [list], [list, undefined]]);
  });

  it('is the same object', () => {
    const { found } = counted();
    expect(found(1, Number.NaN)).toBe(found(1, Number.NaN));
  });
});
