import { useCallback, useMemo } from 'react';
import { mayComeFirst } from '../../src/editing';
import { firstSettings } from '../../src/editing/first-settings';
import { type LaidRun, layRun } from '../../src/layout';
import {
  type Beyond,
  type Book,
  benchRunOf,
  copiesBeyond,
  type Film,
  type Order,
  ordersOfRun,
  type Printer,
  type Run,
  runOf,
  type Settings,
  type Station,
  settingsOf,
} from '../../src/model';
import type { DayWork } from '../../src/pressing';
import { whileSame } from '../../src/units';
import { languageNow, localeNow, useLocale } from '../words';
import type { Ways } from '../words/format';
import { useShop } from './shop';
import { useView } from './view';

interface OpenRun {
  readonly run: Run;
  readonly film: Film;
}

const openRunOf = whileSame(
  (book: Book, chosen: string | null): OpenRun | null => runOf(book, chosen) ?? null,
);

const laidRunOf = whileSame((book: Book, chosen: string | null): LaidRun | null => {
  const open = openRunOf(book, chosen);
  return open && layRun(book, open.run);
});

/** The run that is looked at, laid out; `null` while there is none. */
export function useLaidRun(): LaidRun | null {
  const chosen = useView((view) => view.run);
  return useShop(({ book }) => laidRunOf(book, chosen));
}

const laidBenchRunOf = whileSame((book: Book, chosen: string | null): LaidRun | null => {
  const run = benchRunOf(book, chosen);
  return run ? layRun(book, run) : null;
});

/** The run that is cut and pressed, laid out; `null` while there is none. */
export function useBenchRun(): LaidRun | null {
  const chosen = useView((view) => view.run);
  return useShop(({ book }) => laidBenchRunOf(book, chosen));
}

/** What a run is cured and pressed with: the shop's equipment, or what another device handed over with it. */
export const stationOf = ({ view }: LaidRun): Station =>
  view.station ?? firstSettings(navigator.language, languageNow()).station;

/** The orders of a run, with all that is told of them. */
export const useOrdersOf = ({ view: { run } }: Pick<LaidRun, 'view'>): Book['order'] =>
  useShop(({ book }) => ordersOfRun(book, run));

/** What an order is called on the last of some runs. */
export type OrderNames = (order: Pick<Order, 'id'>, runs: readonly Pick<Run, 'id'>[]) => string;

/** What the orders of a day's work are called. */
export function useOrderNames(): OrderNames {
  const book = useShop((shop) => shop.book);
  return useCallback(
    ({ id }, runs) => {
      const run = book.run[runs.at(-1)?.id ?? ''];
      return (run && ordersOfRun(book, run)[id]?.name) ?? '';
    },
    [book],
  );
}

/** The printer that a run's film is in. */
export const printerOfRun = (run: LaidRun): Printer => run.view.printer ?? stationOf(run).printers[0];

/** The run whose cut map is looked at: one received has no place in the Film room. */
export function useMapRun(): LaidRun | null {
  const chosen = useView((view) => view.run);
  return useShop(({ book }) =>
    chosen !== null && book.run[chosen]?.received ? laidBenchRunOf(book, chosen) : laidRunOf(book, chosen),
  );
}

export const laidNow = (): LaidRun | null => laidRunOf(useShop.getState().book, useView.getState().run);

/** The run that is looked at and its film. */
export function useOpenRun(): OpenRun | null {
  const chosen = useView((view) => view.run);
  return useShop(({ book }) => openRunOf(book, chosen));
}

export const openRunNow = (): OpenRun | null => openRunOf(useShop.getState().book, useView.getState().run);

const comeFirst = whileSame((copy: Book['copy'], transfer: Book['transfer'], run: Book['run']) =>
  mayComeFirst({ copy, transfer, run }),
);
const comeFirstOf = ({ copy, transfer, run }: Book) => comeFirst(copy, transfer, run);

/** Whether an order has copies that may be brought to the front, and this tab may do it. */
export const useMayComeFirst = (order: string): boolean =>
  useShop(({ book, follows }) => !follows && comeFirstOf(book).has(order));

/** What of each order does not come with all runs but those that the plan of the day is without. */
export function useBeyondPlan(without: DayWork['without']): (order: string) => Beyond {
  const book = useShop((shop) => shop.book);
  return useMemo(
    () => copiesBeyond(book, (run) => !without.some((out) => out.run.id === run)),
    [book, without],
  );
}

/** How the shop reads and prints, whether it has a book yet or not. */
export const settingsOrFirst = (book: Book): Omit<Settings, 'changed'> =>
  settingsOf(book) ?? firstSettings(navigator.language, languageNow());

const waysOf = whileSame((book: Book, locale: string): Ways => {
  const { unit, currency } = settingsOrFirst(book);
  return { unit, currency, locale };
});

/** Words and figures are always of one language, also while another is on its way. */
export function useWays(): Ways {
  const locale = useLocale();
  return useShop((shop) => waysOf(shop.book, locale));
}

export const waysNow = (): Ways => waysOf(useShop.getState().book, localeNow());
