import type { Page } from '@playwright/test';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

import { expectAccessible } from './accessible';
import { expect, kept, layOut, lockRun, openShop, pasteTable, sentence, test } from './shop';
import { beginFrom, type State } from './states';

const TABLE = `order,transfer,width,height,count,due,may turn
Harbour Rowing,Crest left chest,89,89,6,,yes
Harbour Rowing,Row the Bay back,250,102,4,,no
Corner Oven,Badge,140,140,8,,yes`;

const laidDay: State = {
  name: 'laid run of costs',
  async make(page) {
    await openShop(page);
    await pasteTable(page, TABLE);
    await layOut(page);
    await kept(page);
  },
};

/** Three transfers of two orders, laid out. */
async function laidRun(page: Page): Promise<void> {
  await beginFrom(page, laidDay);
  await expect(sentence(page)).toBeVisible();
}

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name });
const amounts = (page: Page, where: string) =>
  page
    .locator(`${where} [data-amount]`)
    .evaluateAll((all) => all.map((each) => Number(each.getAttribute('data-amount'))));
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

/** Minor units of a figure as it is told. */
const minor = (text: string) => Math.round(100 * Number(text.replace(/[^\d.-]/g, '')));

/** The text of each page. */
async function pdfTexts(bytes: Uint8Array): Promise<string[]> {
  const document = await getDocument({ data: new Uint8Array(bytes) }).promise;
  const texts: string[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const { items } = await (await document.getPage(number)).getTextContent();
    texts.push(items.map((item) => ('str' in item ? item.str : '')).join(' '));
  }
  return texts;
}

async function openSheet(page: Page): Promise<void> {
  await sentence(page)
    .getByRole('button', { name: /what the run costs/ })
    .click();
  await expect(page.getByTestId('cost-total')).toBeVisible();
}

test('what a run costs sums from every copy to the total, opens to its formulas, and follows the rates', async ({
  page,
}) => {
  await laidRun(page);
  const film = (await sentence(page).locator('.opens').textContent()) ?? '';
  await openSheet(page);
  const total = page.getByTestId('cost-total');
  const all = minor((await total.textContent()) ?? '');
  expect(sum(await amounts(page, '.cost-lines'))).toBe(all);
  expect(sum(await amounts(page, '.cost-parts'))).toBe(all);
  // The figure of the sentence is the film's, and its formula has the length that the sentence tells.
  const filmLine = page.locator('details[data-kind="film"]');
  await filmLine.locator('summary').click();
  await expect(filmLine.getByText(new RegExp(`m × £8\\.40/m = ${film.replace('.', '\\.')}`))).toBeVisible();
  await expectAccessible(page, 'cost sheet');
  // Down to one copy and back; at every step lines and parts sum to what is told.
  for (const part of [/Harbour Rowing/, /Crest left chest/]) {
    await page.locator('.cost-part', { hasText: part }).first().click();
    const own = minor((await total.textContent()) ?? '');
    expect(own).toBeGreaterThan(0);
    expect(sum(await amounts(page, '.cost-lines'))).toBe(own);
    expect(sum(await amounts(page, '.cost-parts'))).toBe(own);
  }
  await page.locator('.cost-part').first().click();
  expect(sum(await amounts(page, '.cost-lines'))).toBe(minor((await total.textContent()) ?? ''));
  // A line that is open stays open on the way down.
  await expect(filmLine.getByText(/of the run × .*shared by the film its copies take/)).toBeVisible();
  await button(page, 'Run 1').click();
  // No artwork: what is assumed is said.
  await expect(page.getByText(/White and colour are taken to cover all of 3 transfers/)).toBeVisible();

  await button(page, 'Costs of this shop').click();
  const ink = page.getByRole('textbox', { name: 'White ink (GBP / l)' });
  for (const [typed, answer] of [
    ['-3', 'A price cannot be below zero.'],
    ['0', /At zero this would vanish from every cost/],
    ['12 EUR', /Nothing is converted here/],
    ['much', /This is not a price/],
  ] as const) {
    await ink.fill(typed);
    await button(page, 'Save').click();
    await expect(page.getByText(answer)).toBeVisible();
    await expect(ink).toHaveValue(typed);
  }
  await expectAccessible(page, 'costs');
  await ink.fill('1,60 per ml');
  await button(page, 'Save').click();
  await expect.poll(async () => minor((await total.textContent()) ?? '')).toBeGreaterThan(all);
  const white = page.locator('details[data-kind="white-ink"]');
  await white.locator('summary').click();
  await expect(white.getByText(/× 14 ml\/m² × £1,600\.00\/l = £/)).toBeVisible();
  // A rate that is left out is said to be.
  await button(page, 'Costs of this shop').click();
  await ink.fill('');
  await button(page, 'Save').click();
  await white.locator('summary').click();
  await expect(white.getByText('left out: it has no price')).toBeVisible();
});

