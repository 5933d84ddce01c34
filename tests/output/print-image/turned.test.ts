import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { turnedTo } from '../../../src/layout';
import { contains, type Ring } from '../../../src/outlines';
import {
  type CopyBox,
  composeRows,
  framesOf,
  imageOf,
  lyingTile,
  type PrintImage,
} from '../../../src/output/print-image';
import { type Angle, angleOf, fromInches, fromMm } from '../../../src/units';
import { ring } from '../../nesting/outlines';
import { runOf } from '../runs';
import { type Picture, paint, quarter } from './reference';

const PPI = 150;
/** Of a pixel, micrometres. */
const PIXEL = fromInches(1) / PPI;

/** A wedge with a foot: no turn of it is like another. In millimetres it touches all sides of 24 x 16. */
const WEDGE = [ring([0, 0], [24, 0], [24, 4], [6, 16], [0, 10])];

interface Lying {
  readonly rings: readonly Ring[];
  readonly x: number;
  readonly y: number;
}

/** The image of one copy at an angle, in the middle of a film. */
function imageAt(angle: Angle, feed = 1): { image: PrintImage; rings: readonly Ring[] } {
  const run = runOf([{ code: 'A', number: 1, x: 30, y: 20, width: 24, length: 16 }], { spanMax: null });
  const [upright] = run.copies;
  if (!upright) throw new Error('no copy');
  const copy = turnedTo({ ...upright, ink: WEDGE, byOutline: true }, angle);
  const turned = { ...run, copies: [copy], lengthUsed: fromMm(80) };
  const [frame] = framesOf(turned, { kind: 'run' });
  if (!frame) throw new Error('no frame');
  const marks = { ticks: false, numbers: false, names: null, corners: false };
  const image = imageOf(turned, frame, { ppi: PPI, mirrored: false, firstEnd: 'lead', feed, marks });
  return { image, rings: copy.outline ?? [] };
}

/** The wedge as artwork, opaque within its outline, one colour across and another down. */
function artwork({ upright: { width, height } }: CopyBox): Picture {
  const [perX, perY] = [24_000 / width, 16_000 / height];
  return paint(width, height, (x, y) =>
    contains({ rings: WEDGE, x: 0, y: 0 }, (x + 0.5) * perX, (y + 0.5) * perY)
      ? [Math.round((255 * x) / width), Math.round((255 * y) / height), 80, 255]
      : [0, 0, 0, 0],
  );
}

/** The whole image, as it is written. */
function composed(image: PrintImage, pictureOf: (box: CopyBox) => Picture): Picture {
  const { width, height } = image;
  const strip = new Uint32Array(width * height);
  composeRows(strip, width, 0, image.copies, (box, first, count) => {
    const { data } = pictureOf(box);
    const tile = lyingTile(new Uint32Array(Uint8Array.from(data).buffer), box);
    expect([tile.width, tile.pixels.length]).toEqual([box.width, box.width * box.height]);
    return tile.pixels.subarray(first * box.width, (first + count) * box.width);
  });
  return { width, height, data: new Uint8Array(strip.buffer) };
}

/** How far a point is from the line of an outline. */
function fromLine({ rings, x, y }: Lying, point: { readonly x: number; readonly y: number }): number {
  const [line = []] = rings;
  const corners = Array.from({ length: line.length / 2 }, (_, at) => ({
    x: (line[2 * at] ?? 0) + x,
    y: (line[2 * at + 1] ?? 0) + y,
  }));
  return Math.min(
    ...corners.map((to, at) => {
      const from = corners.at(at - 1) ?? to;
      const [across, along] = [to.x - from.x, to.y - from.y];
      const share = ((point.x - from.x) * across + (point.y - from.y) * along) / (across ** 2 + along ** 2);
      const near = Math.max(0, Math.min(1, share));
      return Math.hypot(point.x - from.x - near * across, point.y - from.y - near * along);
    }),
  );
}

const alphaAt = ({ width, data }: Picture, x: number, y: number): number =>
  data[4 * (y * width + x) + 3] ?? 0;

describe('a copy in the image', () => {
  it.each([0, 1, 2, 3])('turned by %i quarters is its artwork turned, pixel by pixel', (quarters) => {
    const { image } = imageAt(angleOf(90 * quarters));
    const [box] = image.copies;
    if (!box) throw new Error('no box');
    const whole = composed(image, artwork);
    const turned = Array.from({ length: quarters }).reduce<Picture>(
      (picture) => quarter(picture),
      artwork(box),
    );
    expect([turned.width, turned.height]).toEqual([box.width, box.height]);
    const cut = paint(box.width, box.height, (x, y) => {
      const at = 4 * ((box.y + y) * whole.width + box.x + x);
      return [whole.data[at] ?? 0, whole.data[at + 1] ?? 0, whole.data[at + 2] ?? 0, whole.data[at + 3] ?? 0];
    });
    expect(cut.data).toEqual(turned.data);
  });

  it('turned to any angle prints within a pixel of its outline where that lies, however the film is fed', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 3599 }), fc.constantFrom(1, 0.97, 1.02), (tenths, feed) => {
        const { image, rings } = imageAt(angleOf(tenths / 10), feed);
        const whole = composed(image, artwork);
        const [box] = image.copies;
        // Its place is rounded to a pixel, as that of any copy.
        const lying = { rings, x: (box?.x ?? 0) * PIXEL, y: (box?.y ?? 0) * PIXEL * feed };
        /** Far from the box of a copy there is nothing of its outline. */
        const isNear = (x: number, y: number) =>
          box !== undefined &&
          x >= box.x - 2 &&
          x < box.x + box.width + 2 &&
          y >= box.y - 2 &&
          y < box.y + box.height + 2;
        let inked = 0;
        for (let y = 0; y < whole.height; y += 1) {
          for (let x = 0; x < whole.width; x += 1) {
            const isInk = alphaAt(whole, x, y) >= 128;
            if (isInk) inked += 1;
            const middle = { x: (x + 0.5) * PIXEL, y: (y + 0.5) * PIXEL * feed };
            if (isInk !== (isNear(x, y) && contains(lying, middle.x, middle.y)))
              expect(fromLine(lying, middle)).toBeLessThanOrEqual(PIXEL);
          }
        }
        expect(inked).toBeGreaterThan(1000);
      }),
      { numRuns: 15 },
    );
  });

  it('keeps colours whole between quarter turns: none is darker or brighter than its artwork', () => {
    const { image } = imageAt(angleOf(33));
    const whole = composed(image, ({ upright: { width, height } }) =>
      paint(width, height, (x) => [200, 100, 50, x % 2 === 0 ? 255 : 40]),
    );
    for (let at = 0; at < whole.data.length; at += 4) {
      if ((whole.data[at + 3] ?? 0) < 16) continue;
      expect(Math.abs((whole.data[at] ?? 0) - 200)).toBeLessThanOrEqual(1);
      expect(Math.abs((whole.data[at + 1] ?? 0) - 100)).toBeLessThanOrEqual(1);
    }
  });
});
