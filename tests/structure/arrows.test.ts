import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';

const ROOT = resolve(import.meta.dirname, '../..');

/** What each planted file holds, by its path; a tree of nothing else, checked by the project's own rules. */
type Planted = Readonly<Record<string, string>>;

let folder = '';

function check(planted: Planted): { status: number | null; output: string } {
  folder = mkdtempSync(join(tmpdir(), 'arrows-'));
  const files: Planted = {
    'package.json': '{ "type": "module" }',
    '.dependency-cruiser.cjs': readFileSync(join(ROOT, '.dependency-cruiser.cjs'), 'utf8'),
    ...planted,
  };
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  symlinkSync(join(ROOT, 'node_modules'), join(folder, 'node_modules'));
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [
      join(ROOT, 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs'),
      '--config',
      '.dependency-cruiser.cjs',
      'app',
      'src',
    ],
    { cwd: folder, encoding: 'utf8' },
  );
  return { status, output: stdout + stderr };
}

afterEach(() => rmSync(folder, { recursive: true, force: true }));

describe('the structure check', () => {
  it('passes a tree whose arrows are allowed', () => {
    const { status, output } = check({
      'src/units/length.ts': 'export const length = 1;\n',
      'src/packing/engine.ts': "import { length } from '../units/length';\nexport const engine = length;\n",
      'app/main.ts': "import { engine } from '../src/packing/engine';\nconsole.warn(engine);\n",
    });
    expect(output).toContain('no dependency violations found');
    expect(status).toBe(0);
  });

  it.each<{ rule: string; planted: Planted }>([
    {
      rule: 'src-knows-no-app',
      planted: {
        'app/view.ts': 'export type View = 1;\n',
        'src/units/bad.ts': "import type { View } from '../../app/view';\nexport type Bad = View;\n",
      },
    },
    {
      rule: 'packing-knows-units-only',
      planted: {
        'app/main.ts': "import { bad } from '../src/packing/bad';\nconsole.warn(bad);\n",
        'src/model/book.ts': 'export const book = 1;\n',
        'src/packing/bad.ts': "import { book } from '../model/book';\nexport const bad = book;\n",
      },
    },
    {
      rule: 'workers-stand-on-the-ground',
      planted: {
        'app/main.ts': "import { bad } from '../src/workers/browser/bad';\nconsole.warn(bad);\n",
        'src/units/length.ts': 'export const length = 1;\n',
        'src/workers/browser/bad.ts':
          "import { length } from '../../units/length';\nexport const bad = length;\n",
      },
    },
    {
      rule: 'storage-knows-the-model-only',
      planted: {
        'app/main.ts': "import { bad } from '../src/storage/bad';\nconsole.warn(bad);\n",
        'src/packing/engine.ts': 'export const engine = 1;\n',
        'src/storage/bad.ts': "import { engine } from '../packing/engine';\nexport const bad = engine;\n",
      },
    },
    {
      rule: 'no-cycles',
      planted: {
        'app/a.ts': "import { b } from './b';\nexport const a = () => b;\n",
        'app/b.ts': "import { a } from './a';\nexport const b = () => a;\n",
      },
    },
    {
      rule: 'pure-code-knows-no-browser-code',
      planted: {
        'app/main.ts': "import { bad } from '../src/artwork/bad';\nconsole.warn(bad);\n",
        'src/artwork/browser/draw.ts': 'export const draw = 1;\n',
        'src/artwork/bad.ts': "import { draw } from './browser/draw';\nexport const bad = draw;\n",
      },
    },
  ])('catches a planted import against $rule', ({ rule, planted }) => {
    const { status, output } = check({ 'src/units/ground.ts': 'export const ground = 1;\n', ...planted });
    expect(output).toContain(`error ${rule}:`);
    expect(status).not.toBe(0);
  });
});