test('an order is priced, quoted on one page, and quoted anew when it changes', async ({ page }) => {
  await laidRun(page);
  await page.getByRole('link', { name: 'Orders' }).click();
  await button(page, /price of Corner Oven$/).click();
  const total = page.getByTestId('price-total');
  const before = minor((await total.textContent()) ?? '');
  expect(sum(await amounts(page, '.price-lines'))).toBe(before);
  await expect(page.getByText(/^margin [\d.]+% · markup [\d.]+% · cost £/)).toBeVisible();
  await expectAccessible(page, 'price');
  const aim = page.getByLabel('Target', { exact: true });
  await aim.selectOption({ label: 'a margin of its own' });
  const share = page.getByRole('textbox', { name: 'Per cent' });
  await share.fill('100');
  await share.press('Enter');
  await expect(page.getByText(/A margin is a share of the price/)).toBeVisible();
  await share.fill('75');
  await share.press('Enter');
  await expect.poll(async () => minor((await total.textContent()) ?? '')).toBeGreaterThan(before);
  await page.getByRole('slider', { name: 'Price changed by' }).press('ArrowRight');
  await expect(page.getByText(/^\+1%: £.*, margin [\d.]+%$/)).toBeVisible();

  await button(page, 'Prices of this shop').click();
  await page.getByLabel('Tax', { exact: true }).selectOption('on-top');
  await page.getByRole('textbox', { name: 'Name of the tax' }).fill('VAT');
  await page.getByRole('textbox', { name: 'Tax (%)' }).fill('20');
  await page.getByRole('textbox', { name: 'Shop’s name' }).fill('Print Barn');
  await page.getByRole('textbox', { name: 'Shop’s address' }).fill('2 Mill Lane\nHarbour');
  await page.getByRole('textbox', { name: 'Quantity discount' }).fill('24 pieces');
  await button(page, 'Save').click();
  await expect(page.getByText(/Write each as a quantity and a percentage/)).toBeVisible();
  await expectAccessible(page, 'prices');
  await page.getByRole('textbox', { name: 'Quantity discount' }).fill('8: 10%');
  await button(page, 'Save').click();
  await expect(page.getByText('From 8 prints on, 10.0% off')).toBeVisible();

  const told = (await total.textContent()) ?? '';
  await button(page, 'Quote').click();
  await page.getByRole('textbox', { name: 'Notes' }).fill('Collect after four.');
  await page.getByRole('heading', { name: 'Quote', exact: true }).click();
  const paper = page.getByTestId('quote');
  await expect(paper).toContainText('Collect after four.');
  await expectAccessible(page, 'quote');
  const text = await pdfTexts(await page.pdf({ preferCSSPageSize: true }));
  expect(text).toHaveLength(1);
  for (const expected of [
    'Print Barn',
    '2 Mill Lane',
    'Quote 0001',
    'Corner Oven',
    'VAT',
    told,
    'Collect after four.',
  ]) {
    expect(text[0]).toContain(expected);
  }
  expect(text[0]).not.toMatch(/margin|cost/i);

  // More of them: the quote says that it no longer holds, and another is given.
  await page.getByRole('button', { name: 'Back', exact: true }).click();
  await page.getByRole('textbox', { name: 'Discount (%)' }).fill('10');
  await page.getByRole('textbox', { name: 'Discount (%)' }).press('Enter');
  await page.getByRole('button', { name: 'Quote', exact: true }).click();
  await expect(page.getByText(/The order or its prices have changed since/)).toBeVisible();
  await button(page, 'Give a new quote').click();
  await expect(paper).toContainText('Quote 0002');
  await expect(page.getByText(/The order or its prices have changed since/)).toBeHidden();

  // The earlier one opens from the order's window, as it was given.
  await page.getByRole('link', { name: 'Orders' }).click();
  await page.getByRole('region', { name: 'Corner Oven' }).getByRole('button', { name: 'Details' }).click();
  await button(page, 'Quote 0001').click();
  await expect(page.getByText(/An earlier quote of this order.*Quote 0002 holds now/)).toBeVisible();
  expect(await pdfTexts(await page.pdf({ preferCSSPageSize: true }))).toEqual(text);
});

test('a quote of many lines goes on over pages, none of its lines cut', async ({ page }) => {
  await openShop(page);
  const rows = Array.from({ length: 60 }, (_, index) => `Long List,Name ${index + 1},30,20,1,,yes`);
  await pasteTable(page, ['order,transfer,width,height,count,due,may turn', ...rows].join('\n'));
  await button(page, /price of Long List$/).click();
  await button(page, 'Quote').click();
  await expect(page.getByTestId('quote').locator('article')).toHaveCount(2);
  const texts = await pdfTexts(await page.pdf({ preferCSSPageSize: true }));
  expect(texts).toHaveLength(2);
  for (const [index, text] of texts.entries()) {
    expect(text).toContain(`Page ${index + 1} of 2`);
    expect(text).toMatch(/What\s+Qty\s+Each\s+Amount/);
    expect(text).toContain('Quote 0001');
  }
  const names = texts.flatMap((text) => text.match(/Name \d+/g) ?? []);
  expect(names).toEqual(rows.map((_, index) => `Name ${index + 1}`));
  expect(texts[0]).not.toContain('Total');
  expect(texts[1]).toMatch(/Total\s+£/);
});

