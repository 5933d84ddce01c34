import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutOrder, knifeCuts } from '../../../src/cutting';
import type { LaidRun } from '../../../src/layout';
import { cutMapPages } from '../../../src/output/cut-map';
import { framesOf, imageOf } from '../../../src/output/print-image';
import { fromInches, um } from '../../../src/units';
import { fed, longRun } from '../runs';
import { readBack, usual } from './usual';

async function textsOf(run: LaidRun, unit: 'mm' | 'in', large: boolean): Promise<string[]> {
  const map = usual(unit);
  const read = await readBack(cutMapPages(run, { ...map, form: { ...map.form, large } }));
  return read.flatMap(({ texts }) => texts.map(({ text }) => text));
}

/** A text as it is read back from a page, on which every space is alike. */
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('distances along the film', () => {
  it('are those of a ruler on the printed film, in drawing, legend, table and Cut room alike', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 300, max: 900 }),
        fc.double({ min: 0.95, max: 1.05, noNaN: true }),
        fc.constantFrom('mm' as const, 'in' as const),
        fc.boolean(),
        async (rows, spanMax, stretch, unit, large) => {
          const run = fed(longRun(rows, spanMax), stretch);
          const { words } = usual(unit);
          const texts = await textsOf(run, unit, large);
          const ruler = (planned: number) => um(planned * stretch);
          const spans = run.spans ?? [{ from: um(0), to: run.lengthUsed }];
          const cuts = knifeCuts(run);
          const order = cutOrder(run);
          spans.forEach(({ from, to }, index) => {
            const since = um(ruler(to) - ruler(from));
            expect(texts).toContain(plain(words.distance(since)));
            expect(texts).toContain(plain(words.otherRuler(since)));
            expect(texts).toContain(plain(words.fromStart(ruler(to))));
            expect(cuts[index]).toMatchObject({ fromPrevious: since, fromStart: ruler(to) });
            for (const step of order[index]?.steps ?? [])
              if (step.kind === 'cut' && step.axis === 'across')
                expect(step.fromEdge).toBe(ruler(step.at - step.piece.y));
          });
          expect(cuts).toHaveLength(spans.length);
        },
      ),
      { numRuns: 15 },
    );
  });

  it('are as planned where the image makes up for the feed, and the sheet says which holds', async () => {
    const planned = longRun(8);
    const stretched = (await textsOf(fed(planned, 1.01), 'mm', false)).join(' ');
    expect(stretched).toContain('comes out 1% longer');
    const corrected = (await textsOf(fed(planned, 1, 1.01), 'mm', false)).join(' ');
    expect(corrected).toContain('The image is written 0.99% shorter');
    expect((await textsOf(planned, 'mm', false)).join(' ')).not.toMatch(/longer|shorter/);
  });
});

describe('an image that makes up for the feed', () => {
  it('puts every copy, once fed, where the map without a feed has it, within half a pixel', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.95, max: 1.05, noNaN: true }),
        fc.constantFrom(150, 300),
        (feed, ppi) => {
          const run = longRun(9);
          const [frame] = framesOf(run, { kind: 'run' });
          const image = imageOf(run, frame ?? expect.fail(), {
            ppi,
            feed,
            mirrored: false,
            firstEnd: 'lead',
            marks: { ticks: true, numbers: false, names: null, corners: false },
          });
          const pixel = (fromInches(1) / ppi) * feed;
          const within = (pixels: number, planned: number) =>
            expect(Math.abs(pixels * pixel - planned)).toBeLessThanOrEqual(pixel / 2 + 1);
          within(image.height, run.lengthUsed);
          expect(image.film.length).toBe(um(run.lengthUsed / feed));
          for (const copy of run.copies) {
            const box = image.copies.find(({ copy: id }) => id === copy.id) ?? expect.fail();
            within(box.y, copy.y);
            within(box.height, copy.length);
          }
        },
      ),
      { numRuns: 30 },
    );
  });
});
