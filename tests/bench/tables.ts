import type { Page } from '@playwright/test';
import { answerKey, edits, repeatedRows, rowsToAdd, session } from '../../src/editing';
import { readTable } from '../../src/intake';
import { emptyBook } from '../../src/model';
import { utcDay } from '../../src/units';
import { freshIds } from '../editing/book';
import { inBuiltApp } from './built-app';
import { heldDuring } from './held';
import { printTable } from './table';

const HEADING = 'order,transfer,width,height,count';
const rows = (count: number, row: (at: number) => string) =>
  [HEADING, ...Array.from({ length: count }, (_, at) => row(at))].join('\n');

const tables = [
  ['one row, which starts the reader', rows(1, () => 'Club,crest,80,80,1')],
  ['5,000 good rows, each an order', rows(5_000, (at) => `Order ${at},crest ${at},80,80,1`)],
  ['20,000 rows, half of them bad', rows(19_999, (at) => `Club,crest ${at},${at % 2 ? 80 : 'abc'},80,1`)],
  ['100,000 bad rows', rows(100_000, (at) => `Club,crest ${at},abc,80,1`)],
  ['100,000 columns', new Array(100_000).fill('width').join()],
  ['a line of 50 MB', 'x'.repeat(50_000_000)],
] as const;

/** Pastes a table into the app; tells how long until it is read or refused, and how long the page was held up at most. */
async function pasting(page: Page, table: string): Promise<{ took: number; held: number }> {
  // A line of one sign is not sent whole.
  const [part, times] = /^x+$/.test(table) ? ['x', table.length] : [table, 1];
  let took = 0;
  const held = await heldDuring(page, async () => {
    await page.evaluate(
      ([text, count]) => {
        const clipboardData = new DataTransfer();
        clipboardData.setData('text/plain', text.repeat(count));
        setTimeout(() => dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true })));
      },
      [part, times] as const,
    );
    const begun = performance.now();
    await page
      .getByText(/rows? (understood|to mend)|has more than|cell of more/)
      .first()
      .waitFor();
    took = performance.now() - begun;
  });
  return { took, held };
}

/** Reads tables that are long or too much, alone and in the built app. */
export async function benchTables(): Promise<void> {
  const lines = tables.map(([what, table]) => {
    const begun = performance.now();
    const {
      rows: good,
      bad,
      problem,
    } = readTable(table, { unit: 'mm', dateOrder: null, today: utcDay(Date.now()) });
    const read = performance.now();
    const { book } = session(emptyBook, edits.addRows(rowsToAdd(good, [], {})), freshIds());
    const added = performance.now();
    const same = repeatedRows(book, good);
    const answers = Object.fromEntries(same.map(({ row }) => [answerKey(row), 'replace' as const]));
    session(book, edits.addRows(rowsToAdd(good, same, answers)), freshIds());
    const replaced = performance.now();
    const told = problem ? problem.code : `${good.length} good, ${bad.length} bad`;
    return [what, told, ...[read - begun, added - read, replaced - added].map((ms) => `${ms.toFixed(0)} ms`)];
  });
  printTable(
    'Tables read, added to an empty book, and put in place of themselves',
    ['table', 'told', 'read', 'added', 'replaced'],
    lines,
  );
  await inBuiltApp('Tables', async (page) => {
    const seen = [];
    for (const [what, table] of tables) {
      await page.goto('./#/orders');
      await page.reload();
      await page.getByRole('button', { name: 'Paste a table' }).waitFor();
      const { took, held } = await pasting(page, table);
      seen.push([what, `${took.toFixed(0)} ms`, `${held.toFixed(0)} ms`]);
    }
    printTable(
      'Tables pasted into the app',
      ['table', 'until it is told', 'longest task of the page (target 100 ms)'],
      seen,
    );
  });
}
