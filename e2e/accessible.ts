import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect } from './shop';

/**
 * Looks a page through by WCAG 2.2 AA.
 * @param where what a violation is told of
 * @param within a selector of the only part that is looked at
 */
export async function expectAccessible(page: Page, where: string, within?: string): Promise<void> {
  // The room behind a window is inert, and a window's edge may leave a strip of its buttons.
  const axe = new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
    .exclude('[inert]')
    // There are no frames of other origins, for which results are put together in a page of their own.
    .setLegacyMode();
  if (within !== undefined) axe.include(within);
  const { violations } = await axe.analyze();
  expect(
    violations.map(({ id, nodes }) => `${where}: ${id} ${nodes[0]?.html}`),
    where,
  ).toEqual([]);
}
