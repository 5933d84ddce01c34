import { createElement, Suspense } from 'react';
import { renderToString } from 'react-dom/server';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { fetchPart, PartMissing, part } from '../../../app/offline/part';

vi.mock('../../../app/words', () => ({ fetchAllWords: async () => undefined }));

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

/** A component that can be fetched. */
const thereAs = (text: string) => async () => () => text;

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

test('a part that was fetched ahead is drawn at once, and one that was not, behind what stands in for it', async () => {
  const room = part(thereAs('the room'));
  const drawn = () => renderToString(createElement(Suspense, { fallback: 'soon' }, createElement(room)));
  expect(drawn()).toContain('soon');
  room.ahead();
  await vi.runAllTimersAsync();
  expect(drawn()).toContain('the room');
});

test('a part that could not be fetched ahead is asked for again when it is shown', async () => {
  let calls = 0;
  const room = part(async () => {
    calls += 1;
    if (calls <= 3) throw new TypeError('given up');
    return () => 'the room';
  });
  room.ahead();
  await vi.runAllTimersAsync();
  expect(calls).toBe(3);
  room.ahead();
  await vi.runAllTimersAsync();
  expect(renderToString(createElement(room))).toBe('the room');
});
