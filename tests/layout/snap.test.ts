import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LaidCopy, snap } from '../../src/layout';
import { areNearer } from '../../src/outlines';
import { fromMm, toMm, um } from '../../src/units';
import { disc, ring } from '../nesting/outlines';
import { runOf } from '../output/runs';

const REACH = fromMm(6);
const GAP = 4;

const round = (number: number, x: number, y: number) => ({
  code: 'A',
  number,
  x,
  y,
  width: 40,
  length: 40,
  outline: [disc(20, 180)],
});

/** Discs of 40 mm, the last of them held. */
function held(...places: readonly (readonly [x: number, y: number])[]) {
  const run = runOf(
    places.map(([x, y], at) => round(at + 1, x, y)),
    { cutting: 'outlines', gap: fromMm(GAP), spanMax: null },
  );
  const copy = run.copies.at(-1) as LaidCopy;
  return { run: { ...run, copies: run.copies.filter((other) => other !== copy) }, copy };
}

const middleOf = ({ x, y }: { x: number; y: number }) => [x / 1000 + 20, y / 1000 + 20] as const;

describe('a copy that is dragged among outlines', () => {
  it('slides on until the gap between two discs holds: their middles are two radii and a gap apart', () => {
    // Beside and somewhat behind: by boxes it would stop 4 mm beside the box.
    const { run, copy } = held([50, 100], [88, 122]);
    const place = snap(run, copy, REACH);
    const [[x0, y0], [x1, y1]] = [middleOf(run.copies[0] as LaidCopy), middleOf(place)];
    expect(Math.hypot(x1 - x0, y1 - y0)).toBeGreaterThanOrEqual(44 - 0.02);
    expect(Math.hypot(x1 - x0, y1 - y0)).toBeLessThan(44 + 0.05);
  });

  it('is pushed out of where it may not lie, to a place within reach', () => {
    const { run, copy } = held([50, 100], [80, 130]);
    const away = ({ x, y }: { x: number; y: number }) => Math.hypot(x - copy.x, y - copy.y);
    const place = snap(run, copy, REACH);
    expect(away(place)).toBeGreaterThan(0);
    expect(away(place)).toBeLessThanOrEqual(REACH);
  });

  it('lies in the hole of another where that has room, and is pushed off its rim', () => {
    const hole = ring(
      ...Array.from({ length: 90 }, (_, at): [number, number] => {
        const turn = (-2 * Math.PI * at) / 90;
        return [60 + 45 * Math.cos(turn), 60 + 45 * Math.sin(turn)];
      }),
    );
    const frame = { ...round(1, 50, 50), width: 120, length: 120, outline: [disc(60, 180), hole] };
    const inHole = (x: number) => {
      const run = runOf([frame, round(2, x, 90)], { cutting: 'in-holes', gap: fromMm(GAP), spanMax: null });
      const copy = run.copies[1] as LaidCopy;
      const [across, along] = middleOf(snap({ ...run, copies: run.copies.slice(0, 1) }, copy, REACH));
      return Math.hypot(across - 110, along - 110);
    };
    // Middles of a disc in a hole are no further apart than its radius less the disc's and the gap: 45 - 20 - 4.
    expect(inHole(95)).toBeLessThanOrEqual(21);
    expect(inHole(114)).toBeLessThanOrEqual(21);
    expect(inHole(114)).toBeGreaterThan(20.8);
  });

  it('stays in the hand where nothing within reach is free, and goes to margins as it did', () => {
    const { run, copy } = held([50, 100], [55, 105]);
    expect(snap(run, copy, fromMm(2))).toEqual({ x: copy.x, y: copy.y });
    const beside = held([50, 100], [6, 12]);
    const place = snap(beside.run, beside.copy, REACH);
    expect([toMm(place.x), toMm(place.y)]).toEqual([5, 10]);
  });

  it('is never moved further than it reaches each way, nor from a free place to one that is not', () => {
    const triangle = [ring([0, 0], [40, 0], [0, 40])];
    fc.assert(
      fc.property(
        fc.array(
          fc.tuple(fc.integer({ min: 5, max: 250 }), fc.integer({ min: 10, max: 150 }), fc.boolean()),
          {
            minLength: 2,
            maxLength: 6,
          },
        ),
        (spots) => {
          const run = runOf(
            spots.map(([x, y, isRound], at) => ({
              ...round(at + 1, x, y),
              outline: isRound ? [disc(20, 36)] : triangle,
            })),
            { cutting: 'outlines', gap: fromMm(GAP), spanMax: null },
          );
          const [copy, ...others] = run.copies as [LaidCopy, ...LaidCopy[]];
          const place = snap({ ...run, copies: others }, copy, REACH);
          expect(Math.abs(place.x - copy.x)).toBeLessThanOrEqual(2 * REACH);
          expect(Math.abs(place.y - copy.y)).toBeLessThanOrEqual(2 * REACH);
          const isFree = ({ x, y }: { x: number; y: number }) =>
            others.every(
              (other) =>
                !areNearer(
                  { rings: copy.outline ?? [], x, y },
                  { rings: other.outline ?? [], x: other.x, y: other.y },
                  um(fromMm(GAP) - 2),
                ),
            );
          if (isFree(copy)) expect(isFree(place)).toBe(true);
        },
      ),
      { numRuns: 200 },
    );
  });
});
