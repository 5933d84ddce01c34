import { createHash } from 'node:crypto';
import { afterEach, expect, it, vi } from 'vitest';
import { wholeOnly } from '../../../app/offline/service-worker/whole';

const ADDRESS = 'https://shop.example/assets/film-12345678.js';
const BODY = 'export const film = 560;';
const integrity = `sha256-${createHash('sha256').update(BODY).digest('base64')}`;

afterEach(() => vi.unstubAllGlobals());

/** What the plugin takes of what lies in the cache under the address. */
async function taken(body: string | null, says: string | undefined): Promise<string | null> {
  const match = async () => (body === null ? undefined : new Response(body));
  vi.stubGlobal('caches', { open: async () => ({ match }) });
  const response = await wholeOnly((address) =>
    address === ADDRESS ? says : undefined,
  ).cachedResponseWillBeUsed({
    cacheName: 'kept',
    request: new Request(ADDRESS),
    cachedResponse: await match(),
  });
  return response ? await response.text() : null;
}

it.each([
  ['whole', BODY, integrity, BODY],
  ['cut off', BODY.slice(0, -4), integrity, null],
  ['empty', '', integrity, null],
  ['of another build', BODY.replace('560', '330'), integrity, null],
  ['not there', null, integrity, null],
  ['one that the build says nothing of', BODY, undefined, BODY],
])('a kept file is used only if it is what its build says: %s', async (_, body, says, expected) => {
  expect(await taken(body, says)).toBe(expected);
});

it.each([
  ['install', 'default'],
  ['fetch', 'reload'],
])('what is missing at %s is fetched in the mode %s', async (type, mode) => {
  const fetched = await wholeOnly(() => undefined).requestWillFetch({
    request: new Request(ADDRESS),
    event: { type },
  });
  expect(fetched.cache).toBe(mode);
});
