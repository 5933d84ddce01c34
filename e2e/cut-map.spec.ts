import { readFileSync } from 'node:fs';
import { alternatives } from '../tests/output/alternatives';
import { readPdf } from '../tests/output/read-pdf';
import { expect, layOut, openShop, pasteTable, TABLE, test } from './shop';

test('the cut map is printed and saved on A4 and on Letter at true size', async ({ page }) => {
  await openShop(page);
  await pasteTable(
    page,
    TABLE.split('\n')
      .filter((line) => !line.includes('abc'))
      .join('\n'),
  );
  await layOut(page);
  await page.getByRole('button', { name: 'Cut map' }).click();
  for (const [paper, width, height] of [
    ['A4', 210, 297],
    ['Letter', 215.9, 279.4],
  ] as const)
    await test.step(paper, async () => {
      await page.getByLabel('Paper').selectOption({ label: paper });
      await expect(page.locator('.sheet').first()).toBeVisible();
      const sheets = await page.locator('.sheet').count();

      const download = page.waitForEvent('download');
      await page.getByRole('button', { name: 'Save as PDF' }).click();
      const saved = await readPdf(new Uint8Array(readFileSync(await (await download).path())));
      const printed = await readPdf(new Uint8Array(await page.pdf({ preferCSSPageSize: true })));
      for (const pages of [saved, printed]) {
        expect(pages).toHaveLength(sheets);
        for (const sheet of pages) {
          expect(Math.abs(sheet.width - width)).toBeLessThan(0.3);
          expect(Math.abs(sheet.height - height)).toBeLessThan(0.3);
          const rule = sheet.paths.filter(
            (path) => Math.abs(path.width - 100) <= 0.1 && path.height < 0.5 && path.y > height - 40,
          );
          expect(rule.length).toBeGreaterThanOrEqual(1);
        }
        const words = pages.flatMap(({ texts }) => texts.map(({ text }) => text)).join(' ');
        expect(words).toContain('INK UP, AS IT COMES OUT');
      }
    });
  await page.getByLabel('Seen').selectOption({ label: 'as on screen' });
  await expect(page.locator('.sheet').first()).toContainText('AS SEEN ON SCREEN');
  await expect(page.locator('.cuts tbody tr').first()).toContainText('mm');
});

test('orders named in other scripts keep their names on the map: as text, or drawn and told', async ({
  page,
}) => {
  await openShop(page);
  await pasteTable(
    page,
    [
      'order,design,width mm,height mm,qty',
      'Ξύλινο άλογο,Άλογο,120,90,2',
      'Красная лиса,Лиса,120,90,2',
      '红狐,狐,120,90,2',
    ].join('\n'),
  );
  await layOut(page);
  await page.getByRole('button', { name: 'Cut map' }).click();
  await expect(page.locator('.sheet').first()).toBeVisible();
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as PDF' }).click();
  const pdf = new Uint8Array(readFileSync(await (await download).path()));
  const saved = (await readPdf(pdf)).flatMap(({ texts }) => texts);
  const words = saved.map(({ text }) => text.replaceAll(' ', '')).join('');
  for (const name of ['Ξύλινοάλογο', 'Άλογο', 'Краснаялиса', 'Лиса']) expect(words).toContain(name);
  expect(words).not.toContain('?');
  const drawn = await alternatives(pdf);
  expect(drawn.some((text) => text.startsWith('红狐'))).toBe(true);
  expect(drawn).toContain('狐');
  const printed = (await readPdf(new Uint8Array(await page.pdf({ preferCSSPageSize: true })))).flatMap(
    ({ texts }) => texts,
  );
  // What is printed is set as wide as what is saved, in every script.
  const widthOf = (texts: typeof saved, name: string) =>
    texts.find(({ text }) => text === name)?.box.width ?? 0;
  for (const name of ['Άλογο', 'Лиса', 'leading edge', 'cut off the roll here']) {
    expect(widthOf(saved, name), name).toBeGreaterThan(1);
    expect(Math.abs(widthOf(printed, name) / widthOf(saved, name) - 1), name).toBeLessThan(0.01);
  }
});
