import { applyEdit, type EditContext, type Start, setPlaces, startBook } from '../editing';
import { placesOf, problemOf } from '../layout';
import { type Book, emptyBook, type Instant, runOf } from '../model';
import { createPlanner } from '../packing';
import { addDemoDay, type DemoShop } from './day';
import { addDemoWeeks, type DemoStockWords } from './weeks';

/** What the demo day takes of the shop that shows it. */
interface Demo extends DemoShop {
  readonly stockWords: DemoStockWords;
}

/** What a book begins with, and for the demo day its orders and the weeks before, laid out once so that nobody finds it bare. */
export function firstBook(start: Start, demo: Demo | null, context: EditContext): Book {
  const { book } = applyEdit(
    emptyBook,
    (draft) => {
      startBook(draft, start, context);
      if (demo) {
        addDemoDay(draft, demo, context);
        addDemoWeeks(draft, { words: demo.stockWords, dayFrom: demo.dayFrom }, context);
      }
    },
    context.now,
  );
  return demo ? laidOnce(book, context.now) : book;
}

/** A book with the first layout of its only run. */
function laidOnce(book: Book, now: Instant): Book {
  const open = runOf(book, null);
  if (!open) return book;
  const { run, film } = open;
  const own = problemOf(book, run, film, 'pinned');
  const plan = createPlanner(own.problem, 1).best();
  return applyEdit(book, (draft) => setPlaces(draft, run.id, placesOf(plan, own, film)), now).book;
}
