/** Builds `dist` if a source is newer than what was built last. */
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

const SOURCES = [
  'app',
  'src',
  'public',
  'index.html',
  'recovery.html',
  'vite.config.ts',
  'package-lock.json',
];

function newest(path) {
  const entry = statSync(path);
  if (!entry.isDirectory()) return entry.mtimeMs;
  return Math.max(entry.mtimeMs, ...readdirSync(path).map((name) => newest(join(path, name))));
}

export async function build() {
  const built = existsSync('dist/index.html') ? statSync('dist/index.html').mtimeMs : 0;
  if (built > Math.max(...SOURCES.map(newest))) return;
  const { build: viteBuild } = await import('vite');
  await viteBuild();
}

if (import.meta.url === pathToFileURL(process.argv[1]).href) await build();
