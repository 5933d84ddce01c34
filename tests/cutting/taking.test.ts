import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutOrder } from '../../src/cutting';
import { isReachable, takingOrder } from '../../src/cutting/taking';
import type { LaidCopy } from '../../src/layout';
import { areNearer, boxRing } from '../../src/outlines';
import { fromMm } from '../../src/units';
import { box, corner, disc, reversed, ring } from '../nesting/outlines';
import { anyOutlinedRun } from '../output/outlined';
import { runOf } from '../output/runs';

const lyingOf = ({ x, y, outline, ...size }: LaidCopy) => ({ rings: outline ?? [boxRing(size)], x, y });

/** Whether a copy can be pushed straight out, tried step by step: at no step does it lie on another. */
function hasWayOut(copy: LaidCopy, others: readonly LaidCopy[]): boolean {
  const far = 700_000;
  return [0, 45, 90, 135, 180, 225, 270, 315].some((turn) => {
    const [across, along] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
    return others.every((other) => {
      for (let way = 0; way < far; way += 2000) {
        const [x, y] = [copy.x + across * way, copy.y + along * way];
        const apart =
          x > other.x + other.width ||
          other.x > x + copy.width ||
          y > other.y + other.length ||
          other.y > y + copy.length;
        if (!apart && areNearer({ ...lyingOf(copy), x, y }, lyingOf(other), 0)) return false;
      }
      return true;
    });
  });
}

/** The copies of each strip that is in the hand between two cuts, in their order. */
function strips(run: Parameters<typeof cutOrder>[0]): LaidCopy[][] {
  const found: LaidCopy[][] = [[]];
  for (const { steps } of cutOrder(run)) {
    found.push([]);
    for (const step of steps) {
      if (step.kind === 'cut') found.push([]);
      else found.at(-1)?.push(step.copy);
    }
  }
  return found;
}

const at = (
  code: string,
  number: number,
  x: number,
  y: number,
  size: number,
  outline: LaidCopy['outline'],
) => ({
  code,
  number,
  x,
  y,
  width: size,
  length: size,
  outline,
});

describe('taking out copies laid by their outlines', () => {
  it('takes each once, and has a free way out for it as long as any copy has one', () => {
    fc.assert(
      fc.property(anyOutlinedRun, (laid) => {
        // What touches has no way to be measured by steps; what lies in a hole comes out with what it lies in.
        fc.pre(laid.film.gap > 0);
        const run = {
          ...laid,
          copies: laid.copies.map((copy) => ({ ...copy, outline: copy.outline?.slice(0, 1) ?? null })),
        };
        fc.pre(
          run.copies.every((a, index) =>
            run.copies.slice(0, index).every((b) => !areNearer(lyingOf(a), lyingOf(b), 0)),
          ),
        );
        const taken = strips(run).flat();
        expect(new Set(taken)).toEqual(new Set(run.copies));
        expect(taken).toHaveLength(run.copies.length);
        for (const strip of strips(run))
          for (const [index, copy] of strip.entries()) {
            const left = strip.slice(index + 1);
            const others = (own: LaidCopy) => [copy, ...left].filter((other) => other !== own);
            if (isReachable(copy, left)) expect(hasWayOut(copy, left)).toBe(true);
            else expect([copy, ...left].filter((own) => isReachable(own, others(own)))).toEqual([]);
          }
      }),
      { numRuns: 25 },
    );
  });

  it('never leaves a disc without a way out: of discs one always has one', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.nat(4), fc.nat(6)), { minLength: 1, maxLength: 20 }),
        fc.integer({ min: 1, max: 12 }),
        (spots, off) => {
          const places = [...new Set(spots.map(([across, along]) => `${across} ${along}`))].map((spot) =>
            spot.split(' ').map(Number),
          );
          const run = runOf(
            places.map(([across = 0, along = 0], index) =>
              at('A', index + 1, 10 + 62 * across, 10 + 55 * along + off * (across % 2), 50, [disc(25, 36)]),
            ),
            { cutting: 'outlines', width: fromMm(350), spanMax: null },
          );
          for (const strip of strips(run))
            for (const [index, copy] of strip.entries())
              expect(isReachable(copy, strip.slice(index + 1))).toBe(true);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('takes what stands in the way of a copy before it', () => {
    // The first lies in the arms of the second, which open away from the leading edge; the third closes them.
    const run = runOf(
      [
        at('A', 1, 30, 30, 30, [box(30, 30)]),
        at('B', 1, 10, 10, 100, [corner(100, 10)]),
        at('C', 1, 30, 70, 30, [box(30, 30)]),
      ],
      { cutting: 'outlines', spanMax: null },
    );
    expect(isReachable(run.copies[1] as LaidCopy, [run.copies[0], run.copies[2]] as LaidCopy[])).toBe(true);
    const order = takingOrder(run.copies, run.film, null);
    for (const [index, copy] of order.entries()) expect(hasWayOut(copy, order.slice(index + 1))).toBe(true);
  });

  it('takes what lies in a copy’s hole right after it', () => {
    const frame = [box(100, 100), reversed(ring([10, 10], [90, 10], [90, 90], [10, 90]))];
    const run = runOf(
      [
        at('A', 1, 10, 10, 100, frame),
        at('B', 1, 40, 40, 40, [disc(20, 36)]),
        at('A', 2, 130, 10, 100, frame),
        at('B', 2, 160, 40, 40, [disc(20, 36)]),
      ],
      { cutting: 'outlines', spanMax: null },
    );
    const ids = takingOrder(run.copies, run.film, null).map(({ id }) => id);
    expect(ids[ids.indexOf('A-1' as never) + 1]).toBe('B-1');
    expect(ids[ids.indexOf('A-2' as never) + 1]).toBe('B-2');
  });

  it('orders 300 copies of 60 corners in a few seconds', () => {
    const run = runOf(
      Array.from({ length: 300 }, (_, index) =>
        at('A', index + 1, 5 + 40 * (index % 8), 10 + 36 * Math.floor(index / 8) + 10 * (index % 2), 35, [
          disc(17.5, 60),
        ]),
      ),
      { cutting: 'outlines', spanMax: null },
    );
    const start = performance.now();
    expect(takingOrder(run.copies, run.film, null)).toHaveLength(300);
    expect(performance.now() - start).toBeLessThan(6000);
  });
});
