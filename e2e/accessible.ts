import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect } from './shop';

/** The looks that a page has, and those of axe's rules that can turn out otherwise in each. */
const MEDIA = {
  light: { colorScheme: 'light', forcedColors: 'none' },
  dark: { colorScheme: 'dark', forcedColors: 'none' },
  forced: { colorScheme: 'light', forcedColors: 'active' },
} as const;
const COLOUR_RULES = ['color-contrast', 'link-in-text-block'];

/**
 * Looks a page through by WCAG 2.2 AA: as a whole in light colours, then its colours in others.
 * @param where what a violation is told of
 * @param within a selector of the only part that is looked at
 */
export async function expectAccessible(
  page: Page,
  where: string,
  { within, others = ['dark'] }: { within?: string; others?: readonly ('dark' | 'forced')[] } = {},
): Promise<void> {
  for (const look of ['light', ...others] as const) {
    await page.emulateMedia(MEDIA[look]);
    const axe = new AxeBuilder({ page })
      // What passes need not be told node by node.
      .options({ resultTypes: ['violations'] })
      // The room behind a window is inert, and a window's edge may leave a strip of its buttons.
      .exclude('[inert]')
      // There are no frames of other origins, for which results are put together in a page of their own.
      .setLegacyMode();
    if (look === 'light') axe.withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']);
    else axe.withRules(COLOUR_RULES);
    if (within !== undefined) axe.include(within);
    const { violations } = await axe.analyze();
    expect(
      violations.map(({ id, nodes }) => `${where}, ${look}: ${id} ${nodes[0]?.html}`),
      where,
    ).toEqual([]);
  }
  await page.emulateMedia(MEDIA.light);
}
