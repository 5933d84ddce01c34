import { readFileSync } from 'node:fs';
import type { Browser } from '@playwright/test';

/** The processes that draw pages; one of them is idle in reserve. */
export async function renderersOf(browser: Browser): Promise<number[]> {
  const session = await browser.newBrowserCDPSession();
  const { processInfo } = await session.send('SystemInfo.getProcessInfo');
  return processInfo.filter(({ type }) => type === 'renderer').map(({ id }) => id);
}

/** Megabytes of a process in memory (proc(5), VmRSS); 0 where it cannot be told. */
export function residentOf(pid: number): number {
  try {
    const [, kilobytes] = /^VmRSS:\s+(\d+) kB/m.exec(readFileSync(`/proc/${pid}/status`, 'utf8')) ?? [];
    return (Number(kilobytes) * 1024) / 1e6;
  } catch {
    return 0;
  }
}

/** Seconds of processor time that a process has taken, on whichever core (proc(5): utime and stime, in hundredths). */
export function processorSeconds(pid: number): number {
  const fields = readFileSync(`/proc/${pid}/stat`, 'utf8')
    .replace(/^.*\) /s, '')
    .split(' ');
  return (Number(fields[11]) + Number(fields[12])) / 100;
}
