/**
 * The engine without the app: one instance in, its plan as JSON out, or one sentence that says what is wrong.
 */
import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { validatePlan } from '../../src/packing';
import { type OutlineResult, planOutlines } from './headless-outlines';
import { problemOf, readInstance, readJson } from './instance';
import { readOutlines } from './outline-instance';
import { misfit, planFor } from './plan-for';
import { type Result, resultOf } from './result';

const USAGE = 'Use: npm run --silent headless -- INSTANCE.json --seconds S [--seed N]';

function readArguments(args: readonly string[]): { file: string; seconds: number; seed: number } {
  const { values, positionals } = parseArgs({
    args: [...args],
    options: { seconds: { type: 'string' }, seed: { type: 'string', default: '1' } },
    allowPositionals: true,
  });
  const [file] = positionals;
  const [seconds, seed] = [Number(values.seconds), Number(values.seed)];
  if (file === undefined || positionals.length > 1) throw new Error(USAGE);
  if (!Number.isFinite(seconds) || seconds < 0)
    throw new Error(`--seconds takes a number from 0 on. ${USAGE}`);
  if (!Number.isInteger(seed)) throw new Error(`--seed takes a whole number. ${USAGE}`);
  return { file, seconds, seed };
}

function read(file: string): string {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    throw new Error(`${file} cannot be read.`);
  }
}

/**
 * Plans the instance that the arguments of the command name.
 * @throws an error of one sentence: a bad argument or instance, or a piece that fits no film
 */
export function headless(args: readonly string[]): Result | OutlineResult {
  const { file, seconds, seed } = readArguments(args);
  const value = readJson(read(file));
  const outlines = readOutlines(value);
  if (outlines) return planOutlines(outlines, seconds, seed);
  const instance = readInstance(value);
  const problem = problemOf(instance);
  const sentence = misfit(problem);
  if (sentence !== null) throw new Error(sentence);
  const began = performance.now();
  const { plan, bound } = planFor(problem, { seconds, seed });
  const [wrong] = validatePlan(problem, plan);
  if (wrong) throw new Error(`The plan failed its own check (${wrong.code}), so it is not printed.`);
  return resultOf(instance, plan, bound, (performance.now() - began) / 1000);
}
