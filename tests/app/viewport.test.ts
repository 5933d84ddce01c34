import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  rowsOf,
  rowUnder,
  runScale,
  seenLength,
  toFilm,
  toScreen,
  widthScale,
  within,
  zoomAbout,
} from '../../app/store/viewport';
import { fromMm } from '../../src/units';
import { letterF } from '../output/runs';

const frame = {
  pixels: { width: 1200, height: 330 },
  around: 64,
  film: { width: fromMm(330), length: fromMm(6000) },
};
const view = { along: 0, down: 0, scale: widthScale(frame) };

describe('the film on the screen', () => {
  it('shows an F lying on its back, turned and never mirrored', () => {
    const middles = letterF().copies.map((copy) => {
      const box = toScreen(view, frame.film.width, copy);
      return { x: box.left + box.width / 2, y: box.top + box.height / 2 };
    });
    const [longArm, stem, shortArm] = [middles[1], middles[0], middles[2]];
    if (!longArm || !stem || !shortArm) throw new Error('no F');
    // Turned by a quarter to the left: arms point up, and the long one, on top of the F, lies left.
    expect(longArm.y).toBeLessThan(stem.y);
    expect(shortArm.y).toBeLessThan(stem.y);
    expect(longArm.x).toBeLessThan(shortArm.x);
  });

  it('has its leading edge at the left and its near side at the bottom', () => {
    const corner = toScreen(view, frame.film.width, { x: 0, y: 0, width: fromMm(10), length: fromMm(20) });
    expect(corner.left).toBe(0);
    expect(corner.top + corner.height).toBeCloseTo(330, 6);
    expect(corner.width).toBeCloseTo(20, 6);
  });

  it('finds the film under a point of the screen again', () => {
    fc.assert(
      fc.property(fc.nat(1199), fc.nat(329), fc.double({ min: 1, max: 8, noNaN: true }), (x, y, zoom) => {
        const near = zoomAbout(view, zoom, { x: 600, y: 165 }, frame);
        const at = toFilm(near, frame, { x, y });
        const box = toScreen(near, frame.film.width, { ...at, width: 0, length: 0 });
        // Micrometres are whole.
        expect(Math.abs(box.left - x)).toBeLessThan(near.scale);
        expect(Math.abs(box.top - y)).toBeLessThan(near.scale);
      }),
    );
  });

  it('keeps the point under the pointer where it is while zooming', () => {
    const at = { x: 700, y: 100 };
    const before = toFilm(view, frame, at);
    const after = toFilm(zoomAbout({ ...view, along: fromMm(1000) }, 3, at, frame), frame, at);
    expect(after.x).toBeCloseTo(before.x, -1);
    expect(after.y - fromMm(1000)).toBeCloseTo(before.y, -1);
  });

  it('never leaves the film', () => {
    const wild = fc.double({ min: -1e9, max: 1e9, noNaN: true });
    fc.assert(
      fc.property(wild, wild, fc.double({ min: 1e-9, max: 1, noNaN: true }), (along, down, scale) => {
        const kept = within({ along, down, scale }, frame);
        expect(kept.scale).toBeGreaterThanOrEqual(runScale(frame));
        expect(kept.along).toBeGreaterThanOrEqual(0);
        expect(kept.along).toBeLessThanOrEqual(frame.film.length);
      }),
    );
  });

  const whole = (metres: number) => {
    const own = { ...frame, film: { ...frame.film, length: fromMm(1000 * metres) } };
    return { own, view: within({ along: 0, down: 0, scale: runScale(own) }, own) };
  };

  it.each([5, 6, 12, 30])(
    'uses the height where %d m are seen whole: the next stretch lies below',
    (metres) => {
      const { own, view } = whole(metres);
      const rows = rowsOf(view, own);
      expect(rows.length).toBeGreaterThan(1);
      // Larger than in one row, and no room left for another.
      expect(view.scale).toBeGreaterThan(1.3 * (own.pixels.width / own.film.length));
      const [first, second] = rows;
      if (!first || !second) throw new Error('one row');
      expect(second.top - first.top).toBeCloseTo(first.pixels.height + own.around, 6);
      expect(second.view.along).toBeCloseTo(first.view.along + own.pixels.width / view.scale, 3);
      const last = rows.at(-1) ?? first;
      expect(last.top + last.pixels.height).toBeLessThanOrEqual(own.pixels.height + 1e-6);
      expect(seenLength(view, own)).toBeGreaterThanOrEqual(own.film.length - 1);
      expect(last.view.along).toBeLessThan(own.film.length);
    },
  );

  it('shows a short run in one row', () => {
    const { own, view } = whole(1);
    expect(rowsOf(view, own)).toHaveLength(1);
    expect(view.scale).toBe(widthScale(own));
  });

  it('finds the film under a point of any row again', () => {
    const { own, view } = whole(12);
    for (const { top, view: shown, pixels } of rowsOf(view, own)) {
      const at = toFilm(view, own, { x: 300, y: top + pixels.height / 2 });
      expect(at.x).toBeCloseTo(own.film.width / 2, -1);
      expect(at.y).toBeCloseTo(shown.along + 300 / view.scale, -1);
    }
  });

  it('tells points beyond a row, and in others, by the row that is held', () => {
    const { own, view } = whole(12);
    const rows = rowsOf(view, own);
    const [first, second] = [rows[0] ?? expect.fail(), rows[1] ?? expect.fail()];
    const below = { x: 300, y: second.top + 10 };
    expect(rowUnder(view, own, below.y)).toBe(1);
    const at = toFilm(view, own, below, 0);
    expect(at.y).toBeCloseTo(first.view.along + 300 / view.scale, -1);
    expect(own.film.width - at.x).toBeCloseTo((below.y - first.top) / view.scale, -1);
    expect(toFilm(view, own, { x: -5000, y: -5000 }, 1).x).toBeGreaterThan(own.film.width);
  });

  it('zooms in on what is pointed at in a lower row', () => {
    const { own, view } = whole(12);
    const row = rowsOf(view, own)[1] ?? expect.fail();
    const at = { x: 500, y: row.top + row.pixels.height / 2 };
    const before = toFilm(view, own, at);
    const near = zoomAbout(view, 40, at, own);
    expect(rowsOf(near, own)).toHaveLength(1);
    const after = toFilm(near, own, at);
    expect(Math.abs(after.y - before.y)).toBeLessThan(2 / near.scale);
    expect(Math.abs(after.x - before.x)).toBeLessThan(2 / near.scale);
  });
});
