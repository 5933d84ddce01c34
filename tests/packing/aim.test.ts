import { describe, expect, it } from 'vitest';
import { nextAim } from '../../src/packing/aim';
import { keep } from '../../src/packing/layout';
import { startSequences } from '../../src/packing/starts';
import { stripOf } from '../../src/packing/strip';
import { waysOf } from '../../src/packing/ways';
import { seededRandom } from '../../src/units';
import { bareRoll, piece } from './problems';

/** The lengths that a hundred cycles aim at after a layout 1 m long, in micrometres. */
function lengthsAimedAt({ unit, least }: { unit: number; least: number }): Set<number> {
  const strip = stripOf(bareRoll(100_000, [piece(100_000, 100_000, { count: 10 })]));
  const [sequence] = startSequences(strip, strip.count);
  const [way] = waysOf(strip);
  if (!sequence || !way) throw new Error('No way to build it.');
  const build = way.decoder.decode(sequence, way.rule, strip.bins);
  const best = keep(build, 1_000_000);
  const random = seededRandom(1);
  const aims = Array.from({ length: 100 }, () =>
    nextAim(strip, { best, limits: strip.bins, unit, random, least: () => least }),
  );
  return new Set(aims.flatMap((aim) => (aim.kind === 'fit' ? aim.film : [])));
}

describe('a cycle that tries to fit all into less film', () => {
  it.each([
    ['two thousandths less, or half of one, which may be all there is to save', 1, 0, [998_000, 999_500]],
    ['by whole units', 700, 0, [997_900, 999_300]],
    ['by one unit at the least', 10_000, 0, [990_000]],
    ['to no less than the bound', 1, 999_000, [999_000, 999_500]],
    ['not at all, where the bound is reached', 1, 1_000_000, []],
  ])('%s', (_, unit, least, expected) => {
    expect([...lengthsAimedAt({ unit, least })].sort()).toEqual(expected);
  });
});
