import { describe, expect, it } from 'vitest';
import { coverageOf, findingsOf, type Limits, worstGrade } from '../../src/artwork';
import { startCheck } from '../../src/artwork/check';
import { plainFacts } from '../../src/artwork/facts';
import { luminance } from '../../src/artwork/findings';
import { fromInches, fromMm } from '../../src/units';
import { paint, RED, shape } from './pixels';

const limits: Limits = { stroke: fromMm(0.5), opening: fromMm(0.8), choke: fromMm(0.2), white: fromMm(0) };

/** A square image of a printed inch count, checked in strips of 50 rows. */
function checked(n: number, inches: number, ink: Parameters<typeof paint>[2], other: Partial<Limits> = {}) {
  const printed = { width: fromInches(inches), height: fromInches(inches), shade: null as string | null };
  const own = { ...limits, ...other };
  const check = startCheck({ width: n, height: n }, printed, own);
  const rgba = paint(n, n, ink);
  for (let top = 0; top < n; top += 50) {
    const rows = Math.min(50, n - top);
    check.add(rgba.subarray(4 * n * top, 4 * n * (top + rows)), top, rows);
  }
  const result = {
    ...check.finish(() => undefined),
    facts: plainFacts,
    vector: false,
    shown: 1,
    clipped: null,
  };
  return {
    check: result,
    printed,
    codes: (shade: string | null = null) => codesOf(result, printed, own, shade),
  };
}

function codesOf(
  check: Parameters<typeof findingsOf>[0],
  printed: Parameters<typeof findingsOf>[1],
  own: Limits,
  shade: string | null,
) {
  return findingsOf(check, { ...printed, shade }, own).map(({ code, grade }) => `${code} ${grade}`);
}

const disc = (n: number, r = 0.45) => shape((x, y) => Math.hypot(x - n / 2, y - n / 2) < r * n);

