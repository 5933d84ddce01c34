import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { framesOf, imageOf } from '../../../src/output/print-image';
import { fromInches, fromMm } from '../../../src/units';
import { runOf } from '../runs';

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
            marks: { ticks: false, numbers: true, corners: false },
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
