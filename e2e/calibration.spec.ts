import { writeFileSync } from 'node:fs';
import type { Page, TestInfo } from '@playwright/test';
import type { Book, Closing } from '../src/model';
import type { Milligrams } from '../src/units';
import { closedRuns, truth } from '../tests/costing/calibration/closings';
import { smallBook } from '../tests/editing/book';
import { packed } from '../tests/output/packed-backup';
import { expectAccessible } from './accessible';
import { expect, kept, notices, openShop, test } from './shop';

/** Opens a shop whose log has runs made with known rates, brought in as a backup. */
async function openLog(page: Page, info: TestInfo, closing: Record<string, Closing>): Promise<void> {
  const book: Book = { ...smallBook().book, closing };
  const file = info.outputPath('log.zip');
  writeFileSync(file, (await packed(book)).bytes);
  await openShop(page);
  await page.getByRole('button', { name: /^Kept on this device/ }).click();
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Bring a backup back' }).click();
  await (await chooser).setFiles(file);
  await expect(notices(page)).toContainText('is back.');
  await page.keyboard.press('Escape');
  await page.goto('./#/log');
}

/** Twenty runs, one of them with the powder of run 4 weighed ten times as heavy. */
function runsWithSlip(): Record<string, Closing> {
  const runs = closedRuns(20, truth);
  const slip = runs['run-3'];
  if (!slip) throw new Error('the run is missing');
  const powder = (10 * (slip.actual.powder ?? 0)) as Milligrams;
  return { ...runs, 'run-3': { ...slip, actual: { ...slip.actual, powder } } };
}

test('rates from the log are offered, applied on request, and taken back', async ({ page }, info) => {
  await openLog(page, info, runsWithSlip());
  const offer = page.getByTestId('calibrate-offer');
  await expect(offer).toContainText('colour ink, white ink, powder, the printer’s time and labour');
  await offer.getByRole('button', { name: 'Calibrate' }).click();
  const window = page.getByRole('dialog', { name: 'Rates from the log' });
  const row = (name: RegExp) => window.getByRole('row', { name });

  // Made with 11 ml a square metre and 3 ml a run, set to 9 ml.
  const area = row(/^an area printed/);
  await expect(area).toContainText('9 ml/m²');
  await expect(area.getByRole('cell').nth(1)).toContainText(/1[01](\.\d+)? ml/);
  // A cleaning of 3 ml, half of it colour, is all that is counted yet.
  await expect(
    row(/^each run/)
      .getByRole('cell')
      .nth(0),
  ).toHaveText('1.5 ml');
  await expect(window.getByTestId('fit-sentence')).toContainText('No run stands out.');
  await expect(window.getByText('No rate has been changed from the log yet.')).toBeVisible();
  await area.getByRole('button', { name: 'Apply' }).click();
  const changes = window.getByTestId('changes').getByRole('listitem');
  await expect(changes).toHaveCount(1);
  await expect(changes).toContainText(/colour ink: 9 ml\/m² → 1[01](\.\d+)? ml\/m².*from 20 runs/);
  await expect(area.getByRole('cell').nth(0)).toContainText(/1[01](\.\d+)? ml/);

  // It is kept, and taken back later.
  await kept(page);
  await page.reload();
  await offer.getByRole('button', { name: 'Calibrate' }).click();
  await changes.getByRole('button', { name: 'Take back' }).click();
  await expect(changes).toContainText('taken back');
  await expect(area.getByRole('cell').nth(0)).toContainText('9 ml/m²');
});

test('a run that does not fit is named, kept in, and left out when the shop says so', async ({
  page,
}, info) => {
  await openLog(page, info, runsWithSlip());
  await page.getByTestId('calibrate-offer').getByRole('button', { name: 'Calibrate' }).click();
  const window = page.getByRole('dialog', { name: 'Rates from the log' });
  await window.getByRole('combobox', { name: 'What is looked at' }).selectOption('powder');
  const sentence = window.getByTestId('fit-sentence');
  await expect(sentence).toContainText('Not like the others: Run 4.');
  // With it in, nothing is told well enough to be offered.
  await expect(window.getByText('The interval is wider than half of the rate.')).toBeVisible();
  await expect(window.getByRole('button', { name: /^Apply/ })).toHaveCount(0);
  await window.getByText('The runs', { exact: true }).click();
  await window.getByText('Run 4', { exact: true }).last().scrollIntoViewIfNeeded();
  await expectAccessible(page, 'rates from the log', { within: '.dialog' });
  const check = window.getByRole('checkbox', { name: 'Take in Run 4', exact: true });
  await expect(check).toBeChecked();
  await check.press('Space');
  await expect(check).not.toBeChecked();
  await expect(sentence).toContainText('Left out: Run 4.');
  await expect(window.getByRole('row', { name: /^an area printed/ })).toContainText(/11\d(\.\d+)? g/);
  await expect(window.getByRole('button', { name: /^Apply/ })).toBeEnabled();
});

test('a log with one run tells how many more it takes', async ({ page }, info) => {
  await openLog(page, info, closedRuns(1, truth));
  await expect(page.getByTestId('calibrate-offer')).toContainText('Once 6 runs are closed with measured ink');
  await page.getByRole('button', { name: 'Calibrate' }).click();
  await expect(page.getByText('5 more closed runs with a measured figure')).toBeVisible();
});
