import { type LaidRun, layRun } from '../../src/layout';
import {
  type Book,
  benchRunOf,
  type Film,
  type Run,
  runOf,
  type Settings,
  settingsOf,
} from '../../src/model';
import type { Ways } from '../words/format';
import { firstSettings } from './first-book';
import { useShop } from './shop';
import { useView } from './view';

/** Remembers the last result for the last book and run: a book never changes, it is replaced. */
function ofBook<Result>(
  compute: (book: Book, chosen: string | null) => Result,
): (book: Book, chosen: string | null) => Result {
  let last: { book: Book; chosen: string | null; result: Result } | null = null;
  return (book, chosen) => {
    if (last?.book !== book || last.chosen !== chosen) last = { book, chosen, result: compute(book, chosen) };
    return last.result;
  };
}

interface OpenRun {
  readonly run: Run;
  readonly film: Film;
}

const openRunOf = ofBook((book, chosen): OpenRun | null => runOf(book, chosen) ?? null);

const laidRunOf = ofBook((book, chosen): LaidRun | null => {
  const open = openRunOf(book, chosen);
  return open && layRun(book, open.run);
});

/** The run that is looked at, laid out; `null` while there is none. */
export function useLaidRun(): LaidRun | null {
  const chosen = useView((view) => view.run);
  return useShop(({ book }) => laidRunOf(book, chosen));
}

const laidBenchRunOf = ofBook((book, chosen): LaidRun | null => {
  const run = benchRunOf(book, chosen);
  return run ? layRun(book, run) : null;
});

/** The run that is cut and pressed, laid out; `null` while there is none. */
export function useBenchRun(): LaidRun | null {
  const chosen = useView((view) => view.run);
  return useShop(({ book }) => laidBenchRunOf(book, chosen));
}

export const laidNow = (): LaidRun | null => laidRunOf(useShop.getState().book, useView.getState().run);

/** The run that is looked at and its film. */
export function useOpenRun(): OpenRun | null {
  const chosen = useView((view) => view.run);
  return useShop(({ book }) => openRunOf(book, chosen));
}

export const openRunNow = (): OpenRun | null => openRunOf(useShop.getState().book, useView.getState().run);

/** How the shop reads and prints, whether it has a book yet or not. */
export const settingsOrFirst = (book: Book): Omit<Settings, 'changed'> =>
  settingsOf(book) ?? firstSettings(navigator.language);

const waysOf = ofBook((book): Ways => {
  const { unit, currency } = settingsOrFirst(book);
  return { unit, currency, locale: navigator.language };
});

export const useWays = (): Ways => useShop((shop) => waysOf(shop.book, null));

export const waysNow = (): Ways => waysOf(useShop.getState().book, null);
