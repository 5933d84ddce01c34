import { useShop } from './shop';

/** The page is looked at again after so long at the latest, in milliseconds. */
const LATEST = 2000;

const opened = (): Promise<void> =>
  new Promise((resolve) => {
    const isOpened = () => useShop.getState().phase.kind !== 'opening';
    if (isOpened()) return resolve();
    const stop = useShop.subscribe(() => {
      if (!isOpened()) return;
      stop();
      resolve();
    });
  });

const frame = (): Promise<void> =>
  new Promise((resolve) => {
    requestAnimationFrame(() => setTimeout(resolve));
  });

/** What was asked for before is on the screen: a canvas takes its size in one frame, and is drawn in the next. */
async function drawn(): Promise<void> {
  await frame();
  await frame();
}

/** Settles once what is opened is on the screen and the page has nothing to do: what nobody waits for begins then. */
export async function atRest(): Promise<void> {
  await opened();
  // A page that is not looked at draws nothing.
  await Promise.race([drawn(), new Promise((resolve) => setTimeout(resolve, LATEST))]);
  if ('requestIdleCallback' in globalThis)
    await new Promise<void>((resolve) => requestIdleCallback(() => resolve(), { timeout: LATEST }));
}
