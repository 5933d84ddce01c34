import { describe, expect, it } from 'vitest';
import { type Limits, trimBox } from '../../src/artwork';
import { startCheck } from '../../src/artwork/check';
import { mended } from '../../src/artwork/mend';
import { fromMm, type Micrometres, um } from '../../src/units';
import { CLEAR, paint, RED, smoothEdge } from './pixels';

const LIMIT = fromMm(0.5);
const limits: Limits = { stroke: LIMIT, opening: fromMm(0.8), choke: fromMm(0.1), white: fromMm(0) };
const angles = [0, 0.3, Math.PI / 4, 1.2, Math.PI / 2];

/** A square of so many millimetres at a resolution, thickened, and checked again at the same scale. */
function thickened(side: number, ppi: number, colour: Parameters<typeof paint>[2]) {
  const n = Math.round((side * ppi) / 25.4);
  const pitch = { x: 25_400 / ppi, y: 25_400 / ppi };
  const rgba = paint(n, n, colour) as Uint8ClampedArray<ArrayBuffer>;
  const before = rgba.slice();
  const box = trimBox(rgba, n, n) ?? expect.fail('blank');
  const after = mended({ rgba, width: n, height: n }, { kind: 'thicken', to: LIMIT }, box, pitch);
  const size = { width: um(after.width * pitch.x), height: um(after.height * pitch.y) };
  const check = startCheck(after, size as Record<'width' | 'height', Micrometres>, limits);
  check.add(after.rgba, 0, after.height);
  let ink = 0;
  for (let at = 3; at < after.rgba.length; at += 4) ink += (after.rgba[at] ?? 0) / 255;
  const area = ink * (pitch.x / 1000) ** 2;
  return { n, before, after, found: check.finish(() => undefined), area };
}

/** How far the edge of a bar through the middle of a square is at least, in pixels. */
function bar(n: number, length: number, width: number, angle: number) {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return (x: number, y: number) => {
    const dx = x - n / 2;
    const dy = y - n / 2;
    const [along, across] = [dx * cos + dy * sin, dy * cos - dx * sin];
    return Math.max(Math.abs(along) - length / 2, Math.abs(across) - width / 2);
  };
}

describe.each([150, 300, 600])('thickening strokes at %i pixels an inch', (ppi) => {
  const mm = ppi / 25.4;
  const n = Math.round(16 * mm);

  it.each(angles)(
    'leaves none that is too thin, and is no thicker than was asked for, turned by %f',
    (angle) => {
      for (const width of [0.2, 0.3, 0.4]) {
        const { found, area } = thickened(16, ppi, smoothEdge(bar(n, 12 * mm, width * mm, angle)));
        expect(found.strokes.widths).toEqual([]);
        // 12 mm x 0.5 mm with round ends, within two pixels on its width, since a middle line is up to two pixels wide.
        expect(Math.abs(area - 12 * 0.5 - 0.1) / 12).toBeLessThan(2 / mm);
        expect(area).toBeGreaterThan(12 * 0.5 - 0.2);
      }
    },
  );

  it('leaves what is thick enough, and colours what it adds as the stroke is', () => {
    const thin = bar(n, 12 * mm, 0.25 * mm, 0);
    const { before, after } = thickened(16, ppi, (x, y) => {
      if (Math.hypot(x - 4 * mm, y - 3 * mm) < 2 * mm) return [10, 90, 40, 255];
      return thin(x, y) < 0 ? RED : CLEAR;
    });
    expect(after.width).toBe(n);
    const reds: number[] = [];
    const asked: number[] = [];
    for (let at = 0; at < before.length; at += 4) {
      const wasInk = before[at + 3] === 255;
      if (!wasInk && after.rgba[at + 3] === 0) continue;
      reds.push(after.rgba[at] ?? 0);
      asked.push(wasInk ? (before[at] ?? 0) : RED[0]);
    }
    expect(Buffer.from(reds).equals(Buffer.from(asked))).toBe(true);
  });
});

describe('thickening', () => {
  it('makes room for a stroke along the edge of the image', () => {
    const { n, after, found } = thickened(10, 300, (_, y) => (y < 2 ? RED : CLEAR));
    expect(after.width).toBeGreaterThan(n);
    expect(found.strokes.widths).toEqual([]);
  });

  it('leaves specks: they are taken off, or made larger in the artwork', () => {
    const { before, after } = thickened(10, 300, (x, y) =>
      Math.hypot(x - 20, y - 20) < 2 || y > 60 ? RED : CLEAR,
    );
    expect(Buffer.from(after.rgba).equals(Buffer.from(before))).toBe(true);
  });
});
