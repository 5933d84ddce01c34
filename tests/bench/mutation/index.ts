import { fileURLToPath } from 'node:url';
import type { MutantResult } from '@stryker-mutator/api/core';
import { Stryker } from '@stryker-mutator/core';
import { printTable } from '../table';

const FOLDERS = ['packing', 'editing', 'costing', 'pressing'] as const;

/** What never ends is noticed by the clock, and so may be what is only slow on a busy machine: they are counted apart. */
const isEndless = ({ status }: MutantResult): boolean => status === 'Timeout';
const isKilled = (mutant: MutantResult): boolean => mutant.status === 'Killed' || isEndless(mutant);
const isAlive = ({ status }: MutantResult): boolean => status === 'Survived' || status === 'NoCoverage';

/** Changes the code of a folder in small ways and runs the folder's own tests on each. */
async function mutate(folder: string): Promise<readonly MutantResult[]> {
  process.env.MUTATION_FOLDER = folder;
  const stryker = new Stryker({
    mutate: [`src/${folder}/**/*.ts`, '!src/**/browser/**', '!src/**/index.ts'],
    testRunner: 'vitest',
    vitest: { configFile: 'tests/bench/mutation/vitest.config.ts', related: false },
    plugins: ['@stryker-mutator/vitest-runner', fileURLToPath(new URL('./sample.mjs', import.meta.url))],
    ignorers: ['sample'],
    coverageAnalysis: 'perTest',
    // What runs once at import is reached by every test: hours of work for constants.
    ignoreStatic: true,
    concurrency: 2,
    // A busy machine must not pass for a change that never ends.
    timeoutMS: 60_000,
    reporters: ['progress'],
    tempDirName: '.cache/mutation',
    ignorePatterns: ['dist', 'e2e', 'public', '.cache', '../shared'],
    allowConsoleColors: false,
  });
  return stryker.runMutationTest();
}

/**
 * How many of the small changes made to the code the tests notice, by folder: the score is what was noticed of all that were
 * made, those that no test reaches included.
 */
export async function benchMutation(folders: readonly string[] = FOLDERS): Promise<void> {
  const rows: (string | number)[][] = [];
  const survivors: string[] = [];
  for (const folder of folders) {
    const mutants = await mutate(folder);
    const killed = mutants.filter(isKilled).length;
    const alive = mutants.filter(isAlive);
    const score = (100 * killed) / Math.max(1, killed + alive.length);
    const endless = mutants.filter(isEndless).length;
    rows.push([`src/${folder}`, killed + alive.length, killed, endless, `${score.toFixed(1)}%`]);
    for (const { fileName, location, replacement, status } of alive) {
      const place = `${fileName}:${location.start.line}:${location.start.column + 1}`;
      survivors.push(`${place} ${status} ${(replacement ?? '').replaceAll(/\s+/g, ' ').slice(0, 80)}`);
    }
  }
  console.log(survivors.join('\n'));
  printTable(
    `Mutants noticed by the tests (share ${process.env.MUTATION_SHARE ?? 1}, seed ${process.env.MUTATION_SEED ?? 1})`,
    ['folder', 'mutants', 'noticed', 'of them endless', 'score'],
    rows,
  );
}
