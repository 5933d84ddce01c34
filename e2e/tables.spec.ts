import { expect, kept, layOut, lockRun, notices, openShop, pasteTable, test } from './shop';

const HEADING = 'Order #,Item,Motif,Width,Height,Qty,Due';

test('what a heading was said to mean holds for the next table, and rows left to mend keep their numbers', async ({
  page,
}) => {
  await openShop(page);
  await page.getByRole('link', { name: 'Orders' }).click();
  const open = async (...rows: readonly string[]) => {
    await page.getByRole('button', { name: 'Paste a table' }).click();
    await page.getByRole('textbox', { name: 'Table' }).fill([HEADING, ...rows].join('\n'));
  };
  await open(
    '#1041,Tee,Star,80,80,4,',
    '#1041,Tee,Moon,ten,80,4,',
    '#1041,Tee,Sun,60,60,4,',
    '#1041,Tee,Leaf,ten,9,4,',
  );
  await page.getByLabel('“Motif” is').selectOption('Transfer');
  await page.getByLabel('“Item” is').selectOption('not used');
  await page.getByRole('button', { name: 'Add 2 transfers' }).click();
  await expect(page.getByText(/^Row 3 /)).toBeVisible();
  await expect(page.getByText(/^Row 5 /)).toBeVisible();
  await page.getByRole('button', { name: 'Cancel' }).click();
  await expect(page.getByRole('region', { name: 'Star' })).toBeVisible();
  await kept(page);
  await page.reload();
  await open('#1042,Tee,Rose,80,80,4,');
  await expect(page.getByRole('cell', { name: 'Rose' })).toBeVisible();
  await expect(page.getByLabel('“Item” is')).toHaveValue('none');
});

test('a line that is there already is asked about: skipped, replaced or added, and never with fewer than are in print', async ({
  page,
}) => {
  await openShop(page);
  const rows = (star: number, moon: number, due: string) =>
    [
      'Order #,Customer,Design,Width,Height,Qty,Due',
      `#1041,Mill,Star,80,80,${star},${due}`,
      `#1041,Mill,Moon,60,60,${moon},${due}`,
    ].join('\n');
  await pasteTable(page, rows(4, 2, '2026-12-03'));
  await page.getByRole('link', { name: 'Film' }).click();
  await layOut(page);
  await lockRun(page);
  await page.getByRole('link', { name: 'Orders' }).click();
  const copies = (name: string) => page.getByRole('textbox', { name: `Qty: ${name}` });

  await page.getByRole('button', { name: 'Paste a table' }).click();
  const table = page.getByRole('textbox', { name: 'Table' });
  await table.fill(rows(4, 2, '2026-12-03'));
  await expect(page.getByLabel('What to do with row 2')).toHaveValue('skip');
  await page.getByRole('button', { name: 'Leave all as it is' }).click();
  await expect(notices(page)).toContainText('2 rows skipped.');

  await page.getByRole('button', { name: 'Paste a table' }).click();
  await table.fill(`${rows(3, 7, '2026-12-10')}\n#1042,Fair,Star,80,80,1,`);
  await expect(page.getByText('2 rows are there already')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Add 3 transfers' })).toBeDisabled();
  await expect(page.getByText(/It cannot be replaced by 3: 4 copies are printed/)).toBeVisible();
  await page.getByRole('button', { name: 'Replace all' }).click();
  await expect(page.getByText('Choose what to do with 1 row that is there already.')).toBeVisible();
  await page.getByLabel('What to do with row 2').selectOption('skip the row');
  await page.getByRole('button', { name: 'Add 1, replace 1 transfer' }).click();
  await expect(copies('Star').first()).toHaveValue('4');
  await expect(copies('Moon')).toHaveValue('7');
  await expect(page.getByLabel('Due').first()).toHaveValue('2026-12-10');
});
