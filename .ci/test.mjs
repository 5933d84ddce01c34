/** `npm test`: type check, lint, structure, unit and end-to-end tests; ends with `N passed, N failed`. */
import { spawn } from 'node:child_process';
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

/** Runs a command of the packages; its output is shown as it comes, or in one piece when it has ended. */
function run(name, command, { env = {}, shown = 'as it comes' } = {}) {
  const started = Date.now();
  const isPiped = shown === 'at the end';
  if (!isPiped) console.log(`\n— ${name}`);
  return new Promise((resolve) => {
    const child = spawn('npx', ['--no-install', ...command], {
      stdio: isPiped ? ['ignore', 'pipe', 'pipe'] : 'inherit',
      shell: process.platform === 'win32',
      env: { ...process.env, ...env },
    });
    let output = '';
    const keep = (chunk) => {
      output += chunk;
    };
    child.stdout?.on('data', keep);
    child.stderr?.on('data', keep);
    child.on('error', keep);
    child.on('close', (status) => {
      if (isPiped) console.log(`\n— ${name}\n${output.trimEnd()}`);
      console.log(`  ${status === 0 ? 'ok' : 'FAILED'}, ${((Date.now() - started) / 1000).toFixed(1)} s`);
      resolve(status === 0);
    });
  });
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

/** What needs no browser and writes nothing, two at a time: each takes one core. */
const checks = [
  ...TYPE_CHECKS.map((project) => [`types: ${project}`, ['tsc', '-p', project]]),
  ['structure: arrows and cycles', ['depcruise', '--config', '.dependency-cruiser.cjs', 'app', 'src']],
  ['structure: unused files, exports, packages', ['knip']],
  ['lint and format', ['biome', 'check', '.']],
];
const lane = async () => {
  for (let next = checks.shift(); next; next = checks.shift()) {
    const [name, command] = next;
    tally(await run(name, command, { shown: 'at the end' }));
  }
};
await Promise.all([lane(), lane()]);
tallyReport(
  await run('unit tests', [
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
  await run('end-to-end tests', ['playwright', 'test', '--config', 'e2e/playwright.config.ts'], {
    env: { CHROMIUM: chromium, PLAYWRIGHT_JSON_OUTPUT_NAME: `../${REPORTS}/e2e.json` },
  }),
  counts('e2e.json', ({ stats }) => ({ passed: stats.expected + stats.flaky, failed: stats.unexpected })),
);

console.log(`\n${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 ? 1 : 0;
