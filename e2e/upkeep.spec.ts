import type { Page } from '@playwright/test';
import { expectAccessible } from './accessible';
import { expect, kept, layOut, lockRun, notices, openShop, pasteTable, test } from './shop';

/** Opens the window from the Press room of an empty shop. */
async function openUpkeep(page: Page): Promise<void> {
  await openShop(page);
  await page.goto('./#/press');
  await page.getByTestId('upkeep-due').getByRole('button', { name: 'Maintenance' }).click();
}

test('what is due is said before a run is locked, and holds nothing up', async ({ page }) => {
  await openShop(page);
  await pasteTable(page, 'Club,crest,80,80,4,,no');
  await layOut(page);
  const due = page.getByTestId('upkeep-due');
  await expect(due).toContainText('No maintenance is noted yet.');
  await due.getByRole('button', { name: 'Maintenance' }).click();

  // Nothing is noted without initials.
  const window = page.getByRole('dialog', { name: 'Maintenance' });
  await window.getByRole('button', { name: 'Done: White ink stirred or circulated' }).click();
  await expect(window.getByText('Type the initials of who did it.')).toBeVisible();
  await window.getByRole('textbox', { name: 'Initials' }).fill('MK');
  await window.getByRole('textbox', { name: 'Note' }).fill('one can nearly empty');
  await window.getByRole('button', { name: 'Done: White ink stirred or circulated' }).click();
  await window.getByRole('button', { name: 'Done: Nozzle check printed and looked at' }).click();
  await expect(window.getByTestId('done-checks').getByRole('listitem')).toHaveCount(4);

  // A mistake is taken back by another note.
  await window.getByRole('button', { name: 'Take back: Nozzle check' }).click();
  await expect(window.getByTestId('done-checks').getByRole('listitem')).toHaveCount(3);
  await window.getByText('What was noted').click();
  const history = window.getByTestId('upkeep-history');
  await expect(history.getByRole('listitem')).toHaveCount(3);
  await expect(history).toContainText('White ink stirred or circulated · one can nearly empty');
  await expect(history).toContainText('Nozzle check printed and looked at: taken back');
  await page.keyboard.press('Escape');

  await expect(due).toContainText('Maintenance due: Nozzle check printed and looked at; and ');
  await lockRun(page);
  await expect(notices(page)).toContainText('is locked for print');
  await page.goto('./#/press');
  await expect(page.getByTestId('upkeep-due')).toContainText('Maintenance due: Nozzle check');

  // What the next print waits for is asked for in its place, and ticked there.
  const before = page.getByRole('region', { name: 'Before this print' });
  await expect(before).toHaveCount(0);
  await page.getByTestId('upkeep-due').getByRole('button', { name: 'Maintenance' }).click();
  await window.getByRole('button', { name: 'Take back: Before a run: white ink' }).click();
  await page.keyboard.press('Escape');
  await expect(before).toContainText('Before a run: white ink stirred or circulated');
  await expect(before).toContainText('nitrile gloves');
  await before.getByRole('button', { name: 'Done' }).click();
  await expect(before).toHaveCount(0);

  // It is kept, and so are the initials.
  await kept(page);
  await page.reload();
  await page.getByTestId('upkeep-due').getByRole('button', { name: 'Maintenance' }).click();
  await expect(page.getByRole('textbox', { name: 'Initials' })).toHaveValue('MK');
});

test('the room is read, and questioned where it cannot be so; the list is the shop’s: another interval, a check of its own, one that is given up', async ({
  page,
}) => {
  await openUpkeep(page);
  const window = page.getByRole('dialog', { name: 'Maintenance' });
  const note = window.getByRole('button', { name: 'Note the room' });
  await note.click();
  await expect(window.getByText('Type a temperature, a humidity or both.')).toBeVisible();
  await window.getByRole('textbox', { name: 'Initials' }).fill('JO');
  await window.getByRole('textbox', { name: 'Temperature (°C)' }).fill('230');
  await window.getByRole('textbox', { name: 'Relative humidity (%)' }).fill('0.5');
  await note.click();
  await expect(window.getByText('No workroom is like that. Check the figure and its unit.')).toBeVisible();
  await expect(window.getByText('Type a percentage between 5 and 100.')).toBeVisible();
  await window.getByRole('textbox', { name: 'Temperature (°C)' }).fill('73.4 F');
  await window.getByRole('textbox', { name: 'Relative humidity (%)' }).fill('66');
  await note.click();
  await expect(window.getByTestId('last-reading')).toContainText('23 °C, 66%, JO');
  await expect(window.getByText('Damper than is usual')).toBeVisible();
  // With it, the check of the room is done.
  await expect(window.getByTestId('done-checks')).toContainText('Temperature and humidity of the room read');

  await test.step('the list is changed', async () => {
    await window.getByRole('textbox', { name: 'Initials' }).fill('MK');
    await window.getByRole('button', { name: /^Done: White ink/ }).click();
    await window.getByText('What was noted').click();
    await window.getByText('Change the list').click();
    await window.getByRole('button', { name: 'Change: Nozzle check' }).click();
    await expectAccessible(page, 'upkeep');
    await window.getByText('What was noted').click();
    await window.getByRole('combobox', { name: 'When' }).selectOption('every so many days');
    await window.getByRole('textbox', { name: 'Days' }).fill('1');
    await window.getByRole('button', { name: 'Save' }).click();
    await expect(window.getByText('Write a whole number of days from 2 to 366.')).toBeVisible();
    await window.getByRole('textbox', { name: 'Days' }).fill('3');
    await window.getByRole('button', { name: 'Save' }).click();
    await expect(window.getByTestId('due-checks')).toContainText('every 3 days');
    await window.getByRole('button', { name: 'A check of your own' }).click();
    await window.getByRole('textbox', { name: 'What is checked' }).fill('Belt of the oven oiled');
    await window.getByRole('combobox', { name: 'When' }).selectOption('every so much film');
    await window.getByRole('textbox', { name: 'Film (m)' }).fill('200');
    await window.getByRole('button', { name: 'Save' }).click();
    await expect(window.getByTestId('due-checks')).toContainText('Belt of the oven oiled');
    await window.getByRole('button', { name: 'Change: Blade sharp' }).click();
    await window.getByRole('button', { name: 'No longer done' }).click();
    await expect(window.getByTestId('due-checks')).not.toContainText('Blade sharp');
  });
});

test('a window that is opened as the minute turns tells the same as the room behind it', async ({ page }) => {
  const minute = new Date('2026-12-01T10:00:00');
  await page.clock.install({ time: minute });
  await openShop(page);
  await page.goto('./#/press');
  await expect(page.getByTestId('upkeep-due')).toBeVisible();
  // No timer has told the room of it yet.
  await page.clock.setSystemTime(new Date(minute.getTime() + 60_000));
  await page.getByTestId('upkeep-due').getByRole('button', { name: 'Maintenance' }).click();
  const window = page.getByRole('dialog', { name: 'Maintenance' });
  await window.getByRole('textbox', { name: 'Initials' }).fill('MK');
  await window.getByRole('button', { name: 'Done: White ink stirred or circulated' }).click();
  await expect(window.getByTestId('done-checks')).toContainText('White ink stirred or circulated');
});
