import { readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { describe, expect, it } from 'vitest';
import { knots } from './components';
import { ROOT } from './cruise';

describe('the folders of app and src', () => {
  it('never know each other both ways', () => {
    const files = ['app', 'src'].flatMap((house) =>
      readdirSync(join(ROOT, house), { recursive: true, encoding: 'utf8' })
        .filter((file) => /\.tsx?$/.test(file))
        .map((file) => `${house}/${file.replaceAll(sep, '/')}`),
    );
    const texts = Object.fromEntries(files.map((file) => [file, readFileSync(join(ROOT, file), 'utf8')]));
    expect(files.length).toBeGreaterThan(100);
    expect(knots(texts)).toEqual([]);
  });

  it.each<{ name: string; files: Record<string, string>; found: string[] }>([
    {
      name: 'one and another within it',
      files: {
        'app/film/Room.tsx': "const canvas = lazy(() => import('./canvas/canvas'));",
        'app/film/canvas/paint.ts': "import { drag } from '../drag';",
      },
      found: ['app/film <-> app/film/canvas'],
    },
    {
      name: 'three in a ring, by an index and by types',
      files: {
        'src/a/index.ts': "export { two } from '../b/two';",
        'src/b/two.ts': "import type { Three } from '../c';",
        'src/c/index.ts': "export type { One } from '../a';",
      },
      found: ['src/a <-> src/b', 'src/a <-> src/c', 'src/b <-> src/c'],
    },
    {
      name: 'none where all arrows go one way',
      files: {
        'src/a/one.ts': "import { two } from '../b/two';\nimport { three } from './c/three';",
        'src/a/c/three.ts': "import { two } from '../../b/two';\nimport { four } from './four';",
      },
      found: [],
    },
  ])('are found out: $name', ({ files, found }) => {
    expect(knots(files).toSorted()).toEqual(found);
  });
});
