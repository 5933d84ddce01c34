import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { fetchPart, PartMissing } from '../../../app/offline/part';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

/** Something that can be fetched once it was asked for so many times. */
const thereAfter = (failures: number) => {
  const fetch = vi.fn(async () => {
    if (fetch.mock.calls.length <= failures) throw new TypeError('given up');
    return 'a part';
  });
  return fetch;
};

test.each([0, 1, 2])('a part that the browser gave up %i times is there', async (failures) => {
  const fetched = fetchPart(thereAfter(failures));
  await vi.runAllTimersAsync();
  expect(await fetched).toBe('a part');
});

test('a part that is not there is said to be missing, with what the browser said', async () => {
  const fetched = fetchPart(thereAfter(3)).catch((error: unknown) => error);
  await vi.runAllTimersAsync();
  const error = await fetched;
  expect(error).toBeInstanceOf(PartMissing);
  expect(error).toMatchObject({ cause: new TypeError('given up') });
});
