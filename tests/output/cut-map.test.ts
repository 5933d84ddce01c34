import { describe, expect, it } from 'vitest';
import { cutMap } from '../../app/words/en/cut-map';
import type { MapView } from '../../src/cutting';
import { knifeCuts } from '../../src/cutting';
import { editOrder } from '../../src/editing';
import type { LaidRun } from '../../src/layout';
import { type CutMapOptions, cutMapPages, type Page, type Paper } from '../../src/output/cut-map';
import { fromMm, type LocalDate, toMm } from '../../src/units';
import { edited, NOW, smallBook } from '../editing/book';
import { readBack, usual } from './cut-map/usual';
import { letterF, longRun, runOf } from './runs';

const asUsual = usual().printer;
const pagesOf = (
  run: LaidRun,
  paper: Paper,
  view: MapView,
  more: Partial<Omit<CutMapOptions, 'form'>> & { form?: Partial<CutMapOptions['form']> } = {},
): Page[] => {
  const map = usual();
  return cutMapPages(run, { ...map, view, ...more, form: { ...map.form, paper, ...more.form } });
};

const textsOf = (page: Page): string[] =>
  page.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
const near = (a: number, b: number) => Math.abs(a - b) <= 0.1;

describe.each<[Paper, number, number]>([
  // ISO 216; ANSI/ASME Y14.1: letter (A) is 8.5 x 11 in.
  ['a4', 210, 297],
  ['letter', 215.9, 279.4],
])('on %s', (paper, width, height) => {
  const run = letterF();

  it('the PDF has the exact size of the paper', async () => {
    const [page] = await readBack(pagesOf(run, paper, 'ink-up'));
    expect(page?.width).toBeCloseTo(width, 3);
    expect(page?.height).toBeCloseTo(height, 3);
  });

  it('the rule of 100 mm is 100 mm long, to 0.1 mm', async () => {
    const [page] = await readBack(pagesOf(run, paper, 'ink-up'));
    const rules = page?.paths.filter(
      (path) => near(path.width, 100) && path.height < 0.1 && path.y > height - 40,
    );
    expect(rules).toHaveLength(1);
    const ticks = page?.paths.filter(
      (path) =>
        path.width < 0.1 &&
        path.height > 1 &&
        path.height < 4 &&
        near(path.y + path.height, rules?.[0]?.y ?? 0),
    );
    expect(ticks).toHaveLength(11);
  });

  it('an inch shop has a rule of 4 in, with a tick at each quarter of an inch', async () => {
    const words = cutMap.onPaper({ unit: 'in', locale: 'en-US' });
    const [page] = await readBack(pagesOf(run, paper, 'ink-up', { words, unit: 'in' }));
    // 1 in is 25.4 mm (NIST SP 811).
    const rule = page?.paths.find((path) => near(path.width, 4 * 25.4) && path.y > height - 40);
    const ticks =
      page?.paths.filter(
        ({ y, width: w, height: h }) => w < 0.1 && h > 1 && h < 4 && near(y + h, rule?.y ?? 0),
      ) ?? [];
    const places = ticks.map(({ x }) => x - (rule?.x ?? 0)).toSorted((a, b) => a - b);
    expect(places).toHaveLength(17);
    for (const [tick, at] of places.entries()) expect(at).toBeCloseTo(tick * 6.35, 1);
    expect(page?.texts.map(({ text }) => text).join(' ')).toContain('this rule is 4 in');
  });

  it.each<MapView>(['ink-up', 'on-screen'])(
    'every copy is drawn to the stated scale, to 0.1 mm: %s',
    async (view) => {
      const pages = pagesOf(run, paper, view);
      const scale = pages[0]?.scale ?? 0;
      const [page] = await readBack(pages);
      for (const copy of run.copies) {
        const [w, h] = [toMm(copy.width) / scale, toMm(copy.length) / scale];
        expect(page?.paths.filter((path) => near(path.width, w) && near(path.height, h))).not.toEqual([]);
      }
      expect(textsOf(pages[0] as Page).join(' ')).toContain(`scale 1 : ${scale}`);
    },
  );
});

