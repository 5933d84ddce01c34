import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { checkAgain, followChecks, stopCheck, useChecks } from '../../../app/store/checks';
import { useShop } from '../../../app/store/shop';
import { useView } from '../../../app/store/view';
import { en } from '../../../app/words/en';
import type { ArtworkCheck } from '../../../src/artwork';
import { setArtwork } from '../../../src/editing';
import type { Id } from '../../../src/model';
import { fail, type Result } from '../../../src/units';
import { WorkerFailed } from '../../../src/workers/browser';
import { context, edited, smallBook } from '../../editing/book';
import type { waitingCalls } from './calls';

type Checked = Result<ArtworkCheck, 'unreadable' | 'changed'>;

const worker = (await vi.hoisted(async () => (await import('./calls')).waitingCalls())) as ReturnType<
  typeof waitingCalls<unknown, Checked>
>;

vi.mock('../../../src/artwork/browser', () => ({
  openChecker: () => ({
    check: (_file: Blob, request: unknown, _onShare: unknown, signal: AbortSignal) =>
      worker.call(request, signal),
    close: () => undefined,
  }),
  drawnAs: () => null,
}));
vi.mock('../../../app/store/artwork', () => ({
  loadCheck: async () => null,
  loadArtworkFile: async () => new Blob(['pixels']),
  keepCheck: async () => undefined,
}));

const small = smallBook();
/** Both transfers have artwork of their own. */
const book = edited(small.book, (draft) => {
  for (const transfer of [small.front, small.tag]) {
    setArtwork(
      draft,
      transfer,
      {
        id: `picture-${transfer}` as Id<'artwork'>,
        fileName: 'picture.png',
        kind: 'png',
        pixels: { width: 10, height: 8 },
        density: null,
        trim: { x: 0, y: 0, width: 10, height: 8 },
        madeFrom: null,
      },
      context(),
    );
  }
});

const kinds = () => [...useChecks.getState().states.values()].map(({ kind }) => kind);
const asked = (count: number) => vi.waitFor(() => expect(worker.calls).toHaveLength(count));
const said = () => useView.getState().notices.map(({ text, reload }) => ({ text, reload }));
let end = () => {};

beforeEach(() => {
  useShop.setState({ phase: { kind: 'open' }, book });
  useView.setState({ notices: [] });
  worker.calls.length = 0;
  end = followChecks();
});
afterEach(() => end());

describe('artwork checks', () => {
  it('go on after one whose worker fails, which is said and can be asked for again', async () => {
    await asked(1);
    worker.calls[0]?.fail(new WorkerFailed('missing'));
    await asked(2);
    expect(kinds()).toEqual(['stopped', 'running']);
    expect(said()).toEqual([{ text: en.failures.check, reload: true }]);
    worker.calls[1]?.answer(fail('unreadable'));
    await vi.waitFor(() => expect(kinds()).toEqual(['stopped', 'failed']));
    const transfer = book.transfer[small.front];
    if (transfer) checkAgain(transfer);
    await asked(3);
    expect(kinds().toSorted()).toEqual(['failed', 'running']);
  });

  it('stop one at a time, and say nothing of it', async () => {
    await asked(1);
    stopCheck();
    await asked(2);
    expect(worker.calls[0]?.signal.aborted).toBe(true);
    expect(kinds()).toEqual(['stopped', 'running']);
    expect(said()).toEqual([]);
  });

  it('end with what they are of, and with the book', async () => {
    await asked(1);
    useShop.setState({ book: small.book });
    await vi.waitFor(() => expect(worker.calls[0]?.signal.aborted).toBe(true));
    end();
    expect(kinds()).toEqual([]);
    expect(said()).toEqual([]);
  });
});
