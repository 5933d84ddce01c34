/** Installs the packages if they are missing or the lock file has changed since. */
import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';

const STAMP = 'node_modules/.rollwright-lock';

export function installPackages() {
  const [major] = process.versions.node.split('.').map(Number);
  if (major < 20) {
    console.error(`Rollwright needs Node 20 or later; this is ${process.version}.`);
    process.exit(1);
  }
  const lock = createHash('sha256').update(readFileSync('package-lock.json')).digest('hex');
  if (existsSync(STAMP) && readFileSync(STAMP, 'utf8') === lock) return;
  execFileSync('npm', ['ci'], { stdio: 'inherit', shell: process.platform === 'win32' });
  mkdirSync('node_modules', { recursive: true });
  writeFileSync(STAMP, lock);
}
