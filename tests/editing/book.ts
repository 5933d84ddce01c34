import { startingCosts, startingRates } from '../../src/costing';
import {
  addOrder,
  addTransfer,
  applyEdit,
  type BookDraft,
  closeRun,
  type EditContext,
  startBook,
} from '../../src/editing';
import { proposeClosing } from '../../src/log';
import {
  asId,
  type Book,
  type Closing,
  emptyBook,
  firstOf,
  type Id,
  type Instant,
  type OrderState,
  orderState,
  type Settings,
  settingsOf,
} from '../../src/model';
import { startingStation } from '../../src/pressing';
import { startingPricing } from '../../src/pricing';
import type { TakenBlanks } from '../../src/stock';
import { asMinor, fromMm, type LocalDate } from '../../src/units';

export const NOW = '2026-11-25T12:00:00.000Z' as Instant;
export const LATER = '2026-11-25T12:30:00.000Z' as Instant;

/** Ids that count up, so that the same edits make the same book. */
export function context(now: Instant = NOW): EditContext {
  let last = 0;
  return {
    now,
    newId: () => {
      last += 1;
      return asId(`id-${last}`);
    },
  };
}

let given = 0;
/** Ids that are not given twice over several edits. */
export const freshIds = (now: Instant = NOW): EditContext => ({
  now,
  newId: () => {
    given += 1;
    return asId(`fresh-${given}`);
  },
});

export const edited = (book: Book, edit: (draft: BookDraft) => void): Book => applyEdit(book, edit, NOW).book;

/** How far an order of a book is. */
export function orderStateIn(book: Book, id: string): OrderState {
  const order = book.order[id];
  if (!order) throw new Error('no such order');
  return orderState(book, order);
}

/** A book with a roll 330 mm wide, a run, and one order: `HB`, 3 fronts of 100 x 80 mm, 2 tags of 50 x 30 mm. */
export function smallBook(): { book: Book; order: Id<'order'>; front: Id<'transfer'>; tag: Id<'transfer'> } {
  const ids = context();
  let order = '' as Id<'order'>;
  let front = '' as Id<'transfer'>;
  let tag = '' as Id<'transfer'>;
  const book = edited(emptyBook, (draft) => {
    startBook(
      draft,
      {
        settings: {
          language: 'en',
          unit: 'mm',
          currency: 'USD',
          dateOrder: null,
          paper: 'a4',
          mapView: 'ink-up',
          mapPaper: { landscape: false, large: false, perSpan: false, pictures: true },
          limits: { stroke: fromMm(0.5), opening: fromMm(0.8), choke: fromMm(0.2), white: fromMm(0.2) },
          printImage: {
            form: 'png',
            ppi: 300,
            ticks: false,
            numbers: false,
            names: false,
            corners: false,
            feedCorrected: false,
            white: false,
            whiteName: 'White',
          },
          cutFile: { form: 'svg', view: 'ink-up' },
          station: startingStation('C'),
          runOrder: [],
          shelfFirst: true,
          rates: startingRates.mm,
          costs: startingCosts('USD'),
          pricing: startingPricing('USD', 'mm'),
          alternatives: [],
          letterhead: { name: '', address: '' },
          mark: null,
          lastBackup: null,
          columns: {},
          tables: {},
        },
        film: {
          kind: 'roll',
          name: 'Roll',
          printer: firstOf('printer'),
          width: fromMm(330),
          margins: { left: fromMm(5), right: fromMm(5), lead: fromMm(10), tail: fromMm(10) },
          lengthLeft: fromMm(10_000),
          price: { amount: asMinor(840), per: fromMm(1000) },
          gap: fromMm(5),
          cutting: 'free',
          together: { kind: 'any' },
          peel: 'hot',
          spanMax: null,
          curl: fromMm(0),
          jobBlank: fromMm(0),
          jobs: 'run',
          cutBlank: fromMm(0),
          unreached: fromMm(0),
          noPrint: [],
          archived: false,
        },
        runName: 'Run',
      },
      ids,
    );
    order = addOrder(draft, { name: 'Hill Bakers', due: null }, ids);
    const size = (width: number, height: number) => ({
      width: fromMm(width),
      height: fromMm(height),
      typed: { width: `${width} mm`, height: `${height} mm` },
      turn: 'quarter' as const,
    });
    front = addTransfer(draft, order, { name: 'front', ...size(100, 80) }, 3, ids);
    tag = addTransfer(draft, order, { name: 'tag', ...size(50, 30) }, 2, ids);
  });
  return { book, order, front, tag };
}

/** What closing a run of a book would note, every copy printed over its half with colour and on all of it with white. */
export function closingOf(book: Book, run: Id<'run'>): Omit<Closing, 'changed'> {
  const settings = settingsOf(book);
  const closing =
    settings &&
    proposeClosing(
      book,
      run,
      settings,
      ({ width, height }) => ({ colour: (width * height) / 2e6, white: (width * height) / 1e6 }),
      { now: NOW, day: '2026-11-25' as LocalDate },
    );
  if (!closing) throw new Error('nothing to close');
  return { ...closing, earlier: [] };
}

/** A book with a pressed run closed as proposed. */
export const closeIt = (
  book: Book,
  run: Id<'run'>,
  by: EditContext,
  blanks: readonly TakenBlanks[] = [],
): Book => edited(book, (draft) => closeRun(draft, closingOf(book, run), blanks, by));

/** The settings of the small book: what stands in where those of another cannot be read. */
export function smallSettings(): Settings {
  const settings = settingsOf(smallBook().book);
  if (!settings) throw new Error('the small book has settings');
  return settings;
}
