/** `npm run typecheck`: checks the types of every part, each for where it runs. */
import { spawnSync } from 'node:child_process';
import { pathToFileURL } from 'node:url';

/** The native compiler, under a name of its own: other tools read the syntax tree of the `typescript` package. */
const COMPILER = 'node_modules/typescript-native/bin/tsc';

const PROJECTS = [
  'tsconfig.json',
  'src/tsconfig.json',
  'src/tsconfig.browser.json',
  'src/tsconfig.worker.json',
  'app/tsconfig.json',
  'app/tsconfig.worker.json',
  'tests/tsconfig.json',
  'e2e/tsconfig.json',
];

/** A name and the arguments to Node of each type check. */
export const typeChecks = PROJECTS.map((project) => [`types: ${project}`, [COMPILER, '-p', project]]);

if (import.meta.url === pathToFileURL(process.argv[1]).href) {
  for (const [, args] of typeChecks) {
    const { status } = spawnSync(process.execPath, args, { stdio: 'inherit' });
    if (status !== 0) process.exitCode = 1;
  }
}
