import { spawnSync } from 'node:child_process';

/** What is taken in from outside, each held against damage of any kind. */
const tests = [
  'tests/output/any-damage.test.ts',
  'tests/hand-over/any-damage.test.ts',
  'tests/artwork/any-bytes.test.ts',
];

/** Runs the tests that damage what is taken in, with so many cases each; the first that fails is told with its seed. */
export function benchFuzz(cases: number): void {
  console.log(`\nDamage to backups, hand-overs, codes and images: ${cases} cases each.`);
  spawnSync('npx', ['vitest', 'run', ...tests, '--testTimeout=0'], {
    stdio: 'inherit',
    env: { ...process.env, DAMAGE_CASES: String(cases) },
  });
}
