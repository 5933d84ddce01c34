import { Workbox } from 'workbox-window';
import { create } from 'zustand';

/** A new version has been fetched and waits. Lives until the tab closes. */
export const useUpdate = create<{ readonly ready: boolean }>(() => ({ ready: false }));

let workbox: Workbox | null = null;

/**
 * Registers the service worker, after which the app starts without a network. A new version announces
 * itself and waits; it is looked for at the start and whenever the tab is looked at again.
 */
export function watchForUpdates(): void {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  const registered = new Workbox('./sw.js', { scope: './' });
  workbox = registered;
  registered.addEventListener('waiting', () => useUpdate.setState({ ready: true }));
  // The page is reloaded only by the tab that asked for it, or it would be pulled away under open work.
  void registered
    .register()
    .then((registration) => {
      if (registration?.waiting) useUpdate.setState({ ready: true });
    })
    .catch(() => undefined);
  addEventListener('focus', () => void registered.update().catch(() => undefined));
}

/** Lets the waiting version take over and loads it. */
export function loadUpdate(): void {
  workbox?.addEventListener('controlling', () => location.reload());
  workbox?.messageSkipWaiting();
}
