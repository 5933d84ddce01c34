import { describe, expect, it } from 'vitest';
import type { LaidRun } from '../../../src/layout';
import { cutMapPages, type Page, type TextMark } from '../../../src/output/cut-map';
import { cutMapPdf } from '../../../src/output/cut-map/pdf';
import { alternatives } from '../alternatives';
import { drawText, fonts } from '../fonts';
import { readPdf } from '../read-pdf';
import { runOf } from '../runs';
import { usual, written } from './usual';

/** A copy each of orders with these names: wide ones, named along the page, and narrow ones, named upwards. */
const runNamed = (names: readonly string[]): LaidRun =>
  runOf(
    names.map((code, index) => ({
      code,
      number: 1,
      x: 10,
      y: 10 + 95 * index,
      ...(index % 2 === 0 ? { width: 200, length: 90 } : { width: 16, length: 90 }),
    })),
  );

const pagesOf = (run: LaidRun): Page[] => cutMapPages(run, usual());

const unspaced = (text: string) => text.replaceAll(' ', '');

/** All texts of the pages without their spaces, whatever fonts their letters are of. */
const reads = async (pdf: Uint8Array): Promise<string> =>
  unspaced((await readPdf(pdf)).flatMap(({ texts }) => texts.map(({ text }) => text)).join(''));

const saying = (pages: readonly Page[], part: string): TextMark[] =>
  pages
    .flatMap(({ marks }) => marks)
    .filter((mark) => mark.kind === 'text')
    .filter(({ text }) => text.includes(part));

describe('the name of an order on the PDF', () => {
  it.each([
    ['Greek', 'Ξύλινο άλογο'],
    ['Greek with breathings', 'Ἀθῆναι'],
    ['Russian', 'Красная лиса'],
    ['Ukrainian', 'Їжак і ґава'],
    ['Polish', 'Żółta łódź'],
  ])('in %s is text that can be found', async (_, name) => {
    const pdf = await written(pagesOf(runNamed([name])));
    expect(await reads(pdf)).toContain(unspaced(name));
    expect(await alternatives(pdf)).toEqual([]);
  });

  it.each([
    ['Chinese', '红狐'],
    ['Japanese', 'きつね'],
    ['Hebrew', 'שועל אדום'],
    ['Arabic', 'ثعلب أحمر'],
    ['a picture of its own', '🦊 Fox'],
    ['letters with marks that are no letters of their own', 'Q̈ueen'],
  ])('in %s is a picture at its place that says what it is of', async (_, name) => {
    const pages = pagesOf(runNamed([name, name]));
    // What has no room for all of it has at least its beginning.
    const marks = saying(pages, [...name].slice(0, 2).join(''));
    expect(marks.some(({ upright }) => upright)).toBe(true);
    const pdf = await written(pages);
    expect((await alternatives(pdf)).toSorted()).toEqual(marks.map(({ text }) => text).toSorted());
    expect(await reads(pdf)).not.toContain('?');
    const images = (await readPdf(pdf)).flatMap((page) => page.images);
    for (const mark of marks) {
      const drawn = await drawText(mark);
      const at = { start: 0, middle: 0.5, end: 1 }[mark.anchor] * drawn.advance;
      const box = mark.upright
        ? {
            x: mark.x - drawn.ascent,
            y: mark.y + at - drawn.left - drawn.width,
            width: drawn.height,
            height: drawn.width,
          }
        : { x: mark.x - at + drawn.left, y: mark.y - drawn.ascent, width: drawn.width, height: drawn.height };
      const there = images.filter(
        ({ x, y, width, height }) =>
          Math.abs(x - box.x) +
            Math.abs(y - box.y) +
            Math.abs(width - box.width) +
            Math.abs(height - box.height) <
          0.05,
      );
      expect(there, mark.text).toHaveLength(1);
    }
  });

  it('is one picture in the file however often it is shown alike', async () => {
    const run = runOf(
      Array.from({ length: 6 }, (_, index) => ({
        code: '红狐',
        number: 1,
        x: 10,
        y: 10 + 60 * index,
        width: 100,
        length: 50,
      })),
    );
    const pages = pagesOf(run);
    const kinds = new Set(
      saying(pages, '红狐').map(({ text, size, weight, tone }) => `${text} ${size} ${weight} ${tone}`),
    );
    let drawn = 0;
    await cutMapPdf(
      pages,
      {
        fonts,
        drawText: (mark) => {
          drawn += 1;
          return drawText(mark);
        },
      },
      { title: 'map', language: 'en', made: usual().date },
    );
    expect(drawn).toBe(kinds.size);
  });
});