describe('an F on the film', () => {
  const run = letterF();

  /** Where the stem and the two arms are on the page, by their sizes. */
  async function limbs(view: MapView) {
    const pages = pagesOf(run, 'a4', view);
    const scale = pages[0]?.scale ?? 1;
    const [page] = await readBack(pages);
    const boxes = run.copies.map((copy) => {
      const [w, h] = [toMm(copy.width) / scale, toMm(copy.length) / scale];
      const box = page?.paths.find((path) => near(path.width, w) && near(path.height, h));
      if (!box) throw new Error('a copy is not drawn');
      return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    });
    const [stem, longArm, shortArm] = boxes as [(typeof boxes)[0], (typeof boxes)[0], (typeof boxes)[0]];
    return { stem, longArm, shortArm, page };
  }

  it('reads as an F as seen on screen: arms to the right, the long one on top', async () => {
    const { stem, longArm, shortArm } = await limbs('on-screen');
    expect(longArm.x).toBeGreaterThan(stem.x);
    expect(shortArm.x).toBeGreaterThan(stem.x);
    expect(longArm.y).toBeLessThan(shortArm.y);
  });

  it('is mirrored across the film, and only across, ink up', async () => {
    const { stem, longArm, shortArm } = await limbs('ink-up');
    expect(longArm.x).toBeLessThan(stem.x);
    expect(shortArm.x).toBeLessThan(stem.x);
    expect(longArm.y).toBeLessThan(shortArm.y);
  });

  it('is not mirrored ink up where the printer does not mirror, unless its image is', () => {
    const armsAreRight = (printer: Partial<CutMapOptions['printer']>) => {
      const [page] = pagesOf(run, 'a4', 'ink-up', { printer: { ...asUsual, ...printer } });
      const at = (copy: string) =>
        page?.marks.find((mark) => mark.kind === 'box' && mark.copy === copy) as { x: number; y: number };
      expect(at('F-2').y).toBeLessThan(at('F-3').y);
      const said = textsOf(page as Page)
        .join(' ')
        .includes('not mirrored on this printer');
      return [at('F-2').x > at('F-1').x, said];
    };
    expect(armsAreRight({ inkUp: 'plain' })).toEqual([true, true]);
    expect(armsAreRight({ imageMirrored: true })).toEqual([true, true]);
    expect(armsAreRight({ inkUp: 'plain', imageMirrored: true })).toEqual([false, false]);
  });

  it.each<MapView>(['ink-up', 'on-screen'])('is named by text that is never mirrored: %s', async (view) => {
    const { page } = await limbs(view);
    expect(page?.texts.length).toBeGreaterThan(10);
    for (const { handedness } of page?.texts ?? []) expect(handedness).toBeGreaterThan(0);
  });

  it.each<[MapView, string]>([
    ['ink-up', 'INK UP, AS IT COMES OUT'],
    ['on-screen', 'AS SEEN ON SCREEN'],
  ])('says in large type that it is shown %s', (view, words) => {
    const [page] = pagesOf(run, 'a4', view);
    const mark = page?.marks.find((each) => each.kind === 'text' && each.text === words);
    // 17 pt, in millimetres.
    expect(mark?.kind === 'text' && mark.size).toBeCloseTo(17 * (25.4 / 72), 3);
  });
});

