import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Book, emptyBook, MODEL_VERSION } from '../../src/model';
import { noEpoch, openRepository, openSharedBook } from '../../src/storage';
import { openStore } from '../../src/storage/database';
import { EPOCH_KEY } from '../../src/storage/epoch';
import { edited, smallBook, smallSettings } from '../editing/book';
import { FakeBrowser, type FakeTab } from './tabs';

const turn = () => new Promise((resolve) => setImmediate(resolve));
const turns = async (count: number) => {
  for (let index = 0; index < count; index += 1) await turn();
};

/** What was done to a book, in the name of its order: each act adds its own word behind all before it. */
const wordsOf = (book: Book): string[] => Object.values(book.order)[0]?.name.split(' ') ?? [];
const withWord = (book: Book, word: string): Book =>
  edited(book, (draft) => {
    for (const order of Object.values(draft.order)) order.name = `${order.name} ${word}`;
  });

let last = 0;

/** A book with its tabs, and what they said that they had kept, in that order. */
function world() {
  last += 1;
  const name = `shared-${last}`;
  const browser = new FakeBrowser();
  const kept: string[] = [];
  let typed = 0;
  let opened = 0;

  const open = () => {
    const ground = browser.open();
    opened += 1;
    const epoch = noEpoch();
    const repository = openRepository(name, epoch, smallSettings);
    const seen = { book: emptyBook, part: 'opening' };
    let told: string[] = [];
    const shared = openSharedBook(
      { name, tab: `tab-${opened}`, now: () => 0 },
      { repository, epoch },
      ground,
      {
        prepare: async () => turn().then(() => undefined),
        begin: (found) =>
          found.kind === 'read'
            ? { stored: found.book, book: found.book }
            : { stored: emptyBook, book: smallBook().book },
        onWrite(book) {
          Object.assign(seen, { book, part: 'writes' });
          told = wordsOf(book);
        },
        onFollow: () => Object.assign(seen, { part: 'follows' }),
        onRead: (found) => {
          if (found.kind === 'read') seen.book = found.book;
        },
        onNotRead: () => Object.assign(seen, { part: 'left' }),
        onFailed: () => Object.assign(seen, { part: 'failed' }),
        onSaving(state) {
          if (state.kind !== 'saved') return;
          // What is typed while a write is under way is told with the next one.
          for (const word of wordsOf(seen.book)) if (!told.includes(word)) kept.push(word);
          told = wordsOf(seen.book);
        },
      },
    );
    const type = () => {
      if (seen.part !== 'writes' || ground.isHalted) return;
      typed += 1;
      seen.book = withWord(seen.book, `w${typed}`);
      shared.put(seen.book);
    };
    return { ground, shared, seen, type, repository };
  };
  const stored = async () => {
    const reading = await openRepository(name, noEpoch(), smallSettings).read();
    return reading.kind === 'read' ? wordsOf(reading.book) : [];
  };
  return { name, browser, kept, open, stored };
}

type Tab = ReturnType<ReturnType<typeof world>['open']>;

function fire({ timers }: FakeTab): void {
  for (const run of [...timers]) {
    timers.delete(run);
    run();
  }
}

/** All goes on and everything comes in, until nothing changes any more. */
async function comeToRest(browser: FakeBrowser, tabs: readonly Tab[]): Promise<void> {
  for (const tab of browser.tabs) tab.isHalted = false;
  for (const { shared } of tabs) shared.resume();
  for (let round = 0; round < 12; round += 1) {
    for (const letter of browser.letters.splice(0)) letter.deliver();
    for (const tab of browser.tabs) {
      browser.run(tab);
      fire(tab);
    }
    for (const { shared } of tabs) shared.look();
    await turns(30);
  }
}

/** What may happen, to the tab of a number; numbers are taken by what there is. */
const acts = [
  'open',
  'type',
  'type',
  'type',
  'ask',
  'ask',
  'run',
  'run',
  'deliver',
  'deliver',
  'lose',
  'fire',
  'halt',
  'go on',
  'pause',
  'resume',
  'close',
  'kill',
  'overrule',
  'wait',
  'wait',
] as const;
const schedule = fc.array(fc.tuple(fc.constantFrom(...acts), fc.nat(11)), { minLength: 5, maxLength: 60 });

