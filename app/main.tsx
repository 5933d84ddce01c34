import '@fontsource/atkinson-hyperlegible-next/400.css';
import '@fontsource/atkinson-hyperlegible-next/700.css';
import { createRoot } from 'react-dom/client';
import { listenForKeys } from './commands/keys';
import { watchForUpdates } from './offline/update';
import { App } from './shell/App';
import { Boundary } from './shell/Boundary';
import { isFramed, trustOwnCode } from './shell/guard';
import { atRest } from './store/at-rest';
import { start } from './store/boot';
import { offerLayouts } from './store/offers';
import { followAddress } from './store/view';
import { languageFor, speak, wordsNow } from './words';
import './shell/base.css';
import './parts/parts.css';

/** The page begins in the reader's language; the book that is opened may have another. */
async function begin(root: HTMLElement): Promise<void> {
  await speak(languageFor(navigator.languages)).catch(() => undefined);
  if (isFramed()) {
    root.textContent = wordsNow().framed;
    return;
  }
  createRoot(root).render(
    <Boundary what="app">
      <App />
    </Boundary>,
  );
  followAddress();
  listenForKeys(new AbortController().signal);
  void watchForUpdates(import.meta.url, atRest()).catch(() => undefined);
  offerLayouts();
  void start();
  void atRest()
    .then(() => import('./store/folder-backup'))
    .then(({ followFolder }) => followFolder())
    .catch(() => undefined);
  // What a tab that died left of an image; the module is needed for nothing else yet.
  void atRest()
    .then(() => import('./print-image/printing'))
    .then(({ sweepImages }) => sweepImages())
    .catch(() => undefined);
}

trustOwnCode();
const root = document.getElementById('root');
if (root) void begin(root);
