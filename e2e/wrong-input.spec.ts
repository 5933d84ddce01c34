import { expect, layOut, notices, openShop, pasteTable, test, unfold } from './shop';

test('every wrong entry is answered beside its field, and nothing entered before is lost (rule 8)', async ({
  page,
}) => {
  await openShop(page);
  await pasteTable(page, 'Club,crest,80,80,2,,no');
  const width = page.getByRole('textbox', { name: 'Width: crest' });
  for (const [typed, sentence] of [
    ['0', 'A length must be above zero.'],
    ['abc', 'This is not a length.'],
  ] as const) {
    await width.fill(typed);
    await width.press('Enter');
    await expect(page.getByRole('alert')).toContainText(sentence);
    await width.press('Escape');
    await expect(width).toHaveValue('80 mm');
  }
  const count = page.getByRole('textbox', { name: 'Qty: crest' });
  await count.fill('10000000');
  await count.press('Enter');
  await expect(page.getByRole('alert')).toContainText('a whole number from 1 to 5,000');
  await count.press('Escape');
  await expect(count).toHaveValue('2');

  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Choose an image for crest' }).click();
  await (await chooser).setFiles({
    name: 'crest.png',
    mimeType: 'image/png',
    buffer: Buffer.from('no image at all'),
  });
  await expect(notices(page)).toContainText('crest.png is not a PNG, JPEG, WebP, SVG or PDF.');
  await expect(width).toHaveValue('80 mm');

  await width.fill('900 mm');
  await width.press('Enter');
  await expect(page.getByText('This transfer is wider than the printable film')).toBeVisible();
  await expect(page.getByText('1 order, 1 transfer, 2 copies')).toBeVisible();
});

test('a table that is no table, and a heading without sizes, are answered; a fault that rows share is mended in all of them at once, and taken back', async ({
  page,
}) => {
  await openShop(page);
  await page.getByRole('link', { name: 'Orders' }).click();
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Open a file' }).click();
  await (await chooser).setFiles({
    name: 'day.xlsx',
    mimeType: 'application/zip',
    buffer: Buffer.from([80, 75, 3, 4, 0, 0]),
  });
  await expect(notices(page)).toContainText('day.xlsx is not a text table.');
  await page.getByRole('button', { name: 'Paste a table' }).click();
  await page.getByRole('textbox', { name: 'Table' }).fill('order,transfer,count\nClub,crest,2');
  await expect(page.getByRole('dialog')).toContainText('no column for width.');

  const rows = ['Star', 'Moon', 'Sun'].map((name) => `#1041,${name},large,80,2`);
  await page
    .getByRole('textbox', { name: 'Table' })
    .fill(['Order #,Design,Print Width,Height,Lineitem quantity', ...rows].join('\n'));
  await expect(page.getByText('3 rows to mend')).toBeVisible();
  await page.getByRole('textbox', { name: 'Read “large” under “Width” as' }).fill('28 cm');
  await page.getByRole('button', { name: 'In 3 rows' }).click();
  await expect(page.getByText('3 rows understood')).toBeVisible();
  await page.getByRole('button', { name: 'Take back' }).click();
  await expect(page.getByText('3 rows to mend')).toBeVisible();
});

test('of a long table only the rows in view are in the page, and one that is too long is refused', async ({
  page,
}) => {
  await openShop(page);
  await page.getByRole('link', { name: 'Orders' }).click();
  const open = async (rows: number) => {
    const chooser = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'Open a file' }).click();
    const table = Array.from({ length: rows }, (_, at) => `Club,crest ${at},${at % 2 ? 80 : 'abc'},80,1`);
    await (await chooser).setFiles({
      name: 'day.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from(table.join('\n')),
    });
  };
  await open(19_000);
  const dialog = page.getByRole('dialog');
  await expect(dialog).toContainText('9,500 rows to mend');
  await expect(dialog).toContainText('9,500 rows understood');
  await expect(dialog.getByRole('row').nth(1)).toContainText('crest 1');
  expect(await dialog.getByRole('row').count()).toBeLessThan(60);
  expect(await dialog.getByRole('listitem').count()).toBeLessThan(60);
  await dialog.getByRole('button', { name: 'Cancel' }).click();
  await open(100_000);
  await expect(dialog).toContainText('The table has more than 20,000 rows. Add it in parts.');
  await expect(dialog.getByRole('button', { name: /^Add/ })).toBeDisabled();
});

test('a roll shorter than one copy places what fits and names the rest', async ({ page }) => {
  await openShop(page);
  await pasteTable(page, 'Club,back,300,280,1,,no\nClub,tag,50,50,2,,no');
  await page.getByRole('link', { name: 'Film', exact: true }).click();
  await page.getByRole('button', { name: 'Film and price' }).click();
  const left = page.getByRole('textbox', { name: 'Left on the roll' });
  await left.fill('15 mm');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByRole('dialog')).toContainText('need more than is left on the roll');
  await left.fill('600 mm');
  await page.getByRole('button', { name: 'Save' }).click();
  await layOut(page);
  await expect(
    page.getByText(/back: 1 copy left out, since it is longer than a span or the film allows/),
  ).toBeVisible();
  await expect(page.getByText('1 wait for a place')).toBeVisible();
});

test('a film form on a phone leads to the field to mend, and keeps what was typed through a change of unit', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openShop(page);
  await pasteTable(page, 'Club,crest,80,80,2,,no');
  await page.getByRole('link', { name: 'Film', exact: true }).click();
  await page.getByRole('button', { name: 'Film and price' }).click();
  await page.getByLabel('Film', { exact: true }).selectOption({ label: 'a new stack of sheets' });
  await page.getByRole('textbox', { name: 'Name' }).fill('A3 sheets');
  await page.getByLabel('Trade size').selectOption({ label: 'sheet, A3 (297 × 420 mm)' });
  const left = page.getByRole('textbox', { name: 'Sheets left' });
  await left.fill('ten');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(left).toBeFocused();
  await expect(page.getByText('Write how many sheets are left as a whole number.')).toBeInViewport();
  await left.fill('10');
  // What a sheet costs is never taken over from a roll.
  await expect(page.getByRole('textbox', { name: /^Price of a sheet/ })).toHaveValue('');
  await page.getByRole('textbox', { name: /^Price of a sheet/ }).fill('0.9');
  // What cannot be used opens the folded group that it stands in; that of a new film is open, since it asks something.
  const gap = page.getByRole('textbox', { name: 'Gap between copies' });
  await gap.fill('wide');
  await page.locator('.field-group[open] > summary', { hasText: 'Cutting' }).click();
  await expect(gap).toBeHidden();
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(gap).toBeFocused();
  await gap.fill('8');
  await page.getByRole('button', { name: 'Save' }).click();
  await page.getByRole('button', { name: 'Shop', exact: true }).click();
  await page.getByRole('menuitem', { name: 'Units and language' }).click();
  await page.getByLabel('Measures').selectOption({ label: 'inches' });
  await page.getByRole('button', { name: 'Close' }).click();
  await page.getByRole('button', { name: 'Film and price' }).click();
  await unfold(page, 'Cutting');
  await expect(gap).toHaveValue('0.315 in');
  await expect(page.getByRole('textbox', { name: 'Name' })).toHaveValue('A3 sheets');
  await expect(left).toHaveValue('10');
});