describe('a book that several tabs share', () => {
  it('has one writer at most, loses nothing that was said to be kept, and is the same in all (rule 10)', async () => {
    await fc.assert(
      fc.asyncProperty(schedule, async (steps) => {
        const { browser, kept, open, stored } = world();
        const tabs: Tab[] = [open(), open()];
        const pick = <Value>(all: readonly Value[], number: number) => all[number % all.length];
        for (const [act, number] of steps) {
          const tab = pick(tabs, number);
          const letter = pick(browser.letters, number);
          if (act === 'open' && tabs.length < 5) tabs.push(open());
          else if (act === 'deliver' || act === 'lose') {
            if (letter) browser.letters.splice(browser.letters.indexOf(letter), 1);
            if (act === 'deliver') letter?.deliver();
          } else if (act === 'wait') await turns(number);
          else if (!tab) continue;
          else if (act === 'type') tab.type();
          else if (act === 'ask' && !tab.ground.isHalted) tab.shared.takeOver();
          else if (act === 'run') browser.run(tab.ground);
          else if (act === 'fire' && !tab.ground.isHalted) fire(tab.ground);
          else if (act === 'halt') tab.ground.isHalted = true;
          else if (act === 'go on') tab.ground.isHalted = false;
          else if (act === 'pause') tab.shared.pause();
          else if (act === 'resume') tab.shared.resume();
          else if (act === 'overrule') {
            // It is halted while another takes the lock, and types before it hears of it.
            tab.ground.isHalted = true;
            const other = pick(tabs, number + 1);
            other?.shared.takeOver();
            if (other) fire(other.ground);
            if (other) browser.run(other.ground);
            await turns(30);
            tab.ground.isHalted = false;
            tab.type();
            await turns(30);
          } else if (act === 'close' || act === 'kill') {
            if (act === 'close') await Promise.race([tab.shared.close(), turns(40)]);
            browser.kill(tab.ground);
            tabs.splice(tabs.indexOf(tab), 1);
            tab.seen.part = 'gone';
          }
          await turns(number % 3);
        }
        if (tabs.length === 0) tabs.push(open());
        await comeToRest(browser, tabs);
        // The tab that writes types once more, so that what lies there is what it has.
        for (const tab of tabs) tab.type();
        await comeToRest(browser, tabs);

        const parts = tabs.map(({ seen }) => seen.part).sort();
        expect(parts).toEqual([...tabs.slice(1).map(() => 'follows'), 'writes']);
        const lies = await stored();
        expect(lies.filter((word) => kept.includes(word))).toEqual(kept);
        for (const { seen } of tabs) expect(wordsOf(seen.book)).toEqual(lies);
      }),
      { numRuns: 40 },
    );
  });

  it('is left by a tab whose build is older than what a newer one has stored meanwhile', async () => {
    const { name, browser, open, stored } = world();
    const tab = open();
    await comeToRest(browser, [tab]);
    tab.type();
    await comeToRest(browser, [tab]);
    // A newer build takes the lock, claims the book and brings it up; this tab has not heard of it.
    tab.ground.isHalted = true;
    const newer = browser.open();
    newer.locks?.request(name, { steal: true }, () => new Promise(() => undefined)).catch(() => undefined);
    await openStore(name).use('readwrite', async (records) => {
      records.put(1000, EPOCH_KEY);
      records.put(MODEL_VERSION + 1, 'meta/version');
    });
    tab.ground.isHalted = false;
    tab.type();
    await comeToRest(browser, [tab]);
    expect(tab.seen.part).toBe('left');
    expect(await stored()).toEqual([]);
    const { use } = openStore(name);
    const names = await use('readonly', async (records) => {
      const asked = records.getAll(IDBKeyRange.bound('order/', 'order/\uffff'));
      return new Promise<Book['order'][string][]>((resolve) => {
        asked.onsuccess = () => resolve(asked.result);
      });
    });
    expect(names[0]?.name).not.toContain('w2');
  });
});
