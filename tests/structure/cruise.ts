import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';

export const ROOT = resolve(import.meta.dirname, '../..');

const CONFIG = '.dependency-cruiser.cjs';

/** An import that a rule forbids, by the paths of its files. */
export interface Violation {
  readonly rule: string;
  readonly from: string;
  readonly to: string;
}

/** Of what the structure check writes as JSON, what is read here. */
interface Written {
  readonly summary: {
    readonly violations: readonly {
      readonly rule: { readonly name: string };
      readonly from: string;
      readonly to: string;
    }[];
  };
}

function violationsIn(folder: string): Violation[] {
  const command = join(ROOT, 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs');
  const { stdout, stderr } = spawnSync(
    process.execPath,
    [command, '--config', CONFIG, '--output-type', 'json', 'app', 'src'],
    { cwd: folder, encoding: 'utf8', maxBuffer: 2 ** 26 },
  );
  if (stderr !== '') throw new Error(stderr);
  const { summary }: Written = JSON.parse(stdout);
  return summary.violations.map(({ rule, from, to }) => ({ rule: rule.name, from, to }));
}

/** What each planted file holds, by its path. */
export type Planted = Readonly<Record<string, string>>;

/** What the project's own rules forbid in a tree of nothing but the planted files. */
export function violationsOf(planted: Planted): Violation[] {
  const folder = mkdtempSync(join(tmpdir(), 'arrows-'));
  const files: Planted = {
    'package.json': '{ "type": "module" }',
    [CONFIG]: readFileSync(join(ROOT, CONFIG), 'utf8'),
    ...planted,
  };
  try {
    for (const [path, text] of Object.entries(files)) {
      mkdirSync(dirname(join(folder, path)), { recursive: true });
      writeFileSync(join(folder, path), text);
    }
    symlinkSync(join(ROOT, 'node_modules'), join(folder, 'node_modules'));
    return violationsIn(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
