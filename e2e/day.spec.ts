import {
  copyRows,
  expect,
  figures,
  filmSurface,
  kept,
  layOut,
  notices,
  onScreen,
  openShop,
  pasteTable,
  sentence,
  TABLE,
  test,
} from './shop';

test('the first visit opens a demo day, which lets go in one press and can be looked at again', async ({
  page,
}) => {
  await page.goto('./');
  await expect(page.getByText('This is a demo day with invented orders.')).toBeVisible();
  await expect(sentence(page)).toContainText('m of film');
  await page.getByRole('button', { name: 'Start with my own orders' }).click();
  await expect(page.getByText('The film is empty')).toBeVisible();
  await expect(page.getByText('This is a demo day')).toBeHidden();
  // Empty, too, each room has one heading, its name.
  for (const room of ['Orders', 'Cut', 'Press', 'Stock', 'Log', 'Film']) {
    await page.getByRole('link', { name: room, exact: true }).click();
    await expect(page.getByRole('heading', { level: 1, name: room, exact: true })).toBeAttached();
    await expect(page.getByRole('heading', { level: 1 })).toHaveCount(1);
  }
  await page.reload();
  await expect(page.getByText('The film is empty')).toBeVisible();
  await page.getByRole('button', { name: 'Look at the demo day' }).click();
  await expect(page.getByText('This is a demo day')).toBeVisible();
});

test('a pasted day becomes a layout, a dragged copy changes the figures, and all of it outlives a reload', async ({
  page,
}) => {
  await openShop(page);
  await pasteTable(page, TABLE);
  // The bad row is named, the good ones are taken, and the bad one stays to be mended.
  await expect(page.getByText(/1 row left to mend/)).toBeVisible();
  await expect(page.getByText(/“abc”.*not a length/)).toBeVisible();
  await expect(page.getByRole('textbox', { name: 'Table' })).toHaveValue(/Fig Tree Cafe,sleeve,abc/);
  await page.getByRole('button', { name: 'Cancel' }).click();
  await expect(page.getByText('3 orders, 5 transfers, 24 copies')).toBeVisible();

  await layOut(page);
  const laid = await figures(page);
  expect(laid.metres).toBeGreaterThan(0.5);
  expect(laid.waste).toBeLessThan(50);
  const rows = await copyRows(page);
  expect(rows).toHaveLength(24);

  // Zoomed out to the whole run, the last copy is in view and there is room behind it.
  const last = rows.toSorted((a, b) => a.y + a.length - b.y - b.length).at(-1);
  if (!last) throw new Error('no copies');
  await page.getByRole('button', { name: 'Whole run' }).click();
  await page.getByRole('button', { name: last.name }).click();
  const along = page.getByRole('textbox', { name: 'Along (mm)' });
  const film = filmSurface(page);
  await film.focus();
  for (let step = 0; step < 10; step += 1) await page.keyboard.press('Shift+ArrowRight');
  await expect(along).toHaveValue(String(last.y + 100));
  const moved = await figures(page);
  expect(moved.metres).toBeCloseTo(laid.metres + 0.1, 1);

  await kept(page);
  await page.reload();
  await expect(sentence(page)).toContainText(`${moved.metres.toFixed(2)} m`);
  expect(await figures(page)).toEqual(moved);
  await expect.poll(() => copyRows(page)).toHaveLength(24);
});

test('a copy is dragged by mouse, the figures change in the hand, and undo brings it back (rule 2)', async ({
  page,
}) => {
  await openShop(page);
  await pasteTable(page, 'Club,crest,80,80,1,,no\nClub,tag,40,40,1,,no');
  await layOut(page);
  const before = await figures(page);
  const [first] = await copyRows(page);
  if (!first) throw new Error('no copies');
  const from = await onScreen(page, first);
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(from.x + 100 * from.scale, from.y, { steps: 5 });
  await page.mouse.move(from.x + 200 * from.scale, from.y, { steps: 5 });
  // Still in the hand: the sentence tells what it would be.
  await expect.poll(async () => (await figures(page)).metres).toBeCloseTo(before.metres + 0.2, 1);
  await page.mouse.up();
  const after = await figures(page);
  expect(after.metres).toBeCloseTo(before.metres + 0.2, 1);
  await page.keyboard.press('Control+z');
  expect(await figures(page)).toEqual(before);
  await page.keyboard.press('Control+Shift+z');
  expect(await figures(page)).toEqual(after);
});

