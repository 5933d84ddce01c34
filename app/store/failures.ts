import { WorkerFailed } from '../../src/workers/browser/worker-failed';
import { PartMissing } from '../offline/part';
import { wordsNow } from '../words';
import type { Words } from '../words/en';
import { notify } from './view';

type Sentences = Words['failures'];

/** What can fail beside the page, as the catalogue says it. */
type Failed = Exclude<keyof Sentences, 'reading' | 'missing' | 'reload' | 'again'>;

function say(text: string, error: unknown): void {
  // What was stopped has not failed.
  if (error instanceof DOMException && error.name === 'AbortError') return;
  const isMissing =
    error instanceof PartMissing || (error instanceof WorkerFailed && error.why === 'missing');
  notify('error', text, isMissing);
}

/** Says what failed and what was kept; where a part of the app is missing, with an offer to load it again. */
export const sayFailed = (what: Failed, error: unknown): void => say(wordsNow().failures[what], error);

/** Says that a file given to the shop could not be read. */
export const sayNotRead = (file: string, error: unknown): void =>
  say(wordsNow().failures.reading(file), error);
