import { remember, remembered } from './remembered';

/**
 * What is remembered of the shop's own book outside IndexedDB, so that a book that was cleared or damaged is missed.
 * `begun`: something was entered. `gone`: it was found empty afterwards, and nothing has been entered since.
 */
type OwnBook = 'begun' | 'gone';

const KEY = 'rollwright-own-book';

/** `null` where nothing was entered yet, or nothing can be remembered. */
export function ownBook(): OwnBook | null {
  const mark = remembered(KEY);
  return mark === 'begun' || mark === 'gone' ? mark : null;
}

export const rememberOwnBook = (mark: OwnBook): void => remember(KEY, mark);
