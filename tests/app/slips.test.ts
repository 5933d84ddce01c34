import { describe, expect, it } from 'vitest';
import { sheetsOfSlips } from '../../app/press/slips';

const sheets = (lines: readonly number[]) =>
  sheetsOfSlips(lines, (each) => each).map(({ up, slips }) => [up, ...slips]);

describe('packing slips', () => {
  it.each([
    [
      'short ones, four up',
      [1, 2, 3, 4, 5],
      [
        [4, 1, 2, 3, 4],
        [4, 5],
      ],
    ],
    [
      'longer ones, two up',
      [6, 7, 6],
      [
        [2, 6, 7],
        [2, 6],
      ],
    ],
    ['a long one, by itself', [20], [[1, 20]]],
    [
      'of every length',
      [20, 1, 7, 2],
      [
        [4, 1, 2],
        [2, 7],
        [1, 20],
      ],
    ],
    ['none', [], []],
  ] as const)('fill sheets: %s', (_, lines, told) => expect(sheets(lines)).toEqual(told));
});
