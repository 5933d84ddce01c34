import { beforeEach, expect, it, vi } from 'vitest';
import { lateChecker } from '../../../app/store/late-checker';

const { outside, Missing } = vi.hoisted(() => ({
  outside: { isMissing: false, opened: 0, closed: 0 },
  Missing: class extends Error {},
}));

vi.mock('../../../src/artwork/browser', () => ({
  openChecker: () => {
    outside.opened += 1;
    return {
      close() {
        outside.closed += 1;
      },
    };
  },
}));
vi.mock('../../../app/offline/part', () => ({
  PartMissing: Missing,
  fetchPart: async (fetch: () => Promise<unknown>) => {
    if (outside.isMissing) throw new Missing();
    return fetch();
  },
}));

beforeEach(() => Object.assign(outside, { isMissing: false, opened: 0, closed: 0 }));

it('opens with the first question, once for all of them', async () => {
  const checker = lateChecker();
  expect(outside.opened).toBe(0);
  const [first, second] = await Promise.all([checker.get(), checker.get()]);
  expect([first === second, outside.opened]).toEqual([true, 1]);
  checker.close();
  await vi.waitFor(() => expect(outside.closed).toBe(1));
});

it('that is closed before it is there asks nothing, and leaves nothing open', async () => {
  const checker = lateChecker();
  const asked = checker.get();
  checker.close();
  await expect(asked).rejects.toMatchObject({ name: 'AbortError' });
  expect(outside.closed).toBe(outside.opened);
});

it('is fetched again by the next question where it was missing', async () => {
  const checker = lateChecker();
  outside.isMissing = true;
  await expect(checker.get()).rejects.toBeInstanceOf(Missing);
  outside.isMissing = false;
  await checker.get();
  expect(outside.opened).toBe(1);
});
