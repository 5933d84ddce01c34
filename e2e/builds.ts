import { createHash } from 'node:crypto';
import { cpSync, readdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { extname, join } from 'node:path';

const BUILT = new URL('../dist', import.meta.url).pathname;

/** What of a build names other files of it. */
const TEXTS = new Set(['.html', '.js', '.css']);

/** Puts the built app into a folder. */
export const putBuild = (folder: string): void => cpSync(BUILT, folder, { recursive: true });

const namesOf = (folder: string): string[] => readdirSync(join(folder, 'assets'));

/** The next name of a file that is named by its content: another hash of the same length. */
const nextName = (name: string): string =>
  name.replace(
    /-([\w-]{8})(?=\.\w+$)/,
    (_, hash: string) => `-${hash.startsWith('2') ? 3 : 2}${hash.slice(1)}`,
  );

const isText = (file: string): boolean => TEXTS.has(extname(file));

/** How the list of what is kept for work without a network tells a file's content. */
const told = (content: string): readonly string[] => [
  createHash('sha256').update(content).digest('base64'),
  createHash('md5').update(content).digest('hex'),
];

/**
 * Replaces the build in a folder by another, as whoever serves the app does: every script and style has another name, so that
 * those of the build before are gone, and the page is called `Rollwright 2`.
 */
export function putNextBuild(folder: string): void {
  const names = namesOf(folder).filter(isText);
  const renamed = new Map(names.map((name) => [name, nextName(name)]));
  const next = (text: string) =>
    text
      .replace(/[\w.-]+-[\w-]{8}\.\w+/g, (name) => renamed.get(name) ?? name)
      .replace('<title>Rollwright</title>', '<title>Rollwright 2</title>');
  let worker = next(readFileSync(join(folder, 'sw.js'), 'utf8'));
  for (const file of ['index.html', 'recovery.html', ...names.map((name) => join('assets', name))]) {
    const before = readFileSync(join(folder, file), 'utf8');
    const after = next(before);
    writeFileSync(join(folder, file), after);
    const now = told(after);
    for (const [at, digest] of told(before).entries()) worker = worker.replaceAll(digest, now[at] ?? digest);
  }
  for (const [name, to] of renamed) renameSync(join(folder, 'assets', name), join(folder, 'assets', to));
  writeFileSync(join(folder, 'sw.js'), worker);
}

/** Writes part of a file only, as a copy does that was broken off; the function that is returned mends it. */
export function cutOff(folder: string, start: string): () => void {
  const name = namesOf(folder).find((each) => each.startsWith(start) && each.endsWith('.js'));
  if (!name) throw new Error(`no ${start} in the build`);
  const file = join(folder, 'assets', name);
  const whole = readFileSync(file);
  writeFileSync(file, whole.subarray(0, whole.length / 2));
  return () => writeFileSync(file, whole);
}