test('other films and ways are laid out side by side; one is taken and taken back', async ({ page }) => {
  await laidRun(page);
  // All but the hour, which goes on meanwhile.
  const told = async () => (await sentence(page).textContent())?.split(', done by')[0];
  const before = await told();
  await openSheet(page);
  await button(page, 'Compare films').click();
  const rows = page.locator('.ways tbody tr[data-done="true"]');
  await expect(rows).toHaveCount(7, { timeout: 30_000 });
  await expectAccessible(page, 'compare');
  await page.getByRole('textbox', { name: 'Another width' }).fill('wide');
  await button(page, 'Add: Another width').click();
  await expect(page.getByText(/This is not a length/)).toBeVisible();
  await page.getByRole('textbox', { name: 'Another width' }).fill('560 mm');
  await button(page, 'Add: Another width').click();
  await page.getByRole('textbox', { name: 'Another gap' }).fill('12 mm');
  await button(page, 'Add: Another gap').click();
  await page
    .getByLabel('Another trade size', { exact: true })
    .selectOption({ label: 'sheet, A3 (297 × 420 mm)' });
  await button(page, 'Add: Another trade size').click();
  await expect(rows).toHaveCount(10, { timeout: 30_000 });
  await expect(page.locator('.ways tr', { hasText: 'sheet, A3' }).locator('td').first()).toHaveText(
    /sheets?/,
  );
  const wider = page.locator('.ways tr', { hasText: '560 mm wide' });
  const gap = page.locator('.ways tr', { hasText: 'gap of 12 mm' });
  const metres = async (row: typeof gap) =>
    Number.parseFloat((await row.locator('td').first().textContent()) ?? '');
  const asSet = await metres(page.locator('.ways tr', { hasText: 'as it is set' }));
  expect(await metres(wider)).toBeLessThan(asSet);
  expect(await metres(gap)).toBeGreaterThan(asSet);
  await expect(gap.locator('td').nth(4)).toHaveText(/min|h/);
  const taken = await metres(gap);
  await button(page, 'Take: gap of 12 mm').click();
  await expect(sentence(page)).toContainText(`${taken.toFixed(2)} m of film`);
  await expect(page.locator('.film-bar')).toContainText('gap 12 mm');
  await button(page, 'Undo').click();
  await expect(page.locator('.film-bar')).toContainText('gap 5 mm');
  expect(await told()).toBe(before);

  // One order of the run, alone: it takes less, and is only looked at.
  await page.getByRole('link', { name: 'Orders' }).click();
  await button(page, /price of Corner Oven$/).click();
  await button(page, 'Compare films').click();
  await expect(rows).toHaveCount(5, { timeout: 30_000 });
  await expect(page.getByText(/laid out alone here/)).toBeVisible();
  expect(await metres(page.locator('.ways tr', { hasText: 'as it is set' }))).toBeLessThan(asSet);
  await expect(button(page, /^Take: /)).toHaveCount(0);
});

test('making is held against buying, with the count at which it pays', async ({ page }) => {
  await laidRun(page);
  await openSheet(page);
  await button(page, 'Make or buy').click();
  await button(page, 'Add a way').click();
  await page.getByLabel('Way', { exact: true }).selectOption('piece');
  await page.getByRole('textbox', { name: 'Price of one (GBP)' }).fill('9 $');
  await button(page, 'Save').click();
  await expect(page.getByText('Give it a name, so that it can be told apart.')).toBeVisible();
  await expect(page.getByText(/Nothing is converted here/)).toBeVisible();
  await page.getByRole('textbox', { name: 'Name' }).fill('From town');
  await page.getByRole('textbox', { name: 'Price of one (GBP)' }).fill('9');
  await page.getByRole('textbox', { name: /^Shipping/ }).fill('5');
  await button(page, 'Save').click();
  const way = page.getByRole('region', { name: 'From town' });
  // 18 copies at 9.00 and 5.00 for shipping.
  await expect(way).toContainText('£167.00');
  await expectAccessible(page, 'make or buy');
  await expect(way.getByText(/^Making (pays from \d+ copies on|is never dearer)/)).toBeVisible();
  await button(page, 'Change From town').click();
  await page.getByRole('textbox', { name: 'Price of one (GBP)' }).fill('0.10');
  await button(page, 'Save').click();
  await expect(
    way.getByText('“From town” is always cheaper than making, whatever the quantity.'),
  ).toBeVisible();
});

test('a locked run keeps its costs when prices change', async ({ page }) => {
  await laidRun(page);
  await lockRun(page);
  await openSheet(page);
  const before = await page.getByTestId('cost-total').textContent();
  await expect(page.getByText(/Reckoned with the prices and times of the day/)).toBeVisible();
  await button(page, 'Costs of this shop').click();
  await page.getByRole('textbox', { name: 'Powder (GBP / kg)' }).fill('900');
  await button(page, 'Save').click();
  await expect(page.getByTestId('cost-total')).toHaveText(before ?? '');
});
