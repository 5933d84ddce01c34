import { takeNewest } from '../offline/update';
import { wordsNow } from '../words';
import { closeBook } from './boot';
import { useShop } from './shop';
import { notify } from './view';

/** Resolves once nothing is left to write, or writing has failed. */
const settled = (): Promise<void> =>
  new Promise((resolve) => {
    const isSettled = () => {
      const { phase, follows, saving } = useShop.getState();
      return phase.kind !== 'open' || follows || saving.kind !== 'saving';
    };
    if (isSettled()) return resolve();
    const stop = useShop.subscribe(() => {
      if (!isSettled()) return;
      stop();
      resolve();
    });
  });

/**
 * Loads the app again, in its newest version, once all is on the disk and the book is closed, so that nothing is entered in between and another tab
 * may write it. What could not be kept would be lost by it, and that is said instead.
 */
export async function loadAgain(): Promise<void> {
  await settled();
  const { phase, saving } = useShop.getState();
  if (phase.kind === 'open' && saving.kind === 'failed') return notify('error', wordsNow().trouble.notKept);
  await closeBook();
  await takeNewest();
  location.reload();
}
