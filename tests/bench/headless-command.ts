/**
 *   npm run --silent headless -- INSTANCE.json --seconds S [--seed N]
 *
 * prints the result as JSON and nothing else; what is wrong is told in one sentence on stderr and ends with code 2.
 */
import { headless } from './headless';

try {
  process.stdout.write(`${JSON.stringify(headless(process.argv.slice(2)))}\n`);
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = 2;
}
