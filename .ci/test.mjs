/** `npm test`: type check, lint, structure, unit and end-to-end tests; ends with `N passed, N failed`. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { installPackages } from './install.mjs';

const REPORTS = '.cache/reports';
const TYPE_CHECKS = [
  'tsconfig.json',
  'src/tsconfig.json',
  'src/tsconfig.browser.json',
  'src/tsconfig.worker.json',
  'app/tsconfig.json',
  'tests/tsconfig.json',
  'e2e/tsconfig.json',
];

function run(name, command, env = {}) {
  console.log(`\n— ${name}`);
  const started = Date.now();
  const { status } = spawnSync('npx', ['--no-install', ...command], {
    stdio: 'inherit',
    shell: process.platform === 'win32',
    env: { ...process.env, ...env },
  });
  console.log(`  ${status === 0 ? 'ok' : 'FAILED'}, ${((Date.now() - started) / 1000).toFixed(1)} s`);
  return status === 0;
}

/** Counts of a JSON report, `null` where the run left none. */
function counts(file, read) {
  try {
    return read(JSON.parse(readFileSync(`${REPORTS}/${file}`, 'utf8')));
  } catch {
    return null;
  }
}

installPackages();
rmSync(REPORTS, { recursive: true, force: true });
mkdirSync(REPORTS, { recursive: true });

let passed = 0;
let failed = 0;
const tally = (ok) => {
  if (ok) passed += 1;
  else failed += 1;
};
/** A run counts by its report; one that fails without a failed test counts as a failure of its own. */
const tallyReport = (ok, report) => {
  passed += report?.passed ?? 0;
  failed += report?.failed ?? 0;
  if (!report || (!ok && report.failed === 0)) failed += 1;
};

for (const project of TYPE_CHECKS) tally(run(`types: ${project}`, ['tsc', '-p', project]));
tally(run('lint and format', ['biome', 'check', '.']));
tally(
  run('structure: arrows and cycles', ['depcruise', '--config', '.dependency-cruiser.cjs', 'app', 'src']),
);
tally(run('structure: unused files, exports, packages', ['knip']));
tallyReport(
  run('unit tests', [
    'vitest',
    'run',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${REPORTS}/unit.json`,
  ]),
  counts('unit.json', (report) => ({ passed: report.numPassedTests, failed: report.numFailedTests })),
);
const { build } = await import('./build.mjs');
await build();
const { findChromium } = await import('./chromium.mjs');
const chromium = await findChromium();
tallyReport(
  run('end-to-end tests', ['playwright', 'test', '--config', 'e2e/playwright.config.ts'], {
    CHROMIUM: chromium,
    PLAYWRIGHT_JSON_OUTPUT_NAME: `../${REPORTS}/e2e.json`,
  }),
  counts('e2e.json', ({ stats }) => ({ passed: stats.expected + stats.flaky, failed: stats.unexpected })),
);

console.log(`\n${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 ? 1 : 0;
