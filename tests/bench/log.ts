import type { Page } from '@playwright/test';
import { inBuiltApp } from './built-app';
import { mean, percentile, printTable } from './table';

const RUNS = 2000;
const OPENINGS = 8;

/** Puts closed runs, with four entries of the ledger for each, into the book that lies in storage; the tab is loaded anew. */
async function storeRuns(page: Page, count: number): Promise<void> {
  await page.evaluate(async (runs) => {
    const open = (name: string) =>
      new Promise<IDBDatabase>((resolve, reject) => {
        const request = indexedDB.open(name);
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const database = await open('rollwright');
    const [store] = [...database.objectStoreNames];
    const transaction = database.transaction(store ?? '', 'readwrite');
    const records = transaction.objectStore(store ?? '');
    const day = 86_400_000;
    const start = Date.parse('2021-01-04T15:00:00Z');
    for (let run = 0; run < runs; run += 1) {
      const at = new Date(start + Math.round((run * 1825 * day) / runs)).toISOString();
      const copies = 30 + (run % 70);
      const film = 1_000_000 + (run % 37) * 90_000;
      const copyArea = film * 0.33 * (0.8 + (run % 9) / 100);
      const time = { printer: 3600, hands: 5400, press: 4800, oven: 0 };
      const amounts = { film, sheets: 0, colour: 2400, white: 6800, powder: 48_000 };
      const id = `bench-${run}`;
      records.put(
        {
          id,
          name: `Run ${run + 1}`,
          at,
          day: at.slice(0, 10),
          film: { id: 'roll', name: 'Roll', kind: 'roll', width: 330_000 },
          work: { copies, pressed: copies, spans: 8, platenClosings: 2 * copies, copyArea, coverage: null },
          planned: { ...amounts, time },
          actual: { ...amounts, film: film + (run % 11) * 20_000, white: run % 6 ? 7100 : null, time },
          spoiled:
            run % 4 === 0
              ? [{ stage: 'press', reason: `reason ${run % 12}`, copies: 1 + (run % 3), garments: 1 }]
              : [],
          lots: {
            film: `F-${run % 40}`,
            colour: `C-${run % 25}`,
            white: `W-${run % 30}`,
            powder: `P-${run % 20}`,
          },
          air: { temperature: 22, humidity: (35 + (run % 40)) / 100 },
          notes: '',
          changed: at,
        },
        `closing/${id}`,
      );
      for (const [kind, unit] of [
        ['film', 'length'],
        ['white', 'volume'],
        ['colour', 'volume'],
        ['powder', 'mass'],
      ] as const) {
        const entry = `${id}-${kind}`;
        records.put(
          {
            id: entry,
            item: `gone-${kind}`,
            name: kind,
            unit,
            kind: 'used',
            amount: -(run + 1),
            run: id,
            order: null,
            counters: null,
            note: '',
            at,
            changed: at,
          },
          `entry/${entry}`,
        );
      }
    }
    await new Promise((resolve, reject) => {
      transaction.oncomplete = resolve;
      transaction.onerror = () => reject(transaction.error);
    });
    database.close();
  }, count);
  await page.reload();
}

/** Milliseconds from the press on a room's link until what is looked for is on the screen, drawn. */
async function opening(page: Page, room: string, sign: string): Promise<number> {
  return page.evaluate(
    async ([name, selector]) => {
      const begun = performance.now();
      location.hash = `#/${name}`;
      while (!document.querySelector(selector)) await new Promise((resolve) => setTimeout(resolve, 1));
      await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
      return performance.now() - begun;
    },
    [room, sign] as const,
  );
}

/** Opens the log and the ledger of 2,000 closed runs, and prints how long that takes. Needs a build. */
export async function benchLog(): Promise<void> {
  await inBuiltApp('Log', async (page) => {
    await page.getByTestId('kept').waitFor();
    await page.waitForTimeout(1500);
    await storeRuns(page, RUNS);
    await page.getByTestId('kept').waitFor();
    const rooms = [
      ['log', '.plot canvas', 'the log with its charts'],
      ['stock', '#ledger', 'the ledger, four entries a run'],
    ] as const;
    const rows = [];
    for (const [room, sign, name] of rooms) {
      const times: number[] = [];
      for (let nth = 0; nth < OPENINGS; nth += 1) {
        await page.goto('./#/orders');
        await page.waitForTimeout(400);
        times.push(await opening(page, room, sign));
        if (nth === 0 && room === 'log') {
          const told = await page.locator('.room-head').textContent();
          if (!told?.includes('2,000')) throw new Error(`the log tells ${told}`);
        }
      }
      const [first = 0, ...again] = times;
      rows.push([
        name,
        `${first.toFixed(0)} ms`,
        `${mean(again).toFixed(0)} ms`,
        `${percentile(again, 0.95).toFixed(0)} ms`,
      ]);
    }
    printTable(
      `Opening ${RUNS} closed runs`,
      ['room', 'first, code and all (target 500 ms)', 'again, mean', 'again, p95'],
      rows,
    );
  });
}
