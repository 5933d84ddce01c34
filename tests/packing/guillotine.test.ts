import { describe, expect, it } from 'vitest';
import type { Rule } from '../../src/packing/build';
import { GuillotineDecoder } from '../../src/packing/decode-guillotine';
import { stripOf } from '../../src/packing/strip';
import { bareRoll, piece } from './problems';

/** Every copy that fits a part within half the film's width is as good as any: the sequence decides. */
const rule = (waste: number, level: boolean): Rule => ({
  waste,
  level,
  exact: 0.5,
  paired: false,
  left: false,
});

const MORE_BEHIND: readonly [number, number] = [25, 30];
const MORE_BESIDE: readonly [number, number] = [20, 35];
const AS_MUCH: readonly [number, number] = [22, 32];

/**
 * Beside the copy that opens a row, 60 x 50 on film 100 wide, lies a smaller one. A cut along its side leaves film beside it as
 * long as the row, a cut across behind it film as wide as both: one of two copies fits the row.
 */
function inRow(small: readonly [number, number], by: Rule): string[] {
  const [across, along] = small;
  const pieces = [
    piece(60, 50, { id: 'opens' }),
    piece(across, along, { id: 'small' }),
    piece(40 - across, 50, { id: 'beside' }),
    piece(40, 50 - along, { id: 'behind' }),
  ];
  const strip = stripOf(bareRoll(100, pieces));
  const build = new GuillotineDecoder(strip).decode(
    { piece: [0, 1, 2, 3], count: [1, 1, 1, 1], turned: [0, 0, 0, 0] },
    by,
    strip.bins,
  );
  return [...build.piece.keys()]
    .filter((copy) => (build.y[copy] ?? 0) < 50)
    .map((copy) => pieces[build.piece[copy] ?? 0]?.id ?? '');
}

// The ways to split what a copy leaves: shorter or longer leftover axis, and always along one of them (Jylänki 2010).
describe('what a copy leaves of a part', () => {
  it.each([
    ['the shorter rest', 0, true, MORE_BEHIND, 'behind'],
    ['the shorter rest', 0, true, MORE_BESIDE, 'beside'],
    ['the shorter rest', 0.09, true, AS_MUCH, 'beside'],
    ['the longer rest', 0.06, false, MORE_BEHIND, 'beside'],
    ['the longer rest', 0.15, false, MORE_BESIDE, 'behind'],
    ['the longer rest', 0.06, false, AS_MUCH, 'behind'],
    ['always beside', 0.1, true, MORE_BEHIND, 'beside'],
    ['always beside', 0.15, true, MORE_BESIDE, 'beside'],
    ['always behind', Number.POSITIVE_INFINITY, false, MORE_BEHIND, 'behind'],
    ['always behind', Number.POSITIVE_INFINITY, true, MORE_BESIDE, 'behind'],
  ] as const)(
    'is cut by its rule: %s, waste %d, level %s, beside a copy of %j',
    (_, waste, level, small, fits) => {
      expect(inRow(small, rule(waste, level))).toEqual(['opens', 'small', fits]);
    },
  );
});
