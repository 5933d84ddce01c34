import { gzipSync } from 'node:zlib';
import { expect, sentence, test } from './shop';
import { stopSearch } from './stop-search';

/** The most that may be fetched until the film of the first visit is drawn, in bytes as gzip packs them. */
const MOST = 300_000;

/** What is packed as it is. */
const PACKED = /\.woff2$/;

/** The picture in the browser's tab, of which the app knows nothing. */
const ICON = '/icon.svg';

/** A shift that users hardly notice, of what was shown already (Web Vitals: good is 0.1 at the most). */
const HARDLY = 0.05;

test('the first screen fetches at most 300 kB until its film is drawn, nothing twice, and pushes nothing away that is shown', async ({
  page,
  request,
}) => {
  await page.addInitScript(() => {
    const seen = new MutationObserver(() => {
      if (!document.querySelector('.film-canvas canvas')) return;
      seen.disconnect();
      performance.mark('film drawn');
    });
    seen.observe(document, { childList: true, subtree: true });
  });
  await page.addInitScript(() => {
    const moved: { value: number; sources: string }[] = [];
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) {
        const { value, sources } = entry as PerformanceEntry & {
          value: number;
          sources: { node: Node | null }[];
        };
        const what = sources.map(({ node }) =>
          node instanceof Element ? `${node.tagName}.${node.className}` : '',
        );
        moved.push({ value, sources: what.join(' ') });
      }
    }).observe({ type: 'layout-shift', buffered: true });
    Object.assign(window, { moved });
  });
  await page.goto('./');
  await expect(sentence(page)).toBeVisible();
  // The time that the day is done by comes once no better layout is looked for.
  await stopSearch(page, 'Stop');
  await expect(sentence(page)).toContainText(/done by .*\d/);
  const moved = await page.evaluate(
    () => (window as unknown as { moved: { value: number; sources: string }[] }).moved,
  );
  const shifts = moved.map(({ value, sources }) => `${value.toFixed(4)} ${sources}`).join('\n');
  expect
    .soft(
      moved.reduce((sum, { value }) => sum + value, 0),
      shifts,
    )
    .toBeLessThanOrEqual(HARDLY);

  const all = await page.evaluate(() => {
    const [drawn] = performance.getEntriesByName('film drawn');
    return performance
      .getEntriesByType('resource')
      .filter(({ startTime }) => drawn && startTime < drawn.startTime)
      .map(({ name }) => new URL(name).pathname);
  });
  // The day goes on drawing and checking its artwork.
  await page.goto('about:blank');
  const fetched = all.filter((address) => address !== ICON);
  const parts: [address: string, bytes: number][] = [];
  for (const address of ['/', ...fetched]) {
    const body = await (await request.get(address)).body();
    parts.push([address, (PACKED.test(address) ? body : gzipSync(body)).length]);
  }
  parts.sort(([, a], [, b]) => b - a);
  const told = parts.map(([address, bytes]) => `${bytes} ${address}`).join('\n');
  // What brings up books of older versions is for those alone.
  expect(told).not.toContain('every-migration');
  expect(told).toMatch(/\.js$/m);
  expect(told).toMatch(/\.css$/m);
  expect(told).toMatch(/\.woff2$/m);
  expect(new Set(fetched).size, told).toBe(fetched.length);
  expect(
    parts.reduce((sum, [, bytes]) => sum + bytes, 0),
    told,
  ).toBeLessThanOrEqual(MOST);
});
