import { type ReadPage, readPdf } from '../tests/output/read-pdf';
import { expect, layOut, openShop, pasteTable, test } from './shop';

/** Thirty orders, one of them of sixty transfers and one of twenty copies of a single one. */
const ROWS = [
  ...Array.from({ length: 28 }, (_, order) => `Order ${order + 10},front ${order + 10},60,40,2`),
  ...Array.from({ length: 60 }, (_, transfer) => `Long Bag,part ${transfer + 10},30,20,1`),
  'Row of Boxes,tag,30,20,20',
];
const LONG_DAY = ['order,design,width mm,height mm,qty', ...ROWS].join('\n');

/** The least margin, in millimetres: of text, and of a page's number in it. */
const MARGIN = 7;

const outside = ({ width, height, texts }: ReadPage) =>
  texts.filter(
    ({ box }) =>
      box.x < MARGIN ||
      box.y < MARGIN ||
      box.x + box.width > width - MARGIN ||
      box.y + box.height > height - MARGIN,
  );

test('cards of several pages have their title and number on each, and keep within the margin', async ({
  page,
}) => {
  await openShop(page);
  await pasteTable(page, LONG_DAY);
  await layOut(page);
  await page.goto('./#/cards');
  for (const [card, title] of [
    ['run card', 'Run card'],
    ['pick list', 'Pick list'],
    ['packing slips', 'Long Bag'],
  ] as const) {
    await page.getByLabel('Card', { exact: true }).selectOption({ label: card });
    await expect(page.locator('.card-page').first()).toBeVisible();
    const pages = await readPdf(new Uint8Array(await page.pdf({ preferCSSPageSize: true })));
    expect(pages.flatMap(outside), card).toEqual([]);
    const told = pages.map(({ texts }) => texts.map(({ text }) => text).join(' '));
    const titled = told.flatMap((text, index) => (text.includes(title) ? [index] : []));
    expect(titled.length, card).toBeGreaterThan(1);
    if (card === 'packing slips') {
      const boxes = told.find((text) => text.includes('Row of Boxes'))?.match(/☐/g) ?? [];
      expect(boxes.length).toBeGreaterThanOrEqual(20);
    } else expect(titled, card).toHaveLength(pages.length);
    for (const index of titled) expect(told[index], card).toContain(`${index + 1} / ${pages.length}`);
  }
});
