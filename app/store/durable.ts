import { remember, remembered } from '../../src/storage';

const KEY = 'rollwright-asked-to-keep';

/** Asks the browser, once, not to clear what is stored; some ask the user in turn. */
export function askToKeep(): void {
  if (remembered(KEY)) return;
  remember(KEY, 'asked');
  void navigator.storage?.persist?.().catch(() => undefined);
}