describe('the map of a run', () => {
  it.each([
    ['mm', ' mm'],
    ['in', '\u00a0in'],
  ] as const)(
    'gives every knife line its distance from the cut before and from the start, in %s large',
    (unit, own) => {
      const run = longRun(30);
      const words = cutMap.onPaper({ unit, locale: 'en-GB' });
      const marks = pagesOf(run, 'a4', 'ink-up', { words }).flatMap((page) => page.marks);
      const texts = marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
      const largest = marks.filter(
        (mark) => mark.kind === 'text' && mark.size > 4.2 && mark.anchor === 'end',
      );
      expect(largest.filter((mark) => mark.kind === 'text' && mark.text.endsWith(own))).not.toEqual([]);
      expect(
        largest.filter(
          (mark) => mark.kind === 'text' && /\s(mm|in)$/.test(mark.text) && !mark.text.endsWith(own),
        ),
      ).toEqual([]);
      const cuts = knifeCuts(run);
      expect(cuts.length).toBeGreaterThan(5);
      for (const { fromStart: at, fromPrevious } of cuts) {
        expect(texts).toContain(words.distance(fromPrevious));
        expect(texts).toContain(words.otherRuler(fromPrevious));
        expect(texts).toContain(words.fromStart(at));
        expect(texts).toContain(words.otherRuler(at));
      }
    },
  );

  it('names every copy once in the lists of its pages, and numbers the pages', () => {
    const run = longRun(40);
    const pages = pagesOf(run, 'letter', 'ink-up');
    expect(pages.length).toBeGreaterThan(1);
    const texts = pages.flatMap(textsOf);
    for (const { order, number } of run.copies) expect(texts).toContain(`${order.code} ${number}`);
    pages.forEach((page, index) => {
      expect(textsOf(page).join(' ')).toContain(`page ${index + 1} of ${pages.length}`);
    });
  });

  it('names each order with its due day above its transfers, and the numbers of their copies', () => {
    const run = longRun(4);
    const { book, order } = smallBook();
    const { [order]: own } = edited(book, (draft) =>
      editOrder(draft, order, { due: '2026-12-04' as LocalDate }),
    ).order;
    const view = { ...run.view, order: { HB: own } } as LaidRun['view'];
    const [page] = pagesOf({ ...run, view }, 'a4', 'ink-up');
    const texts = textsOf(page as Page);
    expect(texts.join('|')).toMatch(/\|HB, due Fri,? 4 Dec\|/);
    expect(texts).toContain('CC');
    expect(texts.filter((each) => /no\. 1–4$/.test(each))).toHaveLength(3);
  });

  it('marks the strip that two pages share where no knife line parts them', () => {
    const pages = pagesOf(longRun(40, null), 'a4', 'ink-up');
    const texts = pages.map((page) => textsOf(page).join(' '));
    expect(texts[0]).toMatch(/goes on on page 2, strip A is on both/);
    expect(texts[1]).toMatch(/from page 1, strip A is on both/);
  });

  it('draws nothing off the paper', () => {
    for (const run of [letterF(), longRun(25), longRun(25, null)]) {
      for (const page of pagesOf(run, 'a4', 'ink-up')) {
        for (const mark of page.marks) {
          if (mark.kind === 'picture' || mark.kind === 'ring') continue;
          const xs = mark.kind === 'line' ? [mark.x1, mark.x2] : [mark.x];
          const ys = mark.kind === 'line' ? [mark.y1, mark.y2] : [mark.y];
          for (const x of xs) expect(x >= 0 && x <= page.width).toBe(true);
          for (const y of ys) expect(y >= 0 && y <= page.height).toBe(true);
        }
      }
    }
  });

  it.each([
    ['across the paper', { landscape: true, large: false }],
    ['with large figures', { landscape: false, large: true }],
    ['both', { landscape: true, large: true }],
  ])('keeps its rule and its scale %s', async (_, form) => {
    const run = letterF();
    const pages = pagesOf(run, 'a4', 'ink-up', { form });
    const [first] = pages;
    const [page] = await readBack(pages);
    const sizes = form.landscape ? [297, 210] : [210, 297];
    expect([page?.width, page?.height].map((side) => Math.round(10 * (side ?? 0)) / 10)).toEqual(sizes);
    expect(
      page?.paths.filter(
        (path) => near(path.width, 100) && path.height < 0.6 && path.y > (sizes[1] ?? 0) - 45,
      ),
    ).toHaveLength(1);
    for (const copy of run.copies) {
      const [w, h] = [toMm(copy.width) / (first?.scale ?? 1), toMm(copy.length) / (first?.scale ?? 1)];
      expect(page?.paths.some((path) => near(path.width, w) && near(path.height, h))).toBe(true);
    }
  });

  it('gives each span a page of its own where that is wanted', () => {
    const run = longRun(20);
    const pages = pagesOf(run, 'a4', 'ink-up', { form: { perSpan: true } });
    expect(pages).toHaveLength(knifeCuts(run).length);
  });

  it('says for each span how many copies of each order the pile must hold', () => {
    const texts = pagesOf(longRun(4), 'a4', 'ink-up').flatMap(textsOf);
    expect(texts).toContain('4 × CC · 4 × HB · 4 × OF');
  });

  it('hatches what was spoiled and says so, on the film and within the paper', () => {
    const spoiled = { from: fromMm(0), to: fromMm(60), copies: [], at: NOW };
    const run = {
      ...runOf([{ code: 'HB', number: 1, x: 10, y: 70, width: 100, length: 60 }]),
      spoiled: [spoiled],
    };
    const [page] = pagesOf(run, 'a4', 'ink-up') as [Page];
    expect(textsOf(page)).toContain('spoiled');
    const hatch = page.marks.filter(
      (mark) => mark.kind === 'line' && mark.tone === 'quiet' && mark.x1 !== mark.x2 && mark.y1 !== mark.y2,
    );
    expect(hatch.length).toBeGreaterThan(10);
    for (const mark of hatch) {
      if (mark.kind !== 'line') continue;
      expect(Math.abs(mark.x2 - mark.x1)).toBeCloseTo(Math.abs(mark.y2 - mark.y1), 6);
      expect(Math.min(mark.x1, mark.x2)).toBeGreaterThan(0);
      expect(Math.max(mark.x1, mark.x2)).toBeLessThan(page.width);
    }
  });

  it('lists garments behind the film', () => {
    const pages = pagesOf(letterF(), 'a4', 'ink-up', { garments: ['F  T-shirt, navy, M × 4'] });
    expect(textsOf(pages.at(-1) as Page)).toContain('F  T-shirt, navy, M × 4');
  });

  it('carries the cautions and what comes before anything on it', () => {
    const texts = pagesOf(letterF(), 'a4', 'ink-up').map((page) => textsOf(page).join(' '));
    for (const text of texts) {
      expect(text).toContain('Blade in the slot');
      expect(text).toMatch(/data sheets, local codes/);
    }
  });

  it('says so where nothing lies on the film, and where no cuts can part the layout', () => {
    const [empty] = pagesOf(runOf([]), 'a4', 'ink-up');
    expect(textsOf(empty as Page).join(' ')).toContain('nothing to cut');
    const uncut = runOf([{ code: 'HB', number: 1, x: 10, y: 10, width: 100, length: 600 }]);
    const [warned] = pagesOf(uncut, 'a4', 'ink-up');
    expect(textsOf(warned as Page).join(' ')).toMatch(/No straight cuts can part/);
  });
});