test('a copy dropped where it may not lie says why and goes back (rule 1)', async ({ page }) => {
  await openShop(page);
  await pasteTable(page, 'Club,crest,80,80,2,,no');
  await layOut(page);
  const rows = await copyRows(page);
  const [a, b] = rows;
  if (!a || !b) throw new Error('no copies');
  const [from, to] = [await onScreen(page, a), await onScreen(page, b)];
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move((from.x + to.x) / 2, (from.y + to.y) / 2, { steps: 4 });
  await page.mouse.move(to.x + 5, to.y + 5, { steps: 4 });
  await expect(page.locator('.run-facts .error')).toContainText('closer than 5 mm');
  await page.mouse.up();
  await expect(notices(page)).toContainText(
    /CL \d stays where it was: there it would come closer than 5 mm to CL \d/,
  );
  expect(await copyRows(page)).toEqual(rows);
});

test('the keyboard does everything the pointer does', async ({ page }) => {
  await openShop(page);
  await pasteTable(page, 'Club,crest,80,60,2,,yes');
  await layOut(page);
  const film = filmSurface(page);
  await film.focus();
  await page.keyboard.press('n');
  const along = page.getByRole('textbox', { name: 'Along (mm)' });
  const start = Number(await along.inputValue());
  await page.keyboard.press('Shift+ArrowRight');
  await page.keyboard.press('Shift+ArrowRight');
  await expect(along).toHaveValue(String(start + 20));
  await page.keyboard.press('ArrowLeft');
  await page.keyboard.press('Alt+ArrowRight');
  await expect(along).toHaveValue(String(Math.round(10 * (start + 19.1)) / 10));
  for (let step = 0; step < 6; step += 1) await page.keyboard.press('Shift+ArrowRight');
  await page.keyboard.press('r');
  await page.keyboard.press('p');
  const pinned = async () => (await copyRows(page)).filter((row) => row.pinned);
  await expect.poll(pinned).toHaveLength(1);
  const before = await pinned();
  await page.keyboard.press('Control+Enter');
  await page.keyboard.press('Control+.');
  expect(await pinned()).toEqual(before);
  await film.focus();
  await page.keyboard.press('Delete');
  await expect.poll(() => copyRows(page)).toHaveLength(1);
  await page.getByRole('button', { name: 'Put one crest on the film' }).click();
  await expect.poll(() => copyRows(page)).toHaveLength(2);
  await page.keyboard.press('?');
  await expect(page.getByRole('dialog')).toContainText('Every key');
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toBeHidden();
});

test('film and price are changed in one window; what no longer fits comes off and is said', async ({
  page,
}) => {
  await openShop(page);
  await pasteTable(page, 'Club,front,300,200,2,,no\nClub,tag,50,50,2,,no');
  await layOut(page);
  const before = await figures(page);
  await page.getByRole('button', { name: 'Film and price' }).click();
  await page.getByRole('textbox', { name: 'Price (GBP)' }).fill('10.00');
  await page.getByRole('textbox', { name: 'Width' }).fill('250 mm');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(notices(page)).toContainText('2 copies no longer fit where they lay');
  await expect(
    page.getByText(/front: 2 copies left out, since it is wider than the printable film/),
  ).toBeVisible();
  await expect.poll(() => copyRows(page)).toHaveLength(2);
  await page.keyboard.press('Control+z');
  await expect.poll(() => copyRows(page)).toHaveLength(4);
  expect(await figures(page)).toEqual(before);
});

test('the demo day is laid out however early its page is left and opened again', async ({ page }) => {
  // Left as soon as the page comes in, is read, has run its script, and as soon as anything of the day is seen.
  for (const moment of ['commit', 'domcontentloaded', 'load'] as const) {
    await page.goto('./', { waitUntil: moment });
    await page.goto('about:blank');
  }
  await page.goto('./');
  await expect(page.getByText('This is a demo day with invented orders.')).toBeVisible();
  await page.reload();
  await expect(sentence(page)).toContainText('m of film');
  expect((await copyRows(page)).length).toBeGreaterThanOrEqual(90);
});
