import type { Page } from '@playwright/test';
import { copyRows, filmSurface, kept, layOut, onScreen, pasteTable } from '../../e2e/shop';
import { inBuiltApp } from './built-app';
import { printTable } from './table';

const DAY = [
  'Club,back,280,230,4,,yes',
  'Club,chest,89,89,8,,yes',
  'Cafe,front,205,240,3,,no',
  'Fair,tag,55,30,9,,yes',
].join('\n');

/** What the page holds before it counts: code is loaded, and the history of undo is as long as it gets. */
const BEFORE = { layouts: 20, edits: 300 };

/** Megabytes that a page holds: all of it, and what of it is not the code that the browser compiled on the way. */
interface Held {
  readonly all: number;
  readonly data: number;
}

/** What of a heap snapshot the sums are made of; each node is as many numbers as it has fields. */
interface HeapSnapshot {
  readonly snapshot: {
    readonly meta: {
      readonly node_fields: readonly string[];
      readonly node_types: readonly [readonly string[]];
    };
  };
  readonly nodes: readonly number[];
}

function heldIn({ snapshot, nodes }: HeapSnapshot): Held {
  const { node_fields: fields, node_types: types } = snapshot.meta;
  const [type, size] = [fields.indexOf('type'), fields.indexOf('self_size')];
  const held = { all: 0, data: 0 };
  for (let at = 0; at < nodes.length; at += fields.length) {
    const megabytes = (nodes[at + size] ?? 0) / 1e6;
    held.all += megabytes;
    if (types[0][nodes[at + type] ?? 0] !== 'code') held.data += megabytes;
  }
  return held;
}

/** What the page holds once its rubbish is taken out. */
async function heldBy(page: Page): Promise<Held> {
  const session = await page.context().newCDPSession(page);
  const parts: string[] = [];
  session.on('HeapProfiler.addHeapSnapshotChunk', ({ chunk }) => parts.push(chunk));
  await session.send('HeapProfiler.collectGarbage');
  await session.send('HeapProfiler.takeHeapSnapshot', { reportProgress: false });
  await session.detach();
  return heldIn(JSON.parse(parts.join('')) as HeapSnapshot);
}

async function layOutTimes(page: Page, times: number): Promise<void> {
  for (let time = 0; time < times; time += 1) await layOut(page);
}

/** Pins a copy by its key and lets go of it, each an edit. */
async function editTimes(page: Page, times: number): Promise<void> {
  const [copy] = await copyRows(page);
  if (!copy) throw new Error('no copy to pin');
  const at = await onScreen(page, copy);
  await page.mouse.click(at.x, at.y);
  await page.keyboard.press('p');
  if ((await copyRows(page))[0]?.pinned === copy.pinned) throw new Error('the key pins no copy');
  for (let time = 1; time < times; time += 1) await page.keyboard.press('p');
  await kept(page);
}

/** A day of work in one tab: what the page holds after many layouts, and after many edits. */
export async function benchSoak(layouts = 500, edits = 5000): Promise<void> {
  await inBuiltApp('A long day in one tab', async (page) => {
    await pasteTable(page, DAY);
    await layOutTimes(page, BEFORE.layouts);
    await editTimes(page, BEFORE.edits);
    const before = await heldBy(page);
    await layOutTimes(page, layouts);
    const laid = await heldBy(page);
    await editTimes(page, edits);
    const after = await heldBy(page);
    const plans = await filmSurface(page).getAttribute('data-plans');
    const grown = (held: number, from: number) => `${(100 * (held / from - 1)).toFixed(1)}%`;
    const row = (what: string, { all, data }: Held) => [
      what,
      `${all.toFixed(1)} MB`,
      grown(all, before.all),
      `${data.toFixed(1)} MB`,
      grown(data, before.data),
    ];
    printTable(
      'A long day in one tab',
      ['after', 'held', 'more', 'of it no compiled code', 'more (target 10%)'],
      [row('the warm-up', before), row(`${layouts} layouts`, laid), row(`${edits} edits more`, after)],
    );
    console.log(`Plans shown: ${plans}.`);
  });
}
