import type { BrowserContext } from '@playwright/test';

/**
 * Lets what a test fills in come as typed: in Firefox the test tool sets the value of a field by itself, which React takes for its own
 * doing.
 */
export async function typeAsKeysDo(context: BrowserContext): Promise<void> {
  if (context.browser()?.browserType().name() !== 'firefox') return;
  await context.addInitScript(() => {
    Object.defineProperty(window, '__pw_bidiInsertText', {
      get: () => (text: string) => {
        document.execCommand('insertText', false, text);
      },
      set: () => undefined,
    });
  });
}
