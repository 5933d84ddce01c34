import { applyEdit, type EditContext, type Start, setPlaces, startBook } from '../editing';
import { faultsOf, layRun } from '../layout';
import { type Book, emptyBook, type Instant, runOf } from '../model';
import { addDemoDay, type DemoShop } from './day';
import { firstPlaces } from './first-layout';
import { addDemoWeeks, type DemoStockWords } from './weeks';

/** What the demo day takes of the shop that shows it. */
interface Demo extends DemoShop {
  readonly stockWords: DemoStockWords;
}

/** The demo shop works every day from early to late: its day is today's, and whoever looks in on a Sunday shall not find all of it late. */
function openDaily(start: Start): Start {
  const { station } = start.settings;
  const week = station.hours.week.map(() => [
    { from: '07:00', to: '12:00' },
    { from: '12:30', to: '21:00' },
  ]);
  return {
    ...start,
    settings: {
      ...start.settings,
      station: {
        ...station,
        presses: station.presses.map((press) => ({ ...press, caps: true })),
        hours: { ...station.hours, week },
      },
    },
  };
}

/** What a book begins with, and for the demo day its orders and the weeks before, laid out once so that nobody finds it bare. */
export function firstBook(start: Start, demo: Demo | null, context: EditContext): Book {
  const { book } = applyEdit(
    emptyBook,
    (draft) => {
      startBook(draft, demo ? openDaily(start) : start, context);
      if (demo) {
        addDemoDay(draft, demo, context);
        addDemoWeeks(draft, { words: demo.stockWords, dayFrom: demo.dayFrom }, context);
      }
    },
    context.now,
  );
  return demo ? laidOnce(book, demo.unit, context.now) : book;
}

/** A book with the first layout of its only run, or without where it would not be sound: then what waits is laid as any day's. */
function laidOnce(book: Book, unit: DemoShop['unit'], now: Instant): Book {
  const run = runOf(book, null)?.run;
  if (!run) return book;
  const laidBook = applyEdit(book, (draft) => setPlaces(draft, run.id, firstPlaces(book, unit)), now).book;
  const laid = layRun(laidBook, run);
  return laid && faultsOf(laid).length === 0 ? laidBook : book;
}
