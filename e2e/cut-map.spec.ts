import { readFileSync } from 'node:fs';
import { readPdf } from '../tests/output/read-pdf';
import { expect, layOut, openShop, pasteTable, TABLE, test } from './shop';

for (const [paper, width, height] of [
  ['A4', 210, 297],
  ['Letter', 215.9, 279.4],
] as const) {
  test(`the cut map is printed and saved on ${paper} at true size`, async ({ page }) => {
    await openShop(page);
    await pasteTable(
      page,
      TABLE.split('\n')
        .filter((line) => !line.includes('abc'))
        .join('\n'),
    );
    await layOut(page);
    await page.getByRole('button', { name: 'Cut map' }).click();
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
    await page.getByLabel('Seen').selectOption({ label: 'as on screen' });
    await expect(page.locator('.sheet').first()).toContainText('AS SEEN ON SCREEN');
    await expect(page.locator('.cuts tbody tr').first()).toContainText('mm');
  });
}
