import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { entryOf, lockOf } from '../../../app/offline/build';
import { isAllOurs } from '../../../app/offline/service-worker/sweep';

const OURS = 'https://shop.example/assets/index-new.js';
const OLD = 'https://shop.example/assets/index-old.js';
const isOurs = (entry: string) => entry === OURS;
const held = (clientId: string, name: string): LockInfo => ({ clientId, name, mode: 'shared' });

describe('what older builds were made of is in no use', () => {
  it.each<[string, number, LockInfo[], boolean]>([
    ['where there is no page', 0, [], true],
    ['where the one page is of this build', 1, [held('a', lockOf(OURS))], true],
    ['unless a page is of an older build', 2, [held('a', lockOf(OURS)), held('b', lockOf(OLD))], false],
    ['unless a page has no lock, as in a build that knows of none', 2, [held('a', lockOf(OURS))], false],
    ['unless a page holds other locks alone', 1, [held('a', 'rollwright')], false],
    ['however many locks one page holds', 2, [held('a', lockOf(OURS)), held('a', lockOf(OURS))], false],
  ])('%s', (_, pages, locks, expected) => {
    expect(isAllOurs(pages, locks, isOurs)).toBe(expected);
  });
});

it('a lock tells the build of its page, and no other lock does', () => {
  fc.assert(fc.property(fc.webUrl(), (entry) => entryOf(lockOf(entry)) === entry));
  for (const name of [undefined, '', 'rollwright', 'rollwright-demo']) expect(entryOf(name)).toBeNull();
});
