import { describe, expect, it } from 'vitest';
import { findingsOf, type Limits, whitePlaces } from '../../src/artwork';
import { startCheck } from '../../src/artwork/check';
import { plainFacts } from '../../src/artwork/facts';
import { fromMm } from '../../src/units';

const usual: Limits = { stroke: fromMm(0.5), opening: fromMm(0.8), choke: fromMm(0.1), white: fromMm(0) };
const INCH = 25.4;

/** A shape in millimetres by the distance to its edge, negative within it. */
type Shape = (x: number, y: number) => number;

/** Checks a shape drawn with smoothed edges, and of some opacity. */
function checked(width: number, height: number, ppi: number, shape: Shape, opacity = 1, limits = usual) {
  const [across, down] = [Math.round((width * ppi) / INCH), Math.round((height * ppi) / INCH)];
  const pixel = INCH / ppi;
  const printed = { width: fromMm(across * pixel), height: fromMm(down * pixel), shade: null };
  const check = startCheck({ width: across, height: down }, printed, limits);
  const row = new Uint8ClampedArray(4 * across);
  for (let y = 0; y < down; y += 1) {
    for (let x = 0; x < across; x += 1) {
      const share = 0.5 - shape((x + 0.5) * pixel, (y + 0.5) * pixel) / pixel;
      row[4 * x + 3] = 255 * opacity * Math.min(1, Math.max(0, share));
    }
    check.add(row, y, 1);
  }
  const found = {
    ...check.finish(() => undefined),
    facts: plainFacts,
    vector: false,
    shown: 1,
    clipped: null,
  };
  return { found, findings: findingsOf(found, printed, limits), size: { width, height } };
}

const box =
  (cx: number, cy: number, width: number, height: number): Shape =>
  (x, y) =>
    Math.max(Math.abs(x - cx) - width / 2, Math.abs(y - cy) - height / 2);

const union =
  (...shapes: readonly Shape[]): Shape =>
  (x, y) =>
    Math.min(...shapes.map((shape) => shape(x, y)));

describe('what runs out', () => {
  it.each([150, 300])('is told where it falls under the limit, at %i ppi', (ppi) => {
    // From 2 mm to nothing over 30 mm, on a block: 0.5 mm are left 7.5 mm before its end at x = 35.
    const taper: Shape = (x, y) => Math.max(Math.abs(y - 4) - (35 - x) / 30, 5 - x, x - 35);
    const { found, findings, size } = checked(37, 8, ppi, union(taper, box(4, 4, 3, 6)));
    expect(findings.map(({ code }) => code)).toContain('thin-strokes');
    expect(found.strokes.widths).toHaveLength(1);
    const [place] = found.strokes.list;
    // The line gets thinner by 1 mm in 15: a hundredth of a millimetre lies within 0.15 mm of its length, a pixel's tenth within 0.26.
    expect((place?.x ?? 0) * size.width).toBeGreaterThan(26.2);
    expect((place?.x ?? 0) * size.width).toBeLessThan(28.2);
    expect(place?.thickness).toBeLessThan(fromMm(INCH / ppi + 0.02));
  });

  it.each([30, 45, 60])(
    'is a tip, and no stroke, where its sides are %f degrees apart (rule 13)',
    (degrees) => {
      const half = (degrees * Math.PI) / 360;
      const tip: Shape = (x, y) =>
        Math.max(Math.abs(y - 6) * Math.cos(half) - (11 - x) * Math.sin(half), 2 - x);
      expect(checked(12, 12, 300, tip).findings).toEqual([]);
    },
  );
});

