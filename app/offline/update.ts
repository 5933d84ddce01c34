import { create } from 'zustand';
import { type Begun, lockOf, type Told } from './build';

/** `ready`: a newer version has been fetched and waits; `elsewhere`: another tab has loaded it, and this one runs on as it is. */
type Newer = 'none' | 'ready' | 'elsewhere';

/** Whether there is a newer version. Lives until the tab closes. */
export const useUpdate = create<{ readonly newer: Newer }>(() => ({ newer: 'none' }));

const isReady = (): void =>
  useUpdate.setState(({ newer }) => ({ newer: newer === 'none' ? 'ready' : newer }));

/**
 * Hears of every newer version that waits, however many came before it or could not be had whole: the library that registers stops at
 * the first that it has not asked for itself.
 */
export function hearOfNewer(registration: ServiceWorkerRegistration): void {
  const look = (): void => {
    // The first version of all replaces none.
    if (registration.waiting && registration.active) isReady();
  };
  registration.addEventListener('updatefound', () =>
    registration.installing?.addEventListener('statechange', look),
  );
  look();
}

/** What talks with the service worker; it is fetched beside the page, which does not wait for it. */
const parts = () => import('workbox-window');

/** Holds what keeps the files of this page's build as long as the page lives; settles once it is held. */
const holdBuild = (entry: string): Promise<void> =>
  new Promise((resolve) => {
    const hold = () => {
      resolve();
      return new Promise<never>(() => undefined);
    };
    // Where there are no locks, nothing is ever forgotten.
    if (navigator.locks) void navigator.locks.request(lockOf(entry), { mode: 'shared' }, hold).catch(resolve);
    else resolve();
  });

/** Tells the service worker in force of this page, and hears whether it is of the same build. */
async function tell(entry: string): Promise<void> {
  const { controller } = navigator.serviceWorker;
  if (!controller) return;
  const begun: Begun = { type: 'BEGUN', entry };
  const { messageSW } = await parts();
  const told: Told = await messageSW(controller, begun);
  if (!told.isCurrent) useUpdate.setState({ newer: 'elsewhere' });
}

/**
 * Registers the service worker, after which the app starts without a network. A new version announces
 * itself and waits; it is looked for at the start and whenever the tab is looked at again.
 * @param entry the address of the page's first script
 * @param rested until then the page has other things to do
 */
export async function watchForUpdates(entry: string, rested: Promise<void>): Promise<void> {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  const held = holdBuild(entry);
  await rested;
  const { Workbox } = await parts();
  const registered = new Workbox('./sw.js', { scope: './' });
  // The page is reloaded on a press only, or it would be pulled away under open work.
  navigator.serviceWorker.addEventListener('controllerchange', () => void tell(entry));
  void registered
    .register()
    .then((registration) => {
      if (registration) hearOfNewer(registration);
    })
    .catch(() => undefined);
  void held.then(() => tell(entry));
  addEventListener('focus', () => void registered.update().catch(() => undefined));
}

/** So long a newer version is waited for, in milliseconds, before the page is loaded as it is. */
const PATIENCE = 8000;

/** The version that waits, or that the host has by now. */
async function waiting(registration: ServiceWorkerRegistration): Promise<ServiceWorker | null> {
  if (registration.waiting || useUpdate.getState().newer !== 'none') return registration.waiting;
  await registration.update();
  const { installing } = registration;
  if (installing)
    await new Promise((resolve) => installing.addEventListener('statechange', resolve, { once: true }));
  return registration.waiting;
}

async function takeOver(signal: AbortSignal): Promise<void> {
  const container = navigator.serviceWorker;
  const registration = await container.getRegistration();
  const newer = registration && (await waiting(registration));
  if (!newer || signal.aborted) return;
  const taken = new Promise((resolve) =>
    container.addEventListener('controllerchange', resolve, { once: true }),
  );
  newer.postMessage({ type: 'SKIP_WAITING' });
  await taken;
}

/** Settles when the newest version that can be had is the one that the page gets when it is loaded next. Nothing may be left to keep. */
export async function takeNewest(): Promise<void> {
  if (!('serviceWorker' in navigator)) return;
  const late = new AbortController();
  const isLate = new Promise<void>((resolve) =>
    late.signal.addEventListener('abort', () => resolve(), { once: true }),
  );
  const timer = setTimeout(() => late.abort(), PATIENCE);
  await Promise.race([takeOver(late.signal).catch(() => undefined), isLate]);
  clearTimeout(timer);
}
