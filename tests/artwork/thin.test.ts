import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { alphaBuilder } from '../../src/artwork/alpha';
import { type InkMask, inkMask } from '../../src/artwork/ink-mask';
import { openedAway } from '../../src/artwork/opening';
import { printing } from '../../src/artwork/printing';
import * as thin from '../../src/artwork/thin';
import { paint, shape } from './pixels';

/** 300 ppi, in micrometres a pixel. */
const PITCH = { x: 84.667, y: 84.667 };
const SIDE = 240;

const LIMIT = 500;
const OPENING = 800;

function maskOf(inside: (x: number, y: number) => boolean, pitch = PITCH) {
  const { raster, add } = alphaBuilder(SIDE, SIDE, 1, 16);
  add(paint(SIDE, SIDE, shape(inside)), 0, SIDE);
  return inkMask(printing(raster), pitch);
}

const told = ({ places }: thin.ThinPlaces) => ({
  places,
  count: places.length,
  least: places[0]?.width ?? null,
});
const thinStrokes = (ink: InkMask) => told(thin.thinStrokes(ink, LIMIT));
const narrowOpenings = (ink: InkMask) => told(thin.narrowOpenings(ink, OPENING));

/** A bar through the middle, so many micrometres wide, turned by an angle. */
const bar = (width: number, angle: number) => (x: number, y: number) => {
  const [dx, dy] = [x - SIDE / 2, y - SIDE / 2];
  const along = dx * Math.cos(angle) + dy * Math.sin(angle);
  const off = dy * Math.cos(angle) - dx * Math.sin(angle);
  return Math.abs(along) < 80 && Math.abs(off) * PITCH.x < width / 2;
};

const angles = [0, 0.3, Math.PI / 4, 1.2, Math.PI / 2];

describe('thin strokes', () => {
  it.each(angles)('are found below the limit and not above it, turned by %f', (angle) => {
    // Half a pixel, 42 um, is what a raster leaves open on each side of the limit; a whole one is out of doubt.
    expect(thinStrokes(maskOf(bar(400, angle)))).toMatchObject({ count: 1 });
    expect(thinStrokes(maskOf(bar(600, angle)))).toMatchObject({ count: 0, least: null });
  });

  // A bar of hard pixels is up to a pixel wider or thinner than what it was made from, and half of one is left open.
  it.each(angles)('tell their width within a pixel and a half, turned by %f', (angle) => {
    for (const width of [170, 254, 339]) {
      const { least } = thinStrokes(maskOf(bar(width, angle)));
      expect(Math.abs((least ?? 0) - width)).toBeLessThan(1.5 * PITCH.x);
    }
  });

  it('on something thick are found where they leave it, and not where it is thick', () => {
    const inside = (x: number, y: number) =>
      Math.hypot(x - 80, y - 120) < 40 || (x > 80 && x < 220 && Math.abs(y - 120) < 1.6);
    const { places, count } = thinStrokes(maskOf(inside));
    expect(count).toBe(1);
    const [place] = places;
    expect(place?.apart).toBe(false);
    expect(place?.box.x).toBeGreaterThan(115);
    expect((place?.box.x ?? 0) + (place?.box.width ?? 0)).toBeGreaterThan(217);
  });

  it('are not the corners of a square, whatever its turn', () => {
    for (const angle of angles) {
      const square = (x: number, y: number) => {
        const [dx, dy] = [x - SIDE / 2, y - SIDE / 2];
        const u = dx * Math.cos(angle) + dy * Math.sin(angle);
        return Math.max(Math.abs(u), Math.abs(dy * Math.cos(angle) - dx * Math.sin(angle))) < 60;
      };
      expect(thinStrokes(maskOf(square)).count).toBe(0);
    }
  });

  it('are not tips, however they point, but strokes that join others are (rule 13)', () => {
    for (const degrees of [20, 30, 45, 60]) {
      const half = Math.tan((degrees * Math.PI) / 360);
      const tip = (x: number, y: number) => y > 40 && y < 200 && Math.abs(x - 120) < (y - 40) * half;
      expect(thinStrokes(maskOf(tip)).count).toBe(0);
    }
    // A grid of lines of 0.34 mm, joined by blocks.
    const grid = (x: number, y: number) =>
      x > 20 &&
      x < 220 &&
      y > 20 &&
      y < 220 &&
      ((x % 50 < 14 && y % 50 < 14) || (Math.abs((x % 50) - 7) < 2 && y < 200 && y > 24));
    expect(thinStrokes(maskOf(grid)).count).toBeGreaterThan(8);
  });

  it('are found along both axes of pixels that are not square', () => {
    const pitch = { x: 84.667, y: 169.333 };
    const upright = maskOf((x, y) => Math.abs(x - 120) < 2 && Math.abs(y - 120) < 80, pitch);
    const lying = maskOf((x, y) => Math.abs(y - 120) < 2 && Math.abs(x - 120) < 80, pitch);
    // Four pixels are 339 um across, and 677 um down.
    expect(thinStrokes(upright).count).toBe(1);
    expect(thinStrokes(lying).count).toBe(0);
  });

  it('are specks when they lie by themselves', () => {
    const { places } = thinStrokes(
      maskOf((x, y) => Math.hypot(x - 50, y - 50) < 2 || Math.hypot(x - 150, y - 150) < 30),
    );
    expect(places).toHaveLength(1);
    expect(places[0]).toMatchObject({ apart: true });
  });
});