describe('the thinnest place', () => {
  it.each([0.12, 0.2, 0.3])('is a neck of %f mm in a stroke of 0.45 mm', (neck) => {
    const { found } = checked(
      24,
      4,
      300,
      union(box(6, 2, 9, 0.45), box(12, 2, 4, neck), box(18, 2, 9, 0.45)),
    );
    expect(found.strokes.widths).toHaveLength(1);
    expect(Math.abs((found.strokes.widths[0] ?? 0) / 1000 - neck)).toBeLessThan(0.05);
  });

  it('is told of all strokes, however many: each is counted', () => {
    // 20 columns of 27: 540 strokes of 0.3 mm, and one of them of 0.15 mm.
    const strokes: Shape = (x, y) => {
      const [column, row] = [Math.floor(x / 4), Math.floor(y / 2)];
      const width = column === 13 && row === 20 ? 0.15 : 0.3;
      return Math.max(Math.abs((y % 2) - 1) - width / 2, Math.abs((x % 4) - 2) - 1.5);
    };
    const { found, findings } = checked(80, 54, 300, strokes);
    expect(found.strokes.widths).toHaveLength(540);
    const [thin] = findings.filter(({ code }) => code === 'thin-strokes');
    expect(thin).toMatchObject({ count: 540 });
    expect(Math.abs((found.strokes.widths[0] ?? 0) - 150)).toBeLessThan(40);
    const [place] = found.strokes.list;
    expect(((place?.x ?? 0) + (place?.width ?? 0) / 2) * 80).toBeCloseTo(13 * 4 + 2, 0);
  });

  it('is that of a hairline of a quarter of full opacity', () => {
    const { findings } = checked(20, 8, 300, box(10, 4, 16, 0.08), 0.25);
    expect(findings.map(({ code }) => code)).toContain('thin-strokes');
  });
});

/** Strokes of so many millimetres on their sides of a block, which is broad. */
const strokesOn = (...widths: readonly number[]): Shape =>
  union(box(3, 10, 4, 18), ...widths.map((width, row) => box(11, 2 + 3 * row, 12, width)));

describe('the white that the choke leaves', () => {
  const own: Limits = { stroke: fromMm(0.2), opening: fromMm(0.8), choke: fromMm(0.2), white: fromMm(0.3) };
  const whiteOf = (shape: Shape, ppi: number, limits = own) =>
    checked(20, 20, ppi, shape, 1, limits).findings.filter(({ code }) => /white/.test(code));

  it.each([150, 300, 600])(
    'is told where it is thinner than the film holds, and apart where there is none, at %i ppi',
    (ppi) => {
      // 0.2 mm off each side: 0.4, 0.2, 0.1 and nothing are left, and nothing of 0.3 mm.
      const found = whiteOf(strokesOn(0.8, 0.6, 0.5, 0.38, 0.3), ppi);
      const [thin, lost] = ['thin-white', 'white-lost'].map((code) =>
        found.find((each) => each.code === code),
      );
      expect(thin).toMatchObject({ count: 2, limit: fromMm(0.3), grade: 'check' });
      expect(lost).toMatchObject({ count: 2, choke: fromMm(0.2) });
      const least = thin?.code === 'thin-white' ? thin.least / 1000 : Number.NaN;
      expect(Math.abs(least - 0.1)).toBeLessThan(0.05);
    },
  );

  it('is told under dots as under strokes, with the places of each', () => {
    const dot: Shape = (x, y) => Math.hypot(x - 5.8, y - 10) - 0.3;
    const bare: Shape = (x, y) => Math.hypot(x - 5.8, y - 14) - 0.17;
    const shape = union(box(3, 10, 4, 18), dot, bare);
    const { found } = checked(20, 20, 300, shape, 1, own);
    expect(whiteOf(shape, 300).map(({ code }) => code)).toEqual(['white-lost', 'thin-white']);
    const [thin] = whitePlaces(found, own).thin;
    expect((thin?.x ?? 0) + (thin?.width ?? 0) / 2).toBeCloseTo(5.8 / 20, 2);
    expect((thin?.y ?? 0) + (thin?.height ?? 0) / 2).toBeCloseTo(10 / 20, 2);
    const [lost] = whitePlaces(found, own).lost;
    expect((lost?.y ?? 0) + (lost?.height ?? 0) / 2).toBeCloseTo(14 / 20, 2);
  });

  it('is judged at the printed size, and by the choke and the limit of the shop', () => {
    const shape = strokesOn(0.6);
    expect(whiteOf(shape, 300, { ...own, white: fromMm(0.15) })).toEqual([]);
    expect(whiteOf(shape, 300, { ...own, choke: fromMm(0.1) })).toEqual([]);
    const larger: Shape = (x, y) => 2 * shape(x / 2, y / 2);
    expect(checked(40, 40, 300, larger, 1, own).findings.filter(({ code }) => /white/.test(code))).toEqual(
      [],
    );
  });
});

