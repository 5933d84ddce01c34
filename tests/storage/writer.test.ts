import { describe, expect, it, vi } from 'vitest';
import { becomeWriter } from '../../src/storage';
import type { Locks } from '../../src/storage/writer';

/** Web Locks with one exclusive lock a name, for tabs of one test. */
function oneLock(): Locks {
  let held: Promise<unknown> | null = null;
  const request = async (_name: string, ...rest: unknown[]) => {
    const grant = rest.at(-1) as (lock: object | null) => unknown;
    const options = (rest.length > 1 ? rest[0] : {}) as { ifAvailable?: boolean; signal?: AbortSignal };
    if (held && options.ifAvailable) return grant(null);
    while (held) await held;
    if (options.signal?.aborted) throw new DOMException('aborted', 'AbortError');
    const done = Promise.resolve(grant({}));
    held = done.then(() => {
      held = null;
    });
    return done;
  };
  return { request: request as Locks['request'] };
}

const hears = ({ heard }: { readonly heard: readonly string[] }, ...all: readonly string[]) =>
  vi.waitFor(() => expect(heard).toEqual(all));

function tab(name: string, locks: Locks | undefined) {
  const heard: string[] = [];
  const writer = becomeWriter(name, locks, {
    onWrite: () => heard.push('write'),
    onFollow: () => heard.push('follow'),
    onChanged: () => heard.push('changed'),
    onHandOver: async () => {
      heard.push('flush');
    },
  });
  return { heard, writer };
}

describe('tabs with one book', () => {
  it('the first writes, the second follows, hears of changes, and takes over when the first closes (rule 10)', async () => {
    const locks = oneLock();
    const first = tab('book-1', locks);
    await hears(first, 'write');
    const second = tab('book-1', locks);
    await hears(second, 'follow');
    first.writer.announce();
    await hears(second, 'follow', 'changed');
    first.writer.close();
    await hears(second, 'follow', 'changed', 'write');
    expect(first.heard).toEqual(['write']);
    second.writer.close();
  });

  it('the second takes over on request; the first writes all it has before it lets go, and follows', async () => {
    const locks = oneLock();
    const first = tab('book-3', locks);
    await hears(first, 'write');
    const second = tab('book-3', locks);
    await hears(second, 'follow');
    second.writer.takeOver();
    await hears(second, 'follow', 'write');
    await hears(first, 'write', 'flush', 'follow');
    first.writer.close();
    second.writer.close();
  });

  it('each writes where the browser has no locks', () => {
    const only = tab('book-2', undefined);
    expect(only.heard).toEqual(['write']);
    only.writer.close();
  });
});
