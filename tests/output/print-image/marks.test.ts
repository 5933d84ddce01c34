import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { framesOf, imageOf } from '../../../src/output/print-image';
import { fromInches, fromMm } from '../../../src/units';
import { runOf } from '../runs';

describe('the names of a copy', () => {
  const side = fc.integer({ min: 8, max: 90 });
  it('lie on film alone, upright as the image is, or are counted as having no room', () => {
    fc.assert(
      fc.property(
        fc.array(side, { minLength: 1, maxLength: 12 }),
        side,
        fc.integer({ min: 2, max: 30 }),
        fc.boolean(),
        fc.constantFrom('lead' as const, 'tail' as const),
        (widths, length, gap, mirrored, firstEnd) => {
          const boxes = widths.map((width, index) => ({
            code: 'AB',
            number: index + 1,
            x: 5 + (index % 3) * (90 + gap),
            y: 10 + (length + gap) * Math.floor(index / 3),
            width,
            length,
          }));
          const run = runOf(boxes, { spanMax: fromMm(250) });
          const [frame] = framesOf(run, { kind: 'run' });
          const marks = { ticks: false, numbers: false, names: (order: string) => order, corners: false };
          const choice = { ppi: 300, mirrored, firstEnd, feed: 1, marks };
          const image = imageOf(run, frame ?? expect.fail(), choice);
          expect(image.marks.length + image.unnumbered).toBe(boxes.length);
          const clear = Math.floor((fromMm(0.5) / fromInches(1)) * 300) - 1;
          for (const [index, mark] of image.marks.entries()) {
            // Four millimetres tall, which every speck limit holds, and as wide as its signs.
            expect(mark.upright.height).toBeGreaterThanOrEqual(47);
            expect(mark.orientation).toMatchObject({ mirrored, half: firstEnd === 'tail' });
            expect(Math.min(mark.x, mark.y)).toBeGreaterThanOrEqual(0);
            expect(mark.x + mark.width).toBeLessThanOrEqual(image.width);
            expect(mark.y + mark.height).toBeLessThanOrEqual(image.height);
            for (const other of [...image.copies, ...image.marks.slice(0, index)]) {
              const isApart =
                mark.x >= other.x + other.width + clear ||
                other.x >= mark.x + mark.width + clear ||
                mark.y >= other.y + other.height + clear ||
                other.y >= mark.y + mark.height + clear;
              expect(isApart, `${mark.text} at ${mark.x}, ${mark.y}`).toBe(true);
            }
          }
        },
      ),
      { numRuns: 80 },
    );
  });

  it('are as long as there is room for: names, the transfer alone, a code', () => {
    const textsBeside = (width: number) => {
      const run = runOf([{ code: 'AB', number: 7, x: 5, y: 10, width, length: 40 }], {});
      const [frame] = framesOf(run, { kind: 'run' });
      const marks = { ticks: false, numbers: false, names: (order: string) => order, corners: false };
      const choice = { ppi: 300, mirrored: false, firstEnd: 'lead' as const, feed: 1, marks };
      return imageOf(run, frame ?? expect.fail(), choice).marks.map(({ text }) => text);
    };
    const [longest] = textsBeside(200);
    expect(longest).toMatch(/, .* 7$/);
  });
});

describe('a number in the gap', () => {
  it('lies across no knife line, so that none is cut in half', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 3, max: 12 }),
        fc.integer({ min: 20, max: 120 }),
        (rows, gap, tall) => {
          const boxes = Array.from({ length: rows * 4 }, (_, index) => ({
            code: 'AB',
            number: index + 1,
            x: 5 + 75 * (index % 4),
            y: 10 + (tall + gap) * Math.floor(index / 4),
            width: 70 - gap,
            length: tall,
          }));
          const run = runOf(boxes, { spanMax: fromMm(250) });
          const [frame] = framesOf(run, { kind: 'run' });
          const image = imageOf(run, frame ?? expect.fail(), {
            ppi: 300,
            mirrored: false,
            firstEnd: 'lead',
            feed: 1,
            marks: { ticks: false, numbers: true, names: null, corners: false },
          });
          for (const { to } of run.spans ?? []) {
            const line = (to / fromInches(1)) * 300;
            for (const { text, y, height } of image.marks)
              if (y + 1 < line && y + height - 1 > line) expect.fail(`${text} lies across a knife line`);
          }
        },
      ),
      { numRuns: 60 },
    );
  });
});