describe('the check of an artwork', () => {
  it('finds nothing in a large solid shape', () => {
    expect(checked(300, 1, disc(300)).codes()).toEqual([]);
  });

  it.each([
    [300, []],
    [250, []],
    [200, ['coarse check']],
    [149, ['coarse poor']],
  ])('grades %i pixels an inch', (ppi, codes) => {
    expect(checked(ppi, 1, disc(ppi)).codes()).toEqual(codes);
  });

  it('names a ground, see-through ink, thin strokes, lost white, specks, and openings', () => {
    const n = 300;
    expect(
      checked(n, 1, (x, y) => (Math.hypot(x - 150, y - 150) < 100 ? RED : [255, 255, 255, 255])).codes(),
    ).toEqual(['ground poor']);
    const hazy = checked(n, 1, (x, y) =>
      x > 20 && x < 280 && y > 20 && y < 280 ? [9, 9, 9, x < 60 ? 120 : 255] : [0, 0, 0, 0],
    );
    expect(hazy.codes()).toContain('see-through poor');
    expect(hazy.check.seeThrough.share).toBeCloseTo(40 / 260, 1);
    const thin = checked(
      n,
      1,
      shape((x, y) => Math.abs(x - 150) < 2 && y > 20 && y < 280),
    );
    expect(thin.codes()).toEqual(['thin-strokes check', 'white-lost check']);
    expect(thin.check.strokes.list[0]?.thickness).toBeGreaterThan(250);
    const wider = checked(
      n,
      1,
      shape((x, y) => Math.abs(x - 150.5) < 2.6 && y > 20 && y < 280),
      { choke: fromMm(0.1) },
    );
    expect(wider.codes()).toEqual(['thin-strokes check']);
    const specked = checked(
      n,
      1,
      shape((x, y) => Math.hypot(x - 150, y - 150) < 80 || Math.hypot(x - 62, y - 150) < 2),
    );
    expect(specked.codes()).toEqual(['white-lost check', 'specks check']);
    const holed = checked(
      n,
      1,
      shape((x, y) => Math.hypot(x - 150, y - 150) < 80 && Math.hypot(x - 150, y - 150) > 3),
    );
    expect(holed.codes()).toEqual(['openings check']);
  });

  it('takes pixels for as the file says they are, and tells the height that goes with them', () => {
    const { check, printed } = checked(300, 1, disc(300));
    const shaped = { ...check, facts: { ...plainFacts, aspect: 2 } };
    const [stretched] = findingsOf(shaped, printed, limits);
    // Pixels half as wide as high: 25.4 mm across are 50.8 mm down.
    expect(stretched).toMatchObject({ code: 'stretched', height: fromMm(50.8) });
    const right = { ...printed, height: fromMm(50.8) };
    expect(findingsOf(shaped, right, limits).map(({ code }) => code)).toEqual(['coarse']);
  });

  it('grades text in fonts that are not here, and images in a drawing, by the size they print at', () => {
    const { check, printed } = checked(300, 1, disc(300));
    const drawing = { ...check, vector: true, shown: 0.5 };
    const grades = (embedded: number, fonts: readonly string[] = []) =>
      findingsOf({ ...drawing, facts: { ...plainFacts, embedded, fonts } }, printed, limits).map(
        ({ code, grade }) => `${code} ${grade}`,
      );
    // Half of the drawing is an inch wide: 600 pixels across all of it are 300 an inch.
    expect(grades(600)).toEqual([]);
    expect(grades(400)).toEqual(['coarse-image check']);
    expect(grades(126)).toEqual(['coarse-image poor']);
    expect(grades(600, ['Quillon'])).toEqual(['font poor']);
  });

  it('names what lies far from the design and makes it larger, however faint, and what it would measure without', () => {
    // 400 pixels are 33.9 mm: a disc of 240 pixels, 20.3 mm, and one pixel of alpha 40 in the corner.
    const design = (x: number, y: number) =>
      Math.hypot(x - 280, y - 280) < 120 ? RED : ([0, 0, 0, 0] as const);
    const stray = checked(400, 400 / 300, (x, y) => (x < 1 && y < 1 ? [90, 90, 90, 40] : design(x, y)));
    expect(stray.codes()).toEqual(['strays poor']);
    const [found] = findingsOf(stray.check, stray.printed, limits);
    expect(found).toMatchObject({ count: 1 });
    if (found?.code !== 'strays') throw new Error('no strays');
    expect(found.without.width).toBeCloseTo((240 / 300) * 25_400, -2);
    expect(checked(400, 400 / 300, design).codes()).toEqual([]);
  });

  it('takes neither what lies close by, nor screens of dots, nor what is no larger for it, for strays', () => {
    // The dot of an i, 0.4 mm from its stem.
    const dotted = shape(
      (x, y) => (Math.abs(x - 60) < 20 && y > 60) || Math.hypot(x - 60, y - 52) < 3 || (x > 100 && y > 60),
    );
    expect(checked(300, 1, dotted).check.strays).toBeNull();
    const screen = shape((x, y) => Math.hypot((x % 10) - 5, (y % 10) - 5) < 2.5);
    expect(checked(300, 1, screen).check.strays).toBeNull();
    const inside = shape((x, y) => {
      const r = Math.hypot(x - 150, y - 150);
      return r < 1 || (r > 110 && r < 150);
    });
    expect(checked(300, 1, inside).codes()).toEqual(['white-lost check', 'specks check']);
  });

  it('smoothed edges are not see-through', () => {
    const soft = checked(300, 1, (x, y) => {
      const share = Math.min(1, Math.max(0, 120.5 - Math.hypot(x - 150, y - 150)));
      return [200, 0, 0, Math.round(255 * share)];
    });
    expect(soft.check.seeThrough.share).toBe(0);
  });

  it('offers black to be knocked out on a black garment only', () => {
    const black = checked(300, 1, (x, y) =>
      Math.hypot(x - 150, y - 150) < 130 ? [8, 8, 8, 255] : [0, 0, 0, 0],
    );
    expect(black.codes()).toEqual([]);
    expect(black.codes('#1f2b46')).toEqual([]);
    expect(black.codes('#1c1c1e')).toEqual(['black-on-black check']);
  });

  it('measures the same ink in a shrunken raster and tells places as shares of the box', () => {
    // 1200 ppi: the shapes are looked at in every third pixel.
    const { check, printed } = checked(
      1200,
      1,
      shape((x, y) => Math.abs(x - 600) < 8 && y > 60 && y < 1140),
    );
    const area = 16 * 1080 * (25.4 / 1200) ** 2;
    expect(coverageOf(check.sums, check.pixels, printed).white).toBeCloseTo(area, 6);
    const [place] = check.strokes.list;
    expect(place?.x).toBeCloseTo(592 / 1200, 1);
    expect(place?.height).toBeCloseTo(0.9, 1);
    expect(check.outlineLength / 1000).toBeCloseTo((2 * (16 + 1080) * 25.4) / 1200, 0);
  });

  it('puts the worst first, and grades by it', () => {
    const found = findingsOf(
      {
        ...checked(140, 1, disc(140)).check,
        facts: { ...plainFacts, profile: 'Wide RGB', deep: true, animated: true },
      },
      { width: fromInches(1), height: fromInches(1), shade: null },
      limits,
    );
    expect(found.map(({ grade }) => grade)).toEqual(['poor', 'check', 'check', 'good']);
    expect(worstGrade(found)).toBe('poor');
    expect(worstGrade([])).toBe('good');
  });
});

describe('relative luminance', () => {
  // WCAG 2.2, definition of relative luminance; #777777 is 0.1845 (from memory).
  it('is 0 of black, 1 of white, 0.18 of #777777', () => {
    expect(luminance('#000000')).toBe(0);
    expect(luminance('#ffffff')).toBeCloseTo(1, 9);
    expect(luminance('#777777')).toBeCloseTo(0.1845, 3);
  });
});
