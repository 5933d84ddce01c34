import { describe, expect, it } from 'vitest';
import type { Piece } from '../../src/packing';
import type { Rule } from '../../src/packing/build';
import { SkylineDecoder } from '../../src/packing/decode-skyline';
import { stripOf } from '../../src/packing/strip';
import { bareRoll, piece } from './problems';

const WIDTH = 100_000;

/** The widths of the copies of a roll 100 wide in the order in which a sequence, as the pieces are listed, places them. */
function placed(pieces: readonly Piece[], more: Partial<Rule>): number[] {
  const strip = stripOf(bareRoll(WIDTH, pieces));
  const rule: Rule = { waste: 0, exact: 0.004, level: false, paired: false, left: true, ...more };
  const sequence = {
    piece: [...pieces.keys()],
    count: pieces.map(({ count }) => count),
    turned: pieces.map(() => 0),
  };
  const build = new SkylineDecoder(strip).decode(sequence, rule, strip.bins);
  return Array.from(build.x.subarray(0, build.length), (_, copy) => {
    const own = build.piece[copy] as number;
    return ((build.turned[copy] === 1 ? strip.along : strip.across)[own] as number) / 1000;
  });
}

const of = (width: number, more: Partial<Piece> = {}) => piece(width * 1000, 40_000, more);

describe('the first copy on a row', () => {
  const row = [of(60), of(70), of(30), of(20)];

  it('is the first of the sequence that leaves a strip of use', () => {
    expect(placed(row, {})).toEqual([60, 20, 70, 30]);
  });

  it('is the first whose strip another copy fills, under a rule of pairs', () => {
    expect(placed(row, { paired: true })).toEqual([70, 30, 60, 20]);
  });

  it.each([
    ['the next of its own like', [of(60), of(50, { count: 2 }), of(20)], [50, 50, 60, 20]],
    ['no copy twice', [of(60), of(50), of(20)], [60, 20, 50]],
    ['none that is too wide by a little', [of(60), of(70), of(30.001)], [60, 30.001, 70]],
    ['none that is narrower than nearly all of the strip', [of(60), of(70), of(29.5)], [60, 29.5, 70]],
  ])('counts on %s to fill its strip', (_, pieces, expected) => {
    expect(placed(pieces, { paired: true })).toEqual(expected);
  });

  it('may lie turned for that', () => {
    const turning = piece(45_000, 70_000, { turn: 'quarter' });
    expect(placed([of(60), turning, of(30)], { paired: true })).toEqual([70, 30, 60]);
  });
});
