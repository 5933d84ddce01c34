import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { loadAgain } from '../../../app/store/load-again';
import { useShop } from '../../../app/store/shop';
import { useView } from '../../../app/store/view';

const { calls } = vi.hoisted(() => ({ calls: [] as string[] }));
vi.mock('../../../app/store/boot', () => ({ closeBook: async () => void calls.push('closed') }));
vi.mock('../../../app/offline/update', () => ({ takeNewest: async () => void calls.push('taken') }));

const saving = useShop.getState().saving;

beforeEach(() => {
  calls.length = 0;
  vi.stubGlobal('location', { reload: () => calls.push('loaded') });
  useView.setState({ notices: [] });
  useShop.setState({ phase: { kind: 'open' }, follows: false, saving });
});
afterEach(() => vi.unstubAllGlobals());

it('waits until all is written, closes the book, takes the newest version and then loads the page', async () => {
  useShop.setState({ saving: { kind: 'saving' } });
  const done = loadAgain();
  await new Promise((resolve) => setTimeout(resolve));
  expect(calls).toEqual([]);
  useShop.setState({ saving: { kind: 'saved', at: 0 } });
  await done;
  expect(calls).toEqual(['closed', 'taken', 'loaded']);
});

it('loads nothing where something could not be kept, and says so', async () => {
  useShop.setState({ saving: { kind: 'saving' } });
  const done = loadAgain();
  useShop.setState({ saving: { kind: 'failed', problem: { code: 'quota' } } });
  await done;
  expect(calls).toEqual([]);
  expect(useView.getState().notices).toHaveLength(1);
});

it.each([
  ['another tab writes', { follows: true }],
  ['a newer version has written', { phase: { kind: 'newer' } as const }],
])('does not wait where there is nothing to write: %s', async (_, state) => {
  useShop.setState({ saving: { kind: 'saving' }, ...state });
  await loadAgain();
  expect(calls).toEqual(['closed', 'taken', 'loaded']);
});
