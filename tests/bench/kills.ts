import { killDuring, makeBeginnings, sinces } from '../../e2e/kills/kill';
import { moments } from '../../e2e/kills/moments';
import { desktop } from '../../e2e/states';
import { seededRandom } from '../../src/units';
import { withBuiltApp } from './built-app';
import { printTable } from './table';

/** Kills the page of the built app at moments that a seed draws, in each kind of work in turn, and reads what is stored past the app. */
export async function benchKills(kills: number, seed: number): Promise<void> {
  const random = seededRandom(seed);
  const kinds = Object.entries(moments).flatMap(([name, moment]) =>
    sinces.map((since) => ({ name, moment, since, said: new Map<string, number>(), wrong: 0 })),
  );
  await withBuiltApp('Kills', async (_, browser, baseURL) => {
    const newContext = async (storageState?: Awaited<ReturnType<typeof makeBeginnings>>['shop']['kept']) => {
      const context = await browser.newContext({
        ...desktop,
        baseURL,
        ...(storageState && { storageState }),
      });
      // The loader that runs this names functions by a helper that pages lack.
      await context.addInitScript('globalThis.__name = (value) => value');
      return context;
    };
    const beginnings = await makeBeginnings(newContext);
    for (let kill = 0; kill < kills; kill += 1) {
      const kind = kinds[kill % kinds.length];
      if (!kind) break;
      const context = await newContext(beginnings[kind.moment.from].kept);
      const { wrong, said } = await killDuring(kind.moment, kind.since, beginnings, context, random);
      await context.close();
      kind.said.set(said, (kind.said.get(said) ?? 0) + 1);
      kind.wrong += wrong.length > 0 ? 1 : 0;
      for (const what of wrong) console.log(`  kill ${kill} ${kind.name}: ${what}`);
    }
  });
  printTable(
    `Kills of the page, seed ${seed}`,
    ['killed', 'since', 'kills', 'what was said to be saved by then, and how often', 'wrong (target 0)'],
    kinds.map(({ name, since, said, wrong }) => {
      const counts = [...said.values()];
      const told = [...said].map(([what, count]) => `${what} ${count}`).join(', ');
      return [name, since, `${counts.reduce((sum, count) => sum + count, 0)}`, told, `${wrong}`];
    }),
  );
}
