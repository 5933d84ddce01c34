import { type LaidRun, layRun } from '../../src/layout';
import { type Book, draftOf, type Settings, settingsOf } from '../../src/model';
import type { Ways } from '../words/format';
import { useShop } from './shop';

/** Remembers the last result for the last book: a book never changes, it is replaced. */
function ofBook<Result>(compute: (book: Book) => Result): (book: Book) => Result {
  let last: { book: Book; result: Result } | null = null;
  return (book) => {
    if (last?.book !== book) last = { book, result: compute(book) };
    return last.result;
  };
}

/** The run that is being worked on, laid out; `null` while there is none. */
export const laidDraft = ofBook((book): LaidRun | null => {
  const draft = draftOf(book);
  return draft ? layRun(book, draft.run) : null;
});

export const useLaidDraft = (): LaidRun | null => useShop((shop) => laidDraft(shop.book));

const fallback: Omit<Settings, 'changed'> = {
  unit: 'mm',
  currency: 'USD',
  dateOrder: null,
  paper: 'a4',
  mapView: 'ink-up',
};

const waysOf = ofBook((book): Ways => {
  const { unit, currency } = settingsOf(book) ?? fallback;
  return { unit, currency, locale: navigator.language };
});

export const useWays = (): Ways => useShop((shop) => waysOf(shop.book));

export const waysNow = (): Ways => waysOf(useShop.getState().book);
