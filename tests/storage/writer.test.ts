import { describe, expect, it } from 'vitest';
import { becomeWriter, type Message } from '../../src/storage/writer';
import { FakeBrowser, type FakeTab } from './tabs';

const turn = () => new Promise((resolve) => setImmediate(resolve));

/** Delivers all there is, again and again, until nothing waits in a tab that is not halted. */
async function settle(browser: FakeBrowser): Promise<void> {
  for (let round = 0; round < 10; round += 1) {
    for (const letter of browser.letters.splice(0)) letter.deliver();
    for (const tab of browser.tabs) browser.run(tab);
    await turn();
  }
}

function fireTimers({ timers }: FakeTab): void {
  for (const run of [...timers]) {
    timers.delete(run);
    run();
  }
}

let last = 0;
function open(browser: FakeBrowser, ground: FakeTab = browser.open()) {
  const heard: string[] = [];
  last += 1;
  const writer = becomeWriter('book', `tab-${last}`, ground, {
    onWrite: () => heard.push('write'),
    onFollow: () => heard.push('follow'),
    onChanged: () => heard.push('changed'),
    onHandOver: async () => {
      heard.push('flush');
    },
  });
  return { heard, writer, ground, part: () => heard.filter((word) => word !== 'changed').at(-1) };
}

/** So many tabs, opened one after another. */
async function openAll(count: number) {
  const browser = new FakeBrowser();
  const tabs: ReturnType<typeof open>[] = [];
  for (let index = 0; index < count; index += 1) {
    tabs.push(open(browser));
    await settle(browser);
  }
  return { browser, tabs, parts: () => tabs.map(({ part }) => part()) };
}

const [first, second, third] = [0, 1, 2] as const;

