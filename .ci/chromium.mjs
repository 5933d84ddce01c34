/** Finds a Chromium for the browser tests: the system's, else the test tool's download, else the distribution's package. */
import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

/** The shell without a window does the same work in two thirds of the processor's time. */
const NAMES = [
  'chromium-headless-shell',
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
];

const onPath = () =>
  (process.env.PATH ?? '')
    .split(delimiter)
    .flatMap((folder) => NAMES.map((name) => join(folder, name)))
    .find((file) => existsSync(file));

function attempt(command, args) {
  try {
    execFileSync(command, args, { stdio: 'inherit', shell: process.platform === 'win32' });
    return true;
  } catch {
    return false;
  }
}

async function downloaded() {
  const { chromium } = await import('@playwright/test');
  return existsSync(chromium.executablePath()) ? chromium.executablePath() : undefined;
}

/** @returns {Promise<string>} the path of a Chromium that can be started */
export async function findChromium() {
  const there = process.env.CHROMIUM ?? onPath() ?? (await downloaded());
  if (there) return there;
  if (attempt('npx', ['playwright', 'install', 'chromium'])) {
    const fetched = await downloaded();
    if (fetched) return fetched;
  }
  if (process.getuid?.() === 0 && attempt('apt-get', ['update', '-qq'])) {
    const install = ['install', '-y', '-qq', '--no-install-recommends'];
    if (!attempt('apt-get', [...install, 'chromium-headless-shell']))
      attempt('apt-get', [...install, 'chromium']);
  }
  const installed = onPath();
  if (installed) return installed;
  throw new Error(
    'No Chromium was found and none could be installed. Install Chromium and run npm test again.',
  );
}
