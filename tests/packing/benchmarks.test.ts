import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { createPlanner } from '../../src/packing';
import { type Instance, problemOf, readInstance, readJson } from '../bench/instance';
import { type Result, resultOf } from '../bench/result';

/** Published data and a checker that shares no code with the engine; not part of the product. */
const FOLDER = new URL('../../../shared/benchmarks/', import.meta.url).pathname;
const there = existsSync(FOLDER);

type Check = (instance: Instance, result: Result) => { ok: boolean; problems: string[] };

const instanceFiles = (folder: string): string[] =>
  readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter(
      (entry) => entry.isFile() && entry.name.endsWith('.json') && !entry.parentPath.endsWith('irregular'),
    )
    .map((entry) => join(entry.parentPath, entry.name));

/** Layouts built for each instance: what is checked is that plans hold, not how good they are. */
const LAYOUTS = 120;

const files = there ? instanceFiles(FOLDER) : [];

describe.skipIf(!there)('plans of published instances', () => {
  // Skipped, and counted as skipped, where the instances are not beside the project.
  it('are made of every set that is beside the project', () => {
    expect(files.length).toBeGreaterThan(0);
  });

  it.each(files.map((file) => [file.slice(FOLDER.length), file]))(
    '%s passes the independent checker',
    async (_, file) => {
      const { checkPlan } = (await import(pathToFileURL(join(FOLDER, 'check-plan.mjs')).href)) as {
        checkPlan: Check;
      };
      const text = readFileSync(file, 'utf8');
      const instance = readInstance(readJson(text));
      const planner = createPlanner(problemOf(instance), 1);
      planner.step(LAYOUTS);
      const result = resultOf(instance, planner.best(), planner.bound, 0);
      expect(checkPlan(JSON.parse(text), result)).toMatchObject({ ok: true, problems: [] });
    },
  );
});
