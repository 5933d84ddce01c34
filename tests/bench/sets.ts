import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type Instance, problemOf, readInstance } from './instance';
import { planFor } from './plan-for';
import { type Result, resultOf } from './result';
import { mean, printTable } from './table';

const FOLDER = new URL('../../../shared/benchmarks/', import.meta.url).pathname;

interface Known {
  readonly known?: { readonly bestLength?: number | null; readonly bestSheets?: number | null };
}

type Check = (
  instance: Instance,
  result: Result,
) => { readonly ok: boolean; readonly problems: readonly string[]; readonly gapPercent: number | null };

const sets = [
  { name: 'strips C (Hopper & Turton 2001)', folder: 'strip/C' },
  { name: 'perfect days', folder: 'perfect' },
  { name: 'shop days', folder: 'shop' },
  { name: 'sheets CLASS (Berkey & Wang 1987; Martello & Vigo 1998)', folder: 'bins/CLASS' },
];

const percent = (value: number) => `${value.toFixed(2)}%`;

/** Plans every instance of the published sets and prints a table per set. Every plan passes the independent checker, or it throws. */
export async function benchSets(seconds: number, seed: number): Promise<void> {
  if (!existsSync(FOLDER)) {
    console.log('No published instances: ../shared/benchmarks is missing, so no sets are run.');
    return;
  }
  const { checkPlan } = (await import(pathToFileURL(join(FOLDER, 'check-plan.mjs')).href)) as {
    checkPlan: Check;
  };
  for (const { name, folder } of sets) {
    const rows = readdirSync(join(FOLDER, folder))
      .filter((file) => file.endsWith('.json'))
      .map((file) => {
        const text = readFileSync(join(FOLDER, folder, file), 'utf8');
        const instance = readInstance(text);
        const { known }: Known = JSON.parse(text);
        const run = planFor(problemOf(instance), { seconds, seed });
        const result = resultOf(instance, run.plan, run.bound, seconds);
        const { ok, problems, gapPercent } = checkPlan(JSON.parse(text), result);
        if (!ok) throw new Error(`${file}: ${problems.join(' ')}`);
        const used = result.lengthUsed ?? result.sheetsUsed ?? 0;
        const best = known?.bestLength ?? known?.bestSheets ?? null;
        return {
          copies: result.placements.length,
          gap: best === null ? null : (gapPercent ?? 0),
          overBound: 100 * (used / (result.leastLength ?? result.leastSheets ?? used) - 1),
          firstMs: run.firstMs,
        };
      });
    const gaps = rows.flatMap(({ gap }) => (gap === null ? [] : [gap]));
    printTable(
      `${name}, ${seconds} s each on one core`,
      [
        'instances',
        'copies',
        'mean gap to best known',
        'at best known',
        'mean over our bound',
        'first layout',
        'slowest first',
      ],
      [
        [
          rows.length,
          rows.reduce((sum, { copies }) => sum + copies, 0),
          gaps.length > 0 ? percent(mean(gaps)) : 'unknown',
          gaps.length > 0 ? `${gaps.filter((gap) => gap < 1e-6).length} of ${gaps.length}` : 'unknown',
          percent(mean(rows.map(({ overBound }) => overBound))),
          `${mean(rows.map(({ firstMs }) => firstMs)).toFixed(1)} ms`,
          `${Math.max(...rows.map(({ firstMs }) => firstMs)).toFixed(1)} ms`,
        ],
      ],
    );
  }
}