describe('a haze along a block', () => {
  it.each([40, 100, 120])('of alpha %i is neither an opening nor a stroke where it begins', (alpha) => {
    const side = 200;
    const printed = { width: fromMm(20), height: fromMm(20) };
    const check = startCheck({ width: side, height: side }, printed, usual);
    const row = new Uint8ClampedArray(4 * side);
    for (let x = 0; x < side; x += 1) row[4 * x + 3] = x < 60 ? alpha : 255;
    for (let y = 0; y < side; y += 1) check.add(row, y, 1);
    const { openings, strokes, specks } = check.finish(() => undefined);
    expect([openings.widths, strokes.widths, specks.widths]).toEqual([[], [], []]);
  });
});

describe('dots', () => {
  it('of 0.6 mm are no specks at a limit of 0.5 mm, and those of 0.4 mm are', () => {
    const dots = (size: number): Shape =>
      union(box(4, 4, 6, 6), box(14, 4, 6, 6), (x, y) => Math.hypot(x - 9.13, y - 4.07) - size / 2);
    expect(checked(18, 8, 300, dots(0.6)).findings.map(({ code }) => code)).toEqual([]);
    expect(checked(18, 8, 300, dots(0.4)).findings.map(({ code }) => code)).toEqual(['specks']);
  });
});

describe('a screen of dots', () => {
  const SPACING = INCH / 25;
  /** At 45 degrees, its dots from nothing to `largest` across the image. */
  const screen =
    (least: number, largest: number): Shape =>
    (x, y) => {
      const [u, v] = [(x + y) / Math.SQRT2 / SPACING, (y - x) / Math.SQRT2 / SPACING];
      const [du, dv] = [u - Math.floor(u) - 0.5, v - Math.floor(v) - 0.5];
      const size = least + ((largest - least) * x) / 30;
      return Math.max(Math.hypot(du, dv) * SPACING - size / 2, box(15, 15, 28, 28)(x, y));
    };

  it('is one finding, whose dots are told with their number and the least', () => {
    const { found, findings } = checked(30, 30, 300, screen(0.2, 0.9));
    const told = findings.filter(({ code }) => code !== 'see-through');
    expect(told.map(({ code }) => code)).toEqual(['white-lost', 'screen-dots']);
    const [, dots] = told;
    if (dots?.code !== 'screen-dots') throw new Error('no screen');
    expect(Math.abs(dots.lines - 25)).toBeLessThan(1);
    // Over 28 x 28 mm there is one a square of the spacing; some are cut at the edge.
    expect(found.screens.dots?.dots).toBeGreaterThan(0.85 * (28 / SPACING) ** 2);
    // Dots under 0.5 mm lie on the first 12.9 of 30 mm.
    expect(dots.count / dots.dots).toBeGreaterThan(0.33);
    expect(dots.count / dots.dots).toBeLessThan(0.55);
  });

  it('of dots that hold is none', () => {
    const inside: Shape = (x, y) => {
      const [u, v] = [(x % 1.2) - 0.6, (y % 1.2) - 0.6];
      return Math.hypot(u, v) - 0.3;
    };
    expect(checked(24, 24, 300, inside).findings).toEqual([]);
  });

  it('is not what letters in lines are', () => {
    // Three dots to a letter of three, lines further apart than letters.
    const line: Shape = (x, y) => Math.max(Math.abs((x % 1.1) - 0.5) - 0.2, Math.abs((y % 3) - 1.5) - 0.2);
    const { findings } = checked(30, 30, 300, line);
    expect(findings.map(({ code }) => code)).toContain('specks');
  });
});
