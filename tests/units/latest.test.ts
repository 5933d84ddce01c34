import { describe, expect, it } from 'vitest';
import { Latest } from '../../src/units';

/** Handles by hand: each value waits until it is let go. */
function byHand() {
  const begun: number[] = [];
  const ends: (() => void)[] = [];
  const latest = new Latest<number>((value) => {
    begun.push(value);
    return new Promise((resolve) => ends.push(resolve));
  });
  return { begun, ends, latest };
}
const turns = () => new Promise((resolve) => setTimeout(resolve));

describe('the latest of values', () => {
  it('is handled once the one before is; those between are left', async () => {
    const { begun, ends, latest } = byHand();
    for (const value of [1, 2]) latest.give(value);
    await turns();
    for (const value of [3, 4]) latest.give(value);
    expect(begun).toEqual([2]);
    ends[0]?.();
    await turns();
    expect(begun).toEqual([2, 4]);
    ends[1]?.();
    await latest.rest();
    latest.give(5);
    await turns();
    expect(begun).toEqual([2, 4, 5]);
  });

  it('is waited for until nothing is left', async () => {
    const { ends, latest } = byHand();
    let isOver = false;
    latest.give(1);
    await turns();
    latest.give(2);
    const over = latest.rest().then(() => {
      isOver = true;
    });
    ends[0]?.();
    await turns();
    expect(isOver).toBe(false);
    ends[1]?.();
    await over;
    expect(isOver).toBe(true);
  });

  it('fails for who waits, and goes on with what comes then', async () => {
    const handled: number[] = [];
    const latest = new Latest<number>(async (value) => {
      if (value === 1) throw new Error('no');
      handled.push(value);
    });
    latest.give(1);
    await expect(latest.rest()).rejects.toThrow('no');
    latest.give(2);
    await latest.rest();
    expect(handled).toEqual([2]);
  });
});
