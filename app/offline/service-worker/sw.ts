/**
 * Keeps the app for work without a network. A version is taken whole or not at all: each of its files is held against the digest that its
 * build gave it, when it is fetched and when it is used. What older builds were made of stays until no page uses it.
 */
import type { RouteHandlerCallback } from 'workbox-core/types.js';
import { PrecacheController, PrecacheRoute } from 'workbox-precaching';
import { NavigationRoute, registerRoute } from 'workbox-routing';
import type { Begun, Told } from '../build';
import { isAllOurs } from './sweep';
import { unavailablePage } from './unavailable';
import { wholeOnly } from './whole';

declare const self: ServiceWorkerGlobalScope;

const kept: PrecacheController = new PrecacheController({
  plugins: [wholeOnly((address) => kept.getIntegrityForCacheKey(address))],
});
kept.addToCacheList(self.__WB_MANIFEST);

const isOurs = (address: string): boolean => kept.getCacheKeyForURL(address) !== undefined;

/** A file of this build. Fails if it is not kept and cannot be fetched. */
async function file(address: string, event: ExtendableEvent): Promise<Response> {
  const cacheKey = kept.getCacheKeyForURL(address);
  if (cacheKey === undefined) throw new Error(`${address} is not of this build`);
  const integrity = kept.getIntegrityForCacheKey(cacheKey);
  return await kept.strategy.handle({
    event,
    request: new Request(address),
    params: { cacheKey, integrity },
  });
}

/** The page, once all is there that it cannot start without. */
async function page(event: ExtendableEvent): Promise<Response> {
  const found = await file('index.html', event);
  const text = await found.clone().text();
  const needed = [...text.matchAll(/(?:src|href)="([^"]*\.(?:js|css))"/g)].flatMap(
    ([, address]) => address ?? [],
  );
  await Promise.all(needed.map((address) => file(address, event)));
  return found;
}

/** Where this build is damaged for good, the host's own page, which then is of a newer one; where there is none, that is said. */
const open: RouteHandlerCallback = async ({ event, request }) => {
  try {
    return await page(event);
  } catch {
    const { languages } = self.navigator;
    const newer = await fetch(request, { cache: 'reload' }).catch(() => null);
    return newer?.ok ? newer : unavailablePage(languages);
  }
};

/** What this build knows nothing of may be of an older one that a page still runs. */
const older: RouteHandlerCallback = async ({ request }) => {
  const cache = await caches.open(kept.strategy.cacheName);
  return (await cache.match(request.url, { ignoreVary: true })) ?? (await fetch(request));
};

/** Forgets the files of older builds, unless a page may still want one of them, or a newer build is about to take over. */
async function sweep(event: ExtendableEvent): Promise<void> {
  const { installing, waiting, scope } = self.registration;
  if (installing || waiting) return;
  const pages = await self.clients.matchAll({ type: 'window', includeUncontrolled: true });
  const { held = [] } = await self.navigator.locks.query();
  const own = pages.filter(({ url }) => url.startsWith(scope));
  if (isAllOurs(own.length, held, isOurs)) await kept.activate(event);
}

self.addEventListener('install', (event) => void kept.install(event));
// A first visit is served from here too: its page needs no host any more for what it has not shown yet.
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));
self.addEventListener('message', (event) => {
  const message: { readonly type: 'SKIP_WAITING' } | Begun = event.data;
  if (message.type === 'SKIP_WAITING') return void self.skipWaiting();
  const told: Told = { isCurrent: isOurs(message.entry) };
  event.ports[0]?.postMessage(told);
  event.waitUntil(sweep(event));
});
registerRoute(new NavigationRoute(open, { denylist: [/\/recovery\.html$/, /\/licences\.txt$/] }));
registerRoute(new PrecacheRoute(kept));
registerRoute(({ sameOrigin }) => sameOrigin, older);
