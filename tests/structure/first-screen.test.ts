import { existsSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { describe, expect, it } from 'vitest';
import { BOOK, DATABASES, SNAPSHOTS } from '../../app/recovery/stores';
import { databases } from '../../src/storage/names';
import { ROOT } from './cruise';

/** Imports and exports of values from a module of our own, at the head of a file; types leave nothing behind. */
const STATIC = /^(?:import|export) (?!type\b)(?:[^;]*? from )?'(\.[^']+)';/gm;

function fileOf(from: string, name: string): string | undefined {
  const path = join(dirname(from), name);
  return [`${path}.ts`, `${path}.tsx`, join(path, 'index.ts')].find(existsSync);
}

/** The files of the app that a file begins with, itself included. */
function beginsWith(file: string, seen = new Set<string>()): ReadonlySet<string> {
  if (seen.has(file)) return seen;
  seen.add(file);
  for (const [, name = ''] of readFileSync(file, 'utf8').matchAll(STATIC)) {
    const next = fileOf(file, name);
    if (next?.startsWith(join(ROOT, 'app'))) beginsWith(next, seen);
  }
  return seen;
}

describe('the first screen', () => {
  const files = [...beginsWith(join(ROOT, 'app/main.tsx'))].map((file) => relative(ROOT, file));

  it('is the frame and the Film room', () => {
    expect(files).toEqual(expect.arrayContaining(['app/shell/App.tsx', 'app/film/FilmRoom.tsx']));
    expect(
      files.filter((file) => /^app\/(orders|press|costs|stock|log|pricing|cut|hand-over)\//.test(file)),
    ).toEqual([]);
  });

  it('has none of the words that come with other parts of the app', () => {
    const asking = files.filter(
      (file) =>
        file !== 'app/words/index.ts' &&
        file !== 'app/offline/part.ts' &&
        /\b(useAllWords|allWordsNow|useWordsOf)\(/.test(readFileSync(join(ROOT, file), 'utf8')),
    );
    expect(asking).toEqual([]);
    expect(files.filter((file) => /^app\/words\/(en\/more|es)/.test(file))).toEqual([]);
  });
});

describe('the recovery page', () => {
  it('needs nothing of the app but its words', () => {
    const files = [...beginsWith(join(ROOT, 'app/recovery/main.ts'))].map((file) => relative(ROOT, file));
    const others = files.filter((file) => !file.startsWith('app/recovery/'));
    expect(others.sort()).toEqual(['app/words/en/recovery.ts', 'app/words/es/recovery.ts']);
    for (const file of files)
      expect(readFileSync(join(ROOT, file), 'utf8')).not.toMatch(/from '(?!\.)|from '(?:\.\.\/)+src/);
  });

  it('knows every database of the app', () => {
    const stored = Object.values(databases).flatMap((names) => Object.values(names));
    expect(DATABASES).toEqual(expect.arrayContaining(stored));
    expect([BOOK, SNAPSHOTS]).toEqual([databases.shop.book, databases.shop.snapshots]);
  });
});
