import type { Page } from '@playwright/test';
import { leaveWindows } from '../../../e2e/shop';
import { seededRandom } from '../../../src/units';
import { withBuiltApp } from '../built-app';
import { printTable } from '../table';
import { type Act, acts, type Chance } from './acts';
import { unsound } from './reckoning';
import { type Room, rooms } from './rooms';
import { readStored } from './stored';

/** What a walk is seen on, in pixels. */
const SCREEN = { width: 1440, height: 900 };

/** How long anything is waited for, in milliseconds: long, since the machine may have other work. */
const PATIENCE = 60_000;

const chanceOf = (seed: number): Chance => {
  const random = seededRandom(seed);
  const below = (bound: number) => Math.floor(random() * bound);
  return { below, of: (items) => items[below(items.length)] ?? items[0] };
};

/** One of the acts, as often as their weights say; every other time one of the room's own, as who is in a room does more than one there. */
function drawAct({ below }: Chance, present: string | null): Act {
  const own = acts.filter(({ room }) => room === present);
  const here = own.length > 0 && below(2) === 0 ? own : acts;
  let at = below(here.reduce((sum, { weight }) => sum + weight, 0));
  for (const act of here) {
    at -= act.weight;
    if (at < 0) return act;
  }
  throw new Error('no act is drawn');
}

/** Waits until everything is on the disk: long, since the machine may have other work. */
const kept = (page: Page) => page.locator('[data-testid=kept][data-saving=saved]').waitFor();

/** The room that is seen, by its name in the bar at the top. */
const roomOf = (page: Page): Promise<string | null> =>
  page.evaluate(() => document.querySelector('nav [aria-current=page]')?.textContent ?? null);

/** Goes to a room and waits until it is the one that is seen, as its code may still have to be fetched. */
async function goTo(page: Page, room: Room): Promise<void> {
  await leaveWindows(page);
  await page.getByRole('link', { name: room, exact: true }).click();
  await page.getByRole('main').getByRole('heading', { level: 1, name: room, exact: true }).waitFor();
}

/** What the room Orders shows at this moment, without what tells the time: each order with its transfers. One that is new stands first until the page is left, so the orders themselves are in no order here. */
const seenNow = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const orders: string[] = [];
    for (const line of document.querySelectorAll('.order-line')) {
      const text = (line.textContent ?? '').replaceAll(/\d\d:\d\d|…/g, '').replaceAll(/\s+/g, ' ');
      if (line.classList.contains('head-line')) orders.push(text);
      else if (text !== '') orders.push(`${orders.pop() ?? ''} | ${text}`);
    }
    return orders.toSorted().join('\n');
  });

/** What the room Orders shows once it is still: lines are drawn as the page finds that there is room for them. */
async function shown(page: Page): Promise<string> {
  for (let before: string | null = null; ; ) {
    // A page that nobody looks at learns of another size with its next frame, and may have none by itself.
    await page.evaluate(
      () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
    );
    const now = await seenNow(page);
    if (now === before) return now;
    before = now;
    await page.waitForTimeout(400);
  }
}

interface Walked {
  readonly done: number;
  /** Rooms compared with the book. */
  readonly compared: number;
  readonly by: ReadonlyMap<string, number>;
  readonly differences: readonly string[];
}

/** How long the screen is waited for before it is compared again, in milliseconds: what a worker finds out may still be on its way. */
const WAITS = [300, 1_000, 4_000];

/** What is wrong after an act, and stays so: in the book itself, or between it and the room. */
async function wrongNow(page: Page, room: Room): Promise<string[]> {
  const look = async () => {
    await kept(page);
    const stored = await readStored(page);
    return [...unsound(stored), ...(await rooms[room](page, stored))];
  };
  let wrong = await look();
  for (const wait of WAITS) {
    if (wrong.length === 0) break;
    await page.waitForTimeout(wait);
    wrong = await look();
  }
  return wrong;
}