describe('tabs with one book', () => {
  it('the first writes, the second follows, hears of changes, and takes over when the first closes (rule 10)', async () => {
    const { browser, tabs } = await openAll(2);
    tabs[first]?.writer.announce();
    await settle(browser);
    expect(tabs.map(({ heard }) => heard)).toEqual([['write'], ['follow', 'changed']]);
    tabs[first]?.writer.close();
    await settle(browser);
    expect(tabs.map(({ heard }) => heard)).toEqual([['write'], ['follow', 'changed', 'write']]);
  });

  it('the second takes over on request; the first writes all it has before it lets go, and follows', async () => {
    const { browser, tabs } = await openAll(2);
    tabs[second]?.writer.takeOver();
    await settle(browser);
    expect(tabs.map(({ heard }) => heard)).toEqual([
      ['write', 'flush', 'follow'],
      ['follow', 'write'],
    ]);
    expect(tabs[second]?.ground.timers.size).toBe(0);
  });

  it('the youngest of three takes over, and no other comes in between', async () => {
    const { browser, tabs, parts } = await openAll(3);
    tabs[third]?.writer.takeOver();
    await settle(browser);
    for (const { ground } of tabs) fireTimers(ground);
    await settle(browser);
    expect(parts()).toEqual(['follow', 'follow', 'write']);
    expect(tabs[second]?.heard).toEqual(['follow']);
  });

  it.each([
    ['both asks are heard', [0, 1]],
    ['the second ask comes first', [1, 0]],
  ])('of two that ask at once one writes: %s', async (_, order) => {
    const { browser, tabs, parts } = await openAll(3);
    const asking = [tabs[second], tabs[third]];
    for (const index of order) asking[index]?.writer.takeOver();
    await settle(browser);
    for (const { ground } of tabs) fireTimers(ground);
    await settle(browser);
    expect(parts().filter((part) => part === 'write')).toHaveLength(1);
    expect(parts()[first]).toBe('follow');
    expect(tabs.flatMap(({ heard }) => heard.filter((word) => word === 'write'))).toHaveLength(2);
  });

  it('one that is halted is overruled, and follows when it goes on', async () => {
    const { browser, tabs, parts } = await openAll(3);
    const [halted, , asking] = tabs;
    if (!halted || !asking) throw new Error('three tabs');
    halted.ground.isHalted = true;
    asking.writer.takeOver();
    await settle(browser);
    expect(parts()).toEqual(['write', 'follow', 'follow']);
    fireTimers(asking.ground);
    await settle(browser);
    expect(parts()).toEqual(['write', 'follow', 'write']);
    halted.ground.isHalted = false;
    await settle(browser);
    expect(parts()).toEqual(['follow', 'follow', 'write']);
  });

  it('one that the browser is about to halt lets go, and waits again when it goes on', async () => {
    const { browser, tabs, parts } = await openAll(2);
    tabs[first]?.writer.pause();
    await settle(browser);
    expect(parts()).toEqual(['follow', 'write']);
    tabs[first]?.writer.resume();
    tabs[second]?.writer.close();
    await settle(browser);
    expect(parts()[first]).toBe('write');
  });

  it('one whose lock was stolen before it could use it goes on with locks: no late word makes it give way', async () => {
    const browser = new FakeBrowser();
    // The lock is granted to the first, which does not come to use it before the second has it.
    const one = open(browser);
    const other = open(browser);
    one.ground.isHalted = true;
    other.writer.takeOver();
    fireTimers(other.ground);
    browser.run(other.ground);
    browser.kill(other.ground);
    const late = browser.letters.splice(0).filter(({ to }) => to === one.ground);
    one.writer.pause();
    one.ground.isHalted = false;
    await settle(browser);
    one.writer.resume();
    await settle(browser);
    late.at(-1)?.deliver();
    await settle(browser);
    expect(one.part()).toBe('write');
  });

  it('one that asked and is gone leaves the writing to the others', async () => {
    const { browser, tabs, parts } = await openAll(3);
    tabs[third]?.writer.takeOver();
    for (const letter of browser.letters.splice(0)) letter.deliver();
    tabs[third]?.writer.close();
    browser.kill(tabs[third]?.ground ?? browser.open());
    await settle(browser);
    for (const { ground } of tabs) fireTimers(ground);
    await settle(browser);
    expect(parts().slice(0, 2)).toEqual(['follow', 'write']);
  });

  it('the one that came last writes where the browser has no locks', async () => {
    const browser = new FakeBrowser();
    const tabs = [1, 2].map(() => open(browser, browser.open({ hasLocks: false })));
    await settle(browser);
    expect(tabs.map(({ part }) => part())).toEqual(['follow', 'write']);
    tabs[first]?.writer.takeOver();
    await settle(browser);
    expect(tabs.map(({ part }) => part())).toEqual(['write', 'follow']);
    const younger = open(browser, browser.open({ hasLocks: false }));
    await settle(browser);
    expect([...tabs, younger].map(({ part }) => part())).toEqual(['follow', 'follow', 'write']);
  });

  it('goes by the locks alone where tabs cannot tell each other anything', async () => {
    const browser = new FakeBrowser();
    const tabs: ReturnType<typeof open>[] = [];
    for (let index = 0; index < 2; index += 1) {
      tabs.push(open(browser, browser.open({ hasChannel: false })));
      await settle(browser);
    }
    tabs[second]?.writer.takeOver();
    for (const { ground } of tabs) fireTimers(ground);
    await settle(browser);
    expect(tabs.map(({ part }) => part())).toEqual(['follow', 'write']);
  });

  it('asks a tab of an older version in the words that it knows, and follows what it tells', async () => {
    const { browser, tabs } = await openAll(1);
    const told: Message[] = [];
    const older = browser.open();
    older.channel?.hear((message) => told.push(message));
    browser.kill(tabs[first]?.ground ?? older);
    older.locks?.request('book', () => new Promise(() => undefined)).catch(() => undefined);
    browser.run(older);
    const newer = open(browser);
    await settle(browser);
    newer.writer.takeOver();
    older.channel?.tell('changed');
    await settle(browser);
    expect(told).toContain('hand-over');
    expect(newer.heard).toEqual(['follow', 'changed']);
    fireTimers(newer.ground);
    await settle(browser);
    expect(newer.part()).toBe('write');
  });
});
