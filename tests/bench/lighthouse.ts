import { execFile } from 'node:child_process';
import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { findChromium } from '../../.ci/chromium.mjs';
import { withBuiltApp } from './built-app';
import { printTable } from './table';

/** What is read of a report. */
interface Report {
  readonly categories: Record<string, { readonly score: number }>;
  readonly audits: Record<string, { readonly displayValue?: string; readonly score: number | null }>;
}

/** Fetched from the registry when it is asked for: it is as large as all other tools together. */
const LIGHTHOUSE = 'lighthouse@12.8.2';
const FIGURES = [
  'first-contentful-paint',
  'largest-contentful-paint',
  'total-blocking-time',
  'cumulative-layout-shift',
];

/** Lighthouse on the built app at a first visit, by its desktop preset: scores of its categories, and the figures of performance. */
export async function benchLighthouse(visits = 3): Promise<void> {
  await withBuiltApp('Lighthouse', async (_context, browser, address) => {
    await browser.close();
    const folder = mkdtempSync(join(tmpdir(), 'lighthouse-'));
    const rows: string[][] = [];
    const failed = new Set<string>();
    for (let visit = 1; visit <= visits; visit += 1) {
      const file = join(folder, `${visit}.json`);
      // Not waited for at once: the app is served by this process.
      await promisify(execFile)(
        'npx',
        [
          '--yes',
          LIGHTHOUSE,
          address,
          '--preset=desktop',
          '--output=json',
          `--output-path=${file}`,
          '--quiet',
          '--only-categories=performance,accessibility,best-practices',
          '--chrome-flags=--headless --no-sandbox --disable-gpu',
        ],
        { env: { ...process.env, CHROME_PATH: await findChromium() } },
      );
      const { categories, audits } = JSON.parse(readFileSync(file, 'utf8')) as Report;
      for (const [name, { score }] of Object.entries(audits)) {
        if (score !== null && score < 0.9) failed.add(name);
      }
      rows.push([
        String(visit),
        ...['performance', 'accessibility', 'best-practices'].map((name) =>
          String(Math.round(100 * (categories[name]?.score ?? 0))),
        ),
        ...FIGURES.map((name) => audits[name]?.displayValue ?? ''),
      ]);
    }
    printTable(
      'Lighthouse, desktop, first visits',
      [
        'visit',
        'performance',
        'accessibility',
        'best practices',
        ...FIGURES.map((name) => name.replaceAll('-', ' ')),
      ],
      rows,
    );
    console.log(`Audits below 0.9: ${[...failed].join(', ') || 'none'}.`);
  });
}
