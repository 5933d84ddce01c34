import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const ROOT = new URL('../..', import.meta.url).pathname;

/** The numbers of the rules that a user can feel, as the page for developers lists them. */
function listed(): number[] {
  const [, section = ''] = readFileSync(join(ROOT, 'DEVELOPERS.md'), 'utf8').split(
    /^## Rules a user can feel$/m,
  );
  return [...(section.split(/^## /m)[0] ?? '').matchAll(/^(\d+)\. /gm)].map(([, number]) => Number(number));
}

/** The numbers that titles of tests quote: `… (rule 7)`. */
function quoted(): Set<number> {
  const files = ['tests', 'e2e'].flatMap((folder) =>
    readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
      .filter((name) => /\.(test|spec)\.tsx?$/.test(name))
      .map((name) => join(ROOT, folder, name)),
  );
  const titles = files.flatMap((file) => [...readFileSync(file, 'utf8').matchAll(/\(rule (\d+)\)['`]/g)]);
  return new Set(titles.map(([, number]) => Number(number)));
}

describe('the rules that a user can feel', () => {
  it('are numbered from 1 on without a gap', () => {
    const numbers = listed();
    expect(numbers.length).toBeGreaterThan(0);
    expect(numbers).toEqual(numbers.map((_, index) => index + 1));
  });

  it('are each quoted by a test, which quotes no other', () => {
    expect([...quoted()].sort((a, b) => a - b)).toEqual(listed());
  });
});
