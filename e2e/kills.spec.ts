import { test as base, expect } from '@playwright/test';
import { seededRandom } from '../src/units';
import { ADDRESS } from './addresses';
import { type Beginnings, killDuring, makeBeginnings } from './kills/kill';
import { moments } from './kills/moments';
import { desktop } from './states';

/** Twenty in all; the bench makes more. */
const KILLS_EACH = 4;

const test = base.extend<object, { readonly beginnings: Beginnings }>({
  beginnings: [
    async ({ browser }, use) =>
      use(await makeBeginnings(() => browser.newContext({ ...desktop, baseURL: ADDRESS }))),
    { scope: 'worker', timeout: 120_000 },
  ],
});

for (const [name, moment] of Object.entries(moments))
  for (let seed = 1; seed <= KILLS_EACH; seed += 1)
    test(`a page that is killed ${name} leaves a whole book, with all that was said to be saved (seed ${seed})`, async ({
      beginnings,
      browser,
    }) => {
      const storageState = beginnings[moment.from].kept;
      const context = await browser.newContext({ ...desktop, storageState, baseURL: ADDRESS });
      const { wrong } = await killDuring(moment, beginnings, context, seededRandom(seed));
      await context.close();
      expect(wrong).toEqual([]);
    });
