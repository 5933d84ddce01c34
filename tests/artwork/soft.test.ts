import { describe, expect, it } from 'vitest';
import { findingsOf, type Limits } from '../../src/artwork';
import { startCheck } from '../../src/artwork/check';
import { addInk, noInk } from '../../src/artwork/coverage';
import { plainFacts } from '../../src/artwork/facts';
import { mended } from '../../src/artwork/mend';
import { mostLines } from '../../src/artwork/screening';
import type { Mend } from '../../src/model';
import { fromMm } from '../../src/units';
import { paint } from './pixels';

const INCH = 25.4;
const limits: Limits = { stroke: fromMm(0.5), opening: fromMm(0.5), choke: fromMm(0), white: fromMm(0) };

/** Colours with an opacity, 0 to 1, by millimetres from the corner. */
type Ink = (x: number, y: number) => number;

function drawn(side: number, ppi: number, opacity: Ink) {
  const [n, pixel] = [Math.round((side * ppi) / INCH), INCH / ppi];
  const rgba = paint(n, n, (x, y) => [200, 30, 60, Math.round(255 * opacity(x * pixel, y * pixel))]);
  return { rgba: rgba as Uint8ClampedArray<ArrayBuffer>, width: n, height: n };
}

function mend(side: number, ppi: number, opacity: Ink, by: Mend) {
  const image = drawn(side, ppi, opacity);
  const whole = { x: 0, y: 0, width: image.width, height: image.height };
  const pitch = { x: (1000 * INCH) / ppi, y: (1000 * INCH) / ppi };
  const inked = (rgba: Uint8ClampedArray) => {
    const sums = noInk();
    addInk(sums, rgba);
    return sums.white / (image.width * image.height);
  };
  const after = mended(image, by, whole, pitch);
  return { image: after, after: inked(after.rgba) };
}

function found(image: { rgba: Uint8ClampedArray; width: number; height: number }, ppi: number) {
  const mm = fromMm((image.width * INCH) / ppi);
  const printed = { width: mm, height: mm, shade: null };
  const check = startCheck(image, printed, limits);
  check.add(image.rgba, 0, image.height);
  const result = {
    ...check.finish(() => undefined),
    facts: plainFacts,
    vector: false,
    shown: 1,
    clipped: null,
  };
  return { result, codes: findingsOf(result, printed, limits).map(({ code }) => code) };
}

/** A solid disc with a glow that runs out around it. */
const glow: Ink = (x, y) => Math.min(1, Math.max(0, 1 - (Math.hypot(x - 15, y - 15) - 6) / 8));

describe('a threshold', () => {
  it.each([0.25, 0.5, 0.9])('of %f leaves nothing see-through, and the area that was as opaque', (from) => {
    expect(found(drawn(30, 300, glow), 300).result.seeThrough.share).toBeGreaterThan(0.3);
    const { image, after } = mend(30, 300, glow, { kind: 'threshold', from });
    expect(found(image, 300).result.seeThrough.share).toBe(0);
    // Closed form: a disc of the radius where the glow is as opaque as that.
    const radius = 6 + 8 * (1 - from);
    expect(after).toBeCloseTo((Math.PI * radius ** 2) / 900, 2);
  });

  it('leaves edges that are merely smoothed, and all that is solid, byte by byte', () => {
    const disc: Ink = (x, y) => Math.min(1, Math.max(0, (10 - Math.hypot(x - 15, y - 15)) / 0.085 + 0.5));
    for (const by of [
      { kind: 'threshold', from: 0.5 },
      { kind: 'screen', lines: 25, least: fromMm(0.5) },
    ] as const) {
      const [after, before] = [mend(30, 300, disc, by).image.rgba, drawn(30, 300, disc).rgba];
      expect(Buffer.from(after.buffer).equals(Buffer.from(before.buffer))).toBe(true);
    }
  });
});

describe('a screen', () => {
  it.each([
    [150, 0.3],
    [300, 0.3],
    [300, 0.5],
    [300, 0.75],
    [600, 0.4],
  ])('at %i ppi takes as much ink as a tint of %f did', (ppi, tint) => {
    const { image } = mend(30, ppi, () => tint, { kind: 'screen', lines: 20, least: fromMm(0.5) });
    // Ten cells of 1.796 mm across and down, away from the edges, where dots that would be cut are left out.
    const [from, side] = [Math.round((5 * ppi) / INCH), Math.round((17.96 * ppi) / INCH)];
    let inked = 0;
    for (let y = from; y < from + side; y += 1) {
      for (let x = from; x < from + side; x += 1)
        inked += (image.rgba[4 * (y * image.width + x) + 3] ?? 0) / 255;
    }
    expect(Math.abs(inked / side ** 2 - tint)).toBeLessThan(0.01);
  });

  it.each([
    [300, 20],
    [300, 30],
    [600, 25],
  ])(
    'at %i ppi and %i lines has no dot and no hole under the limit, and nothing see-through',
    (ppi, lines) => {
      const ramp: Ink = (x, y) => (Math.max(Math.abs(x - 20), Math.abs(y - 20)) > 18 ? 0 : (x - 2) / 36);
      const { image } = mend(40, ppi, ramp, { kind: 'screen', lines, least: fromMm(0.5) });
      const { result, codes } = found(image, ppi);
      expect(result.seeThrough.share).toBeLessThan(0.005);
      expect(result.specks.widths).toEqual([]);
      expect([result.screens.dots?.widths ?? [], result.screens.holes?.widths ?? []]).toEqual([[], []]);
      expect(codes).not.toContain('screen-dots');
      expect(codes).not.toContain('specks');
    },
  );

  it('lies where the print begins, so that its preview is its print', () => {
    const whole = drawn(20, 300, () => 0.4);
    const part = drawn(10, 300, () => 0.4);
    const pitch = { x: 84.667, y: 84.667 };
    const by = { kind: 'screen', lines: 20, least: fromMm(0.5) } as const;
    const box = { x: 59, y: 59, width: part.width, height: part.height };
    mended(whole, by, box, pitch);
    mended(part, by, { ...box, x: 0, y: 0 }, pitch);
    // Away from edges, where dots are cut.
    for (let y = 20; y < 90; y += 1) {
      for (let x = 20; x < 90; x += 1) {
        expect(whole.rgba[4 * ((y + 59) * whole.width + x + 59) + 3]).toBe(
          part.rgba[4 * (y * part.width + x) + 3],
        );
      }
    }
  });

  it('takes no more lines than leave its dots room', () => {
    // A dot of a third of its cell: 0.5 mm across in cells of 0.767 mm, 33.1 of which are an inch.
    expect(mostLines(fromMm(0.5))).toBe(33);
  });
});
