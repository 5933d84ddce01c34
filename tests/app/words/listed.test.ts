import { describe, expect, it } from 'vitest';
import { listedUpTo } from '../../../app/words/format';

describe('many names', () => {
  it.each([
    [['A'], 'A'],
    [['A', 'B', 'C'], 'A, B and C'],
    // Naming the last takes no more room than counting it.
    [['A', 'B', 'C', 'D'], 'A, B, C and D'],
    [['A', 'B', 'C', 'D', 'E'], 'A, B, C and 2 more'],
  ])('%j are named as far as there is room', (names, told) => {
    expect(listedUpTo(3, names, 'more', { locale: 'en-GB' })).toBe(told);
  });
});
