import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LaidRun } from '../../../src/layout';
import { type CutMapOptions, cutMapPages } from '../../../src/output/cut-map';
import type { ReadPage } from '../read-pdf';
import { onSheets, runOf } from '../runs';
import { readBack, usual } from './usual';

async function readMap(
  run: LaidRun,
  form: CutMapOptions['form'],
  unit: 'mm' | 'in',
  view: CutMapOptions['view'] = 'ink-up',
): Promise<ReadPage[]> {
  return readBack(cutMapPages(run, { ...usual(unit), form, view }));
}

type Read = ReadPage['texts'][number];

/**
 * The texts that name a copy: by its code and number, or these two one under the other. Of texts side by side the reader makes one with
 * a blank between them where they are nearer than 0.6 em.
 */
function namesOf({ texts }: ReadPage, code: string, number: number): Read[][] {
  const name = new RegExp(`(^|, | )${code} ${number}(,| |$)`);
  return texts.flatMap((text, index): Read[][] => {
    const next = texts[index + 1];
    if (name.test(text.text)) return [[text]];
    return text.text === code && next?.text === String(number) ? [[text, next]] : [];
  });
}

type Box = Read['box'];
const overlap = (a: Box, b: Box) =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

/** Points along a straight line, close together: none may lie on a name. */
const struck = (box: Box, { x1, y1, x2, y2 }: ReadPage['lines'][number]): boolean => {
  const steps = Math.ceil(Math.hypot(x2 - x1, y2 - y1) / 0.1);
  return Array.from({ length: steps + 1 }, (_, step) => ({
    x: x1 + ((x2 - x1) * step) / Math.max(1, steps),
    y: y1 + ((y2 - y1) * step) / Math.max(1, steps),
  })).some(({ x, y }) => x > box.x && x < box.x + box.width && y > box.y && y < box.y + box.height);
};

function expectNamed(pages: readonly ReadPage[], run: LaidRun): void {
  for (const { order, number } of run.copies) {
    const found = pages.flatMap((page) => namesOf(page, order.code, number).map((name) => ({ page, name })));
    expect(found, `${order.code} ${number}`).toHaveLength(1);
    for (const { page, name } of found)
      for (const text of name) {
        const { box } = text;
        expect(box.x >= 0 && box.x + box.width <= page.width).toBe(true);
        expect(box.y >= 0 && box.y + box.height <= page.height).toBe(true);
        for (const other of page.texts)
          if (other !== text && overlap(box, other.box)) expect.fail(`${text.text} over ${other.text}`);
        for (const each of page.lines) if (struck(box, each)) expect.fail(`${text.text} is struck through`);
      }
  }
}

const forms = fc.record({
  paper: fc.constantFrom('a4' as const, 'letter' as const),
  landscape: fc.boolean(),
  large: fc.boolean(),
  perSpan: fc.boolean(),
});

/** Rows of copies of any size across a film, one row below the other, each row of an order. */
const rowsOn = (width: number, sheet: number | null) =>
  fc
    .array(
      fc.record({
        code: fc.constantFrom('QX', 'RZ', 'WVK4'),
        size: fc.constantFrom([8, 6], [25, 12], [40, 30], [100, 80], [190, 150], [12, 60]),
        count: fc.integer({ min: 1, max: 12 }),
      }),
      { minLength: 1, maxLength: 8 },
    )
    .map((rows) => {
      const numbers = new Map<string, number>();
      let y = 10;
      return rows.flatMap(({ code, size: [wide = 0, long = 0], count }) => {
        const fit = Math.max(1, Math.min(count, Math.floor((width - 10) / (wide + 5))));
        if (sheet !== null && (y % sheet) + long + 10 > sheet) y = Math.ceil(y / sheet) * sheet + 10;
        const row = Array.from({ length: fit }, (_, index) => {
          const number = (numbers.get(code) ?? 0) + 1;
          numbers.set(code, number);
          return { code, number, x: 5 + index * (wide + 5), y, width: wide, length: long };
        });
        y += long + 5;
        return row;
      });
    });

/** Pairs of right-angled triangles, one below the other, each of a pair within the box of the other, 7 mm apart. */
function facingTriangles(sides: readonly number[]): LaidRun {
  let y = 10;
  const boxes = sides.flatMap((side, at) => {
    const pair = [0, 10].map((by, which) => ({
      code: 'QX',
      number: 2 * at + which + 1,
      x: 10 + by,
      y: y + by,
      width: side,
      length: side,
    }));
    y += side + 15;
    return pair;
  });
  const run = runOf(boxes);
  return {
    ...run,
    copies: run.copies.map((copy, at) => {
      const [near, far] = [0, copy.width];
      const corners = at % 2 === 0 ? [near, near, far, near, near, far] : [far, near, far, far, near, far];
      return { ...copy, outline: [Float64Array.from(corners)] };
    }),
  };
}

describe('every copy', () => {
  it('is named once on the map with large figures, the smallest too', async () => {
    const large = Array.from({ length: 4 }, (_, index) => ({
      code: 'AB',
      number: index + 1,
      x: 10,
      y: 10 + 305 * index,
      width: 280,
      length: 300,
    }));
    const small = Array.from({ length: 16 }, (_, index) => ({
      code: 'CD',
      number: index + 1,
      x: 10 + 30 * (index % 8),
      y: 1235 + 17 * Math.floor(index / 8),
      width: 25,
      length: 12,
    }));
    const run = runOf([...large, ...small]);
    for (const unit of ['mm', 'in'] as const)
      expectNamed(
        await readMap(run, { paper: 'a4', landscape: false, large: true, perSpan: false }, unit),
        run,
      );
  });

  it('is named once on the map of any run, on the page and on top of nothing', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.oneof(
          rowsOn(330, null).map((boxes) => runOf(boxes)),
          rowsOn(330, null).map((boxes) => runOf(boxes, { spanMax: null })),
          rowsOn(210, 297).map(onSheets),
        ),
        forms,
        fc.constantFrom('mm' as const, 'in' as const),
        fc.constantFrom('ink-up' as const, 'on-screen' as const),
        async (run, form, unit, view) => expectNamed(await readMap(run, form, unit, view), run),
      ),
      { numRuns: 30 },
    );
  });

  it('is named within its own outline where boxes lie over each other', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.constantFrom(60, 90, 140), { minLength: 1, maxLength: 6 }),
        forms,
        fc.constantFrom('ink-up' as const, 'on-screen' as const),
        async (sides, form, view) => {
          const run = facingTriangles(sides);
          const pages = await readMap(run, form, 'mm', view);
          expectNamed(pages, run);
        },
      ),
      { numRuns: 12 },
    );
  });
});
