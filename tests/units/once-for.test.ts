import { describe, expect, it } from 'vitest';
import { onceFor } from '../../src/units';

describe('what is worked out once', () => {
  it('is found once for each source, also where it is nothing', () => {
    const asked: object[] = [];
    const lengthOf = onceFor((list: readonly number[]) => {
      asked.push(list);
      return list.length > 0 ? list.length : undefined;
    });
    const [some, none, alike] = [[1, 2], [], [1, 2]];
    expect([some, none, some, none, alike].map(lengthOf)).toEqual([2, undefined, 2, undefined, 2]);
    expect(asked).toEqual([some, none, alike]);
    expect(asked[2]).toBe(alike);
  });

  it('is the same object for the same source', () => {
    const doubled = onceFor((list: readonly number[]) => list.map((each) => 2 * each));
    const list = [3];
    expect(doubled(list)).toBe(doubled(list));
    expect(doubled([3])).not.toBe(doubled(list));
  });
});
