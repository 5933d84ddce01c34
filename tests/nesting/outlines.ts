import fc from 'fast-check';
import type { OutlinePiece, OutlineProblem } from '../../src/nesting';
import type { Ring } from '../../src/outlines';
import { um } from '../../src/units';

const mm = (value: number) => um(Math.round(value * 1000));

/** A ring of corners in millimetres. */
export const ring = (...corners: readonly (readonly [number, number])[]): Ring =>
  Float64Array.from(corners.flat(), (value) => Math.round(value * 1000));

export const box = (width: number, length: number): Ring =>
  ring([0, 0], [width, 0], [width, length], [0, length]);

export const reversed = (of: Ring): Ring => {
  const corners = Array.from(
    { length: of.length / 2 },
    (_, at) => [of[2 * at], of[2 * at + 1]] as [number, number],
  );
  return Float64Array.from(corners.toReversed().flat());
};

/** A regular polygon of as many corners as a disc needs to be one within a thousandth. */
export const disc = (radius: number, corners = 72): Ring =>
  ring(
    ...Array.from({ length: corners }, (_, at): [number, number] => {
      const turn = (2 * Math.PI * at) / corners;
      return [radius + radius * Math.cos(turn), radius + radius * Math.sin(turn)];
    }),
  );

/** Three sides of a frame, open behind. */
export const corner = (size: number, arm: number): Ring =>
  ring([0, 0], [size, 0], [size, arm], [arm, arm], [arm, size], [0, size]);

export const piece = (
  id: string,
  rings: readonly Ring[],
  count: number,
  rotations: readonly number[] = [0],
): OutlinePiece => ({ id, rings, count, rotations });

/** A roll without margins and gap, unless told. */
export const roll = (
  width: number,
  pieces: readonly OutlinePiece[],
  { gap = 0, side = 0, end = 0, spanMax = null as number | null } = {},
): OutlineProblem => ({
  film: {
    kind: 'roll',
    width: mm(width),
    spanMax: spanMax === null ? null : mm(spanMax),
    cutBlank: um(0),
    lengthLimit: null,
    lines: [],
    noPrint: [],
  },
  pinned: [],
  margins: { left: mm(side), right: mm(side), lead: mm(end), tail: mm(end) },
  gap: mm(gap),
  pieces,
});

/** A star of corners around a point: any simple polygon that all of it is seen from there. */
const anyStar: fc.Arbitrary<Ring> = fc
  .array(fc.integer({ min: 8, max: 60 }), { minLength: 3, maxLength: 12 })
  .map((rays) => {
    const corners = rays.map((ray, at): [number, number] => {
      const turn = (2 * Math.PI * at) / rays.length;
      return [ray * Math.cos(turn), ray * Math.sin(turn)];
    });
    const [left, top] = [Math.min(...corners.map(([x]) => x)), Math.min(...corners.map(([, y]) => y))];
    return ring(...corners.map(([x, y]): [number, number] => [x - left, y - top]));
  });

/** A star, or a frame with a hole. */
export const anyRings: fc.Arbitrary<readonly Ring[]> = fc.oneof(
  anyStar.map((star) => [star]),
  fc.integer({ min: 30, max: 90 }).map((size) => {
    const hole = ring([8, 8], [size - 8, 8], [size - 8, size - 8], [8, size - 8]);
    return [box(size, size), reversed(hole)];
  }),
);

export const anyProblem: fc.Arbitrary<OutlineProblem> = fc
  .record({
    outlines: fc.array(fc.tuple(anyRings, fc.integer({ min: 1, max: 4 })), { minLength: 1, maxLength: 5 }),
    rotations: fc.constantFrom([0], [0, 180], [0, 90, 180, 270], [0, 45, 90, 135]),
    gap: fc.constantFrom(0, 3, 6),
    film: fc.constantFrom('roll', 'spans', 'sheets'),
  })
  .map(({ outlines, rotations, gap, film }): OutlineProblem => {
    const pieces = outlines.map(([rings, count], at) => piece(`p${at}`, rings, count, rotations));
    const base = roll(200, pieces, { gap, side: 5, end: 10, spanMax: film === 'spans' ? 220 : null });
    return film === 'sheets'
      ? { ...base, film: { kind: 'sheet', width: base.film.width, length: mm(210), sheetLimit: null } }
      : base;
  });
