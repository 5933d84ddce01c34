import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import axe from 'axe-core';
import { expect } from './shop';

const STANDARD = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
/** Those of axe's rules that turn out otherwise in other colours; `tests/app/colours.test.ts` holds the colours themselves. */
const COLOUR_RULES = ['color-contrast', 'link-in-text-block'];

/** The looks that a page has. */
const LOOKS = {
  light: { colorScheme: 'light', forcedColors: 'none' },
  dark: { colorScheme: 'dark', forcedColors: 'none' },
  forced: { colorScheme: 'light', forcedColors: 'active' },
} as const;

/** More than a megabyte, which the builder would send three times a look: each document is given it once. */
async function layAxe(page: Page): Promise<void> {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(axe.source);
}

/** In its place, a script that does nothing. */
const IS_THERE = '0';

const wholePage = (page: Page): AxeBuilder =>
  new AxeBuilder({ page, axeSource: IS_THERE })
    // What passes need not be told node by node.
    .options({ resultTypes: ['violations'] })
    // There are no frames of other origins, for which results are put together in a page of their own.
    .setLegacyMode();

const builder = (page: Page): AxeBuilder =>
  wholePage(page)
    // The room behind a window is inert, and a window's edge may leave a strip of its buttons.
    .exclude('[inert]')
    // Rows of one table are made alike.
    .exclude('tbody > tr:nth-child(n + 7)');

async function expectNone(page: Page, looking: AxeBuilder, where: string): Promise<void> {
  await layAxe(page);
  const { violations } = await looking.analyze();
  // What else there is on a walk is told too.
  expect
    .soft(
      violations.map(({ id, nodes }) => `${where}: ${id} ${nodes[0]?.html}`),
      where,
    )
    .toEqual([]);
}

/**
 * Looks a page through by WCAG 2.2 AA, all but its colours.
 * @param where what a violation is told of
 * @param within a selector of the only part that is looked at
 */
export async function expectAccessible(
  page: Page,
  where: string,
  { within }: { within?: string } = {},
): Promise<void> {
  const looking = builder(page).withTags(STANDARD).disableRules(COLOUR_RULES);
  if (within !== undefined) looking.include(within);
  await expectNone(page, looking, where);
}

/** Looks all of a page through by all that is known of good pages, in the look that it has. */
export const expectWellMade = (page: Page, where: string): Promise<void> =>
  expectNone(page, wholePage(page), where);

/** Looks through the colours of a page in some looks. */
export async function expectReadable(
  page: Page,
  where: string,
  looks: readonly (keyof typeof LOOKS)[],
): Promise<void> {
  for (const look of looks) {
    await page.emulateMedia(LOOKS[look]);
    await expectNone(page, builder(page).withRules(COLOUR_RULES), `${where}, ${look}`);
  }
  await page.emulateMedia(LOOKS.light);
}
