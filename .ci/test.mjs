/** `npm test`: type check, lint, structure, unit and end-to-end tests; ends with `N passed, N failed`. */
import { spawn } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { installPackages } from './install.mjs';
import { typeChecks } from './types.mjs';

const REPORTS = '.cache/reports';
/** Properties draw the same cases each time, see tests/property-seed.ts. */
const PROPERTY_SEED = '20261128';

/** Runs a command; its output is shown as it comes, or in one piece when it has ended. */
function run(name, command, args, { env = {}, shown = 'as it comes' } = {}) {
  const started = Date.now();
  const isPiped = shown === 'at the end';
  if (!isPiped) console.log(`\n— ${name}`);
  return new Promise((resolve) => {
    const child = spawn(command, args, {
      stdio: isPiped ? ['ignore', 'pipe', 'pipe'] : 'inherit',
      // On Windows `npx` is a script of the shell.
      shell: process.platform === 'win32' && command === 'npx',
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

const ofPackages = (...args) => ['npx', ['--no-install', ...args]];

/** What takes one core and writes nothing that another reads, the longest first; the last builds what the browser is shown. */
const checks = [
  ...typeChecks.map(([name, args]) => [name, process.execPath, args]),
  ['structure: unused files, exports, packages', ...ofPackages('knip')],
  [
    'structure: arrows and cycles',
    ...ofPackages('depcruise', '--config', '.dependency-cruiser.cjs', 'app', 'src'),
  ],
  ['lint and format', ...ofPackages('biome', 'check', '.')],
  ['build', process.execPath, ['.ci/build.mjs']],
];
const lane = async () => {
  for (let next = checks.shift(); next; next = checks.shift()) {
    const [name, command, args] = next;
    tally(await run(name, command, args, { shown: 'at the end' }));
  }
};
const unit = async () => {
  const [command, args] = ofPackages(
    'vitest',
    'run',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${REPORTS}/unit.json`,
  );
  tallyReport(
    await run('unit tests', command, args, { env: { PROPERTY_SEED } }),
    counts('unit.json', (report) => ({ passed: report.numPassedTests, failed: report.numFailedTests })),
  );
};
/** Both cores are busy to the end: what ends first takes up what is left of the checks. */
await Promise.all([unit().then(lane), lane()]);
const { findChromium } = await import('./chromium.mjs');
const chromium = await findChromium();
tallyReport(
  await run('end-to-end tests', ...ofPackages('playwright', 'test', '--config', 'e2e/playwright.config.ts'), {
    env: { CHROMIUM: chromium, PLAYWRIGHT_JSON_OUTPUT_NAME: `../${REPORTS}/e2e.json` },
  }),
  counts('e2e.json', ({ stats }) => ({ passed: stats.expected + stats.flaky, failed: stats.unexpected })),
);

console.log(`\n${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 ? 1 : 0;
