import { seededRandom } from '../src/units';
import { ADDRESS } from './addresses';
import { type Beginnings, killDuring, makeBeginnings, sinces } from './kills/kill';
import { moments } from './kills/moments';
import { expect, test } from './shop';
import { desktop } from './states';

/** Twenty kills in all; the bench makes more. */
const SEEDS = [1, 2];

// In one worker, what they begin with is made once.
test.describe.configure({ mode: 'default' });

let beginnings: Beginnings;

test.beforeAll(async ({ browser }) => {
  beginnings = await makeBeginnings(() => browser.newContext({ ...desktop, baseURL: ADDRESS }));
});

const cases = Object.entries(moments).flatMap(([name, moment]) =>
  sinces.flatMap((since) => SEEDS.map((seed) => ({ name, moment, since, seed }))),
);

for (const { name, moment, since, seed } of cases)
  test(`a page that is killed ${name}, since ${since}, leaves a whole book with all that was said to be saved (seed ${seed})`, async ({
    browser,
  }) => {
    const storageState = beginnings[moment.from].kept;
    const context = await browser.newContext({ ...desktop, storageState, baseURL: ADDRESS });
    const { wrong } = await killDuring(moment, since, beginnings, context, seededRandom(seed));
    await context.close();
    expect(wrong).toEqual([]);
  });