/** Walks through the app by acts that a seed draws, and compares after each. Ends at the first difference: what follows it tells little. */
async function walk(page: Page, seed: number, steps: number, tell: (line: string) => void): Promise<Walked> {
  const chance = chanceOf(seed);
  const differences: string[] = [];
  const by = new Map<string, number>();
  let [done, compared] = [0, 0];
  page.on('pageerror', ({ message }) => differences.push(`exception: ${message}`));
  page.on('console', (message) => {
    if (message.type() === 'error') differences.push(`console: ${message.text()}`);
  });
  page.setDefaultTimeout(PATIENCE);
  await page.goto('./');
  await page.getByRole('button', { name: 'Start with my own orders' }).click();
  for (let tries = 0; done < steps && tries < 6 * steps && differences.length === 0; tries += 1) {
    await leaveWindows(page);
    const present = await roomOf(page);
    const { name, room, act } = drawAct(chance, present);
    try {
      if (present !== room) await goTo(page, room);
      const told = await act(page, chance);
      if (told === null) continue;
      done += 1;
      by.set(name, (by.get(name) ?? 0) + 1);
      tell(`${done} ${name}: ${told}`);
      differences.push(...(await wrongNow(page, room)));
      compared += 1;
      if (done % 25 === 0) {
        for (const each of Object.keys(rooms) as Room[]) {
          await goTo(page, each);
          differences.push(...(await wrongNow(page, each)));
          compared += 1;
        }
      }
      if (done % 25 === 24) {
        await goTo(page, 'Orders');
        const refused = (await page.locator('[aria-invalid=true]').count()) > 0;
        // High enough for all orders: the page holds only those that are near to what is seen.
        await page.setViewportSize({ ...SCREEN, height: 20_000 });
        const before = await shown(page);
        await page.reload();
        await page.getByRole('heading', { level: 1, name: 'Orders' }).waitFor();
        await kept(page);
        const after = await shown(page);
        await page.setViewportSize(SCREEN);
        // What was typed and refused stays in its field until the page is left.
        if (!refused && before !== after)
          differences.push(`a reload changes the orders:\n${before}\n${after}`);
      }
    } catch (error) {
      differences.push(
        `${name} came to no end: ${error instanceof Error ? error.message.split('\n', 30).join(' ') : error}`,
      );
    }
  }
  return { done, compared, by, differences };
}

/** Which walks are made: a seed each from the first one on, of so many acts. */
interface Walks {
  readonly first: number;
  readonly walks: number;
  readonly steps: number;
  /** Tell every act as it is done. */
  readonly trail: boolean;
}

/**
 * Random users of the built app: each makes acts in an order that a shop might, and after each of them what is on the screen is compared
 * with what the book says, worked out from the stored records alone.
 * @returns whether all agreed to their ends
 */
export async function walkAll({ first, walks, steps, trail }: Walks): Promise<boolean> {
  const lines: string[][] = [];
  let agreed = true;
  await withBuiltApp('Walks', async (_, browser, address) => {
    for (let seed = first; seed < first + walks; seed += 1) {
      const context = await browser.newContext({
        viewport: SCREEN,
        locale: 'en-GB',
        timezoneId: 'UTC',
        baseURL: address,
      });
      // The loader that runs this names functions by a helper that pages lack.
      await context.addInitScript('globalThis.__name = (value) => value');
      const acts: string[] = [];
      const began = performance.now();
      const { done, compared, by, differences } = await walk(await context.newPage(), seed, steps, (line) => {
        acts.push(line);
        if (trail) console.log(line);
      });
      if (differences.length > 0) {
        agreed = false;
        console.log(`Seed ${seed}, after ${[...acts.slice(-12), ...differences].join('\n  ')}`);
      }
      const took = `${((performance.now() - began) / 1000).toFixed(0)} s`;
      lines.push([seed, done, by.size, compared, took, differences.length].map(String));
      console.log(`Seed ${seed}: ${done} acts in ${took}, ${differences.length} differences.`);
      await context.close();
    }
  });
  printTable(
    'Walks of random users',
    ['seed', 'acts', 'kinds of acts', 'rooms compared', 'took', 'differences (target 0)'],
    lines,
  );
  return agreed;
}
