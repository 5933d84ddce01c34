import { expectAccessible } from './accessible';
import { expect, kept, openLockedRun, sentence, test, unfold } from './shop';

test('a run goes from the film to the bag by ticks, and back by a step', async ({ page }) => {
  await openLockedRun(page);
  await page.getByRole('link', { name: 'Press' }).click();
  await expect(page.getByTestId('done-by')).toContainText(/Done by ([A-Z][a-z]{2} )?\d\d:\d\d/);
  await expect(page.getByText('What holds the day up')).toBeVisible();
  await page.getByRole('button', { name: 'Begin the run' }).click();
  const states = page.locator('.states');
  const jobs = page.locator('.job-list input');
  await expect(states.locator('[aria-current]')).toContainText('locked');
  // What a job waited for is taken as done with it, so the last of those listed is enough.
  for (let ticks = 0; ticks < 60 && (await jobs.count()) > 0; ticks += 1) {
    const left = page.getByText(/\d+ of \d+ done/);
    const before = await left.textContent();
    await jobs.first().click();
    await expect(left).not.toHaveText(before ?? '');
  }
  await expect(states.locator('[aria-current]')).toContainText('pressed');
  await page.getByRole('button', { name: 'Close the run' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Close the run' }).click();
  await expect(states.locator('[aria-current]')).toContainText('closed');
  // What is closed is settled, in every room.
  await expect(page.getByText('What it took is kept in the log')).toBeVisible();
  await expect(page.getByText(/done by|print span/i)).toHaveCount(0);
  await page.getByRole('link', { name: 'Cut' }).click();
  await expect(page.getByText('nothing of it is left to cut')).toBeVisible();
  await page.getByRole('link', { name: 'Film', exact: true }).click();
  await expect(sentence(page)).toContainText('of film');
  await expect(sentence(page)).not.toContainText('done by');
  await page.getByRole('link', { name: 'Press' }).click();
  await page.getByRole('button', { name: 'Back to pressed' }).click();
  await expect(states.locator('[aria-current]')).toContainText('pressed');
  await kept(page);
  await page.reload();
  // A run that is not closed is the one to go on with.
  await expect(states.locator('[aria-current]')).toContainText('pressed');
});

test('a whole stage, span or order is ticked at once and taken back at once, and every state leads on', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openLockedRun(page);
  await page.getByRole('link', { name: 'Press' }).click();
  const state = page.locator('.states [aria-current]');
  const isDone = page.getByText(/\d+ of \d+ done/);
  const together = page.getByLabel('Several at once');
  const all = page.getByRole('button', { name: 'All of these are done' });
  const choose = async (label: RegExp) => {
    const name = await together.locator('option').filter({ hasText: label }).first().getAttribute('value');
    await together.selectOption(name ?? '');
    await all.click();
  };
  await page.getByRole('button', { name: 'Go on without' }).click();
  await page.getByRole('button', { name: 'Begin the run' }).click();
  const begun = (await isDone.textContent()) ?? '';
  await choose(/^Press: all/);
  await expect(state).toContainText('pressed');
  await page.getByRole('button', { name: /^Untick:/ }).click();
  await expect(state).toContainText('locked');
  await expect(isDone).toHaveText(begun);
  await page.getByRole('button', { name: 'All printed' }).click();
  await page.getByRole('button', { name: 'All cured' }).click();
  await page.getByRole('link', { name: 'Cut' }).click();
  const pile = page.locator('.pile').first();
  await expect(pile).toContainText(': 0 of');
  await page.getByRole('button', { name: 'This whole span is cut' }).click();
  await expect(pile).not.toContainText(': 0 of');
  await page.getByRole('button', { name: 'Untick this span' }).click();
  await expect(pile).toContainText(': 0 of');
  await page.getByRole('link', { name: 'Press' }).click();
  await choose(/until it is packed: all/);
  await page.getByRole('button', { name: 'All pressed' }).click();
  await page.getByRole('button', { name: 'Close the run' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Close the run' }).click();
  await page.getByRole('button', { name: 'To the log' }).click();
  await expect(page.getByRole('heading', { name: 'Log', exact: true })).toBeVisible();
});

test('copies are cut out step by step, counted by order', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openLockedRun(page);
  await page.getByRole('link', { name: 'Cut' }).click();
  const done = page.getByRole('button', { name: 'Done, next' });
  const pile = page.locator('.pile').last();
  // The figure is in view before anything is scrolled, however low the screen, and the drawing follows it.
  for (const height of [844, 400]) {
    await page.setViewportSize({ width: 390, height });
    const figure = await page.locator('.cut-now .big').boundingBox();
    const bar = await page.locator('.cut-acts').boundingBox();
    expect(figure && bar && figure.y + figure.height < bar.y).toBe(true);
    const drawing = await page.locator('.span-plan').boundingBox();
    expect(figure && drawing && figure.y < drawing.y).toBe(true);
  }
  await expect(pile).toContainText('HR: 0 of 5');
  await expect(pile).toContainText('CO: 0 of 2');
  for (let steps = 0; steps < 40; steps += 1) {
    if (await page.getByText(/This span is cut/).isVisible()) {
      const next = page.getByRole('button', { name: 'Next span' });
      if (await next.isDisabled()) break;
      await next.click();
    } else await done.click();
  }
  await expect(pile).toContainText('HR: 5 of 5');
  await expect(pile).toContainText('CO: 2 of 2');
  await page.getByRole('button', { name: 'One back' }).click();
  await expect(done).toBeVisible();
});

test('a recipe in the wrong unit is questioned, and no press says what is missing', async ({ page }) => {
  await openLockedRun(page);
  await page.getByRole('link', { name: 'Press' }).click();
  await page.getByRole('button', { name: 'Recipes' }).click();
  const temperature = page.getByLabel('Temperature');
  await temperature.fill('330 C');
  await page.getByRole('button', { name: 'Save this recipe' }).click();
  await expect(page.getByRole('alert')).toContainText('166 °C (330 °F)');
  await temperature.fill('330 F');
  await page.getByRole('button', { name: 'Save this recipe' }).click();
  await expect(page.getByRole('heading', { name: 'Before' })).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(page.locator('.how-to')).toContainText('166 °C (330 °F), 12–15 s');
  await page.getByRole('button', { name: 'Equipment' }).click();
  await unfold(page, 'Presses');
  await page.getByRole('button', { name: 'Remove Press 1' }).click();
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('There is no press to press on')).toBeVisible();
});

test('a spoiled copy goes back on the list', async ({ page }) => {
  await openLockedRun(page);
  await page.getByRole('button', { name: 'All printed' }).click();
  await page.getByRole('link', { name: 'Cut' }).click();
  await page.getByRole('button', { name: 'A copy is spoiled' }).click();
  await expect(page.getByLabel('Spoiled', { exact: true })).toHaveValue('cut');
  await page.getByRole('button', { name: 'Reprint' }).click();
  await expect(page.getByText('Say why in a word or two')).toBeVisible();
  await page.getByLabel('Why').fill('crooked');
  await page.getByRole('button', { name: 'Reprint' }).click();
  await expect(page.getByText('is back on the list for another run')).toBeVisible();
});

test('each card is printed on its pages, the run card on one', async ({ page }) => {
  await openLockedRun(page);
  await page.goto('./#/cards');
  for (const [card, pages] of [
    ['run card', 1],
    ['the day’s chart', 1],
    ['pick list', 1],
    ['care slips', 1],
    ['packing slips', 1],
  ] as const) {
    await page.getByLabel('Card', { exact: true }).selectOption({ label: card });
    await expect(page.locator('.card-page').first()).toBeVisible();
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
    expect(pdf.match(/\/Type\s*\/Page[^s]/g)).toHaveLength(pages);
  }
  await page.getByLabel('Bags, HR').fill('3');
  await expect(page.getByText('bag 3 of 3')).toBeVisible();
});

test('the rooms Cut and Press meet WCAG 2.2 AA', async ({ page }) => {
  await openLockedRun(page);
  const check = (where: string) => expectAccessible(page, where);
  await page.goto('./#/cut');
  await expect(page.locator('.span-plan')).toBeVisible();
  await check('cut');
  await page.goto('./#/press');
  await expect(page.getByTestId('done-by')).toBeVisible();
  await check('press');
  for (const name of ['Equipment', 'Recipes']) {
    await page.getByRole('button', { name }).click();
    await expect(page.getByRole('dialog')).toBeVisible();
    await check(name);
    await page.keyboard.press('Escape');
  }
  await page.goto('./#/cards');
  await expect(page.locator('.card-page')).toBeVisible();
  await check('cards');
});