describe('narrow openings', () => {
  const plate = (x: number, y: number) => Math.max(Math.abs(x - 120), Math.abs(y - 120)) < 90;

  it('are holes that are small, and not those that are large', () => {
    const holed = (radius: number) => maskOf((x, y) => plate(x, y) && Math.hypot(x - 120, y - 120) > radius);
    expect(narrowOpenings(holed(3.5))).toMatchObject({ count: 1 });
    expect(narrowOpenings(holed(7))).toMatchObject({ count: 0 });
  });

  it('are slits that are narrow, and not the corner where two strokes meet', () => {
    const slit = maskOf((x, y) => plate(x, y) && !(Math.abs(x - 120) < 3 && y > 100));
    expect(narrowOpenings(slit)).toMatchObject({ count: 1 });
    const corner = maskOf((x, y) => plate(x, y) && (x < 100 || y < 100));
    expect(narrowOpenings(corner)).toMatchObject({ count: 0 });
  });
});

/** The parts that are left of a shape by the definition, where they touch nothing more of it: box and greatest depth. */
function partsApart(bits: readonly boolean[], width: number, pitch: typeof PITCH, diameter: number) {
  const pixel = Math.sqrt(pitch.x * pitch.y);
  const radius = diameter / 2 + pixel / 4;
  const at = (index: number) => ({ x: index % width, y: Math.floor(index / width) });
  const between = (a: number, b: number) =>
    Math.hypot((at(a).x - at(b).x) * pitch.x, (at(a).y - at(b).y) * pitch.y);
  const touch = (a: number, b: number) =>
    Math.max(Math.abs(at(a).x - at(b).x), Math.abs(at(a).y - at(b).y)) <= 1;
  const all = bits.map((_, index) => index);
  const [inked, outside] = [all.filter((index) => bits[index]), all.filter((index) => !bits[index])];
  const middles = inked.filter((index) => outside.every((other) => between(index, other) >= radius));
  const left = new Set(
    inked.filter((index) => middles.every((middle) => between(index, middle) >= radius + pixel / 2)),
  );
  const rest = inked.filter((index) => !left.has(index));
  const parts: number[][] = [];
  for (const start of left) {
    const part = [start];
    left.delete(start);
    for (const index of part) {
      for (const other of left) if (touch(index, other) && left.delete(other)) part.push(other);
    }
    parts.push(part);
  }
  return parts
    .filter((part) => !part.some((index) => rest.some((other) => touch(index, other))))
    .map((part) => {
      const [xs, ys] = [part.map((index) => at(index).x), part.map((index) => at(index).y)];
      const [x, y] = [Math.min(...xs), Math.min(...ys)];
      const depths = part.map((index) => Math.min(...outside.map((other) => between(index, other))));
      return {
        box: { x, y, width: Math.max(...xs) - x + 1, height: Math.max(...ys) - y + 1 },
        depth: Math.max(...depths),
      };
    });
}

describe('what an opening takes away and lies by itself', () => {
  const [width, height, margin] = [46, 30, 6];
  const blots = fc.array(
    fc.record({
      x: fc.nat(27),
      y: fc.nat(11),
      width: fc.integer({ min: 1, max: 7 }),
      height: fc.integer({ min: 1, max: 7 }),
    }),
    { minLength: 1, maxLength: 6 },
  );

  it('is all that the definition leaves, in its boxes and with its depths', () => {
    fc.assert(
      fc.property(blots, fc.constantFrom(170, 300, 420), (boxes, diameter) => {
        const inked = (x: number, y: number) =>
          boxes.some((box) => x > box.x && x < box.x + box.width && y > box.y && y < box.y + box.height);
        const [across, down] = [width - 2 * margin, height - 2 * margin];
        const { raster, add } = alphaBuilder(across, down, 1, margin);
        add(paint(across, down, shape(inked)), 0, down);
        const bits = Array.from(raster.alpha, (alpha) => alpha >= 128);
        const mask = inkMask(printing(raster), PITCH, { x: 1, y: 1 });
        const left = [...openedAway(mask.ink, mask.margin, PITCH, diameter)].filter(({ apart }) => apart);
        const first = (a: { box: { x: number; y: number } }, b: { box: { x: number; y: number } }) =>
          a.box.y - b.box.y || a.box.x - b.box.x;
        const defined = partsApart(bits, width, PITCH, diameter).sort(first);
        expect(left.sort(first).map(({ box }) => box)).toEqual(defined.map(({ box }) => box));
        left.forEach(({ depths }, index) => {
          expect(Math.max(...depths)).toBeCloseTo(defined[index]?.depth ?? 0, 6);
        });
      }),
      { numRuns: 60 },
    );
  });
});
