import { addOrder, addTransfer, applyEdit, benchEdits, edits, historyOf, session } from '../../src/editing';
import { placesOf, problemOf } from '../../src/layout';
import { type Book, runOf } from '../../src/model';
import { createPlanner } from '../../src/packing';
import { packKey } from '../../src/pressing';
import { fromMm } from '../../src/units';
import { freshIds, NOW, smallBook } from '../editing/book';
import { printTable } from './table';

const COPIES = 120;
const STEPS = 100;
const ROUNDS = 20;

/** The book with six more orders, a sixth of the copies each, laid out on the run that is open. */
function withLaidOrders(book: Book): Book {
  const ordered = applyEdit(
    book,
    (draft) => {
      const ids = freshIds();
      for (let number = 0; number < 6; number += 1) {
        const order = addOrder(draft, { name: `Order ${number}`, due: null }, ids);
        const [width, height] = [fromMm(40 + 10 * number), fromMm(60 + 7 * number)];
        const size = { width, height, typed: { width: '', height: '' } };
        addTransfer(draft, order, { name: 'print', ...size, turn: 'quarter' }, COPIES / 6, ids);
      }
    },
    NOW,
  ).book;
  const open = runOf(ordered, null);
  if (!open) throw new Error('no run');
  const own = problemOf(ordered, open.run, open.film, 'pinned');
  const places = placesOf(createPlanner(own.problem, 1).best(), own, open.film);
  return session(ordered, edits.layOut(open.run.id, places), freshIds()).book;
}

/** A locked run of 120 copies, a draft of as many, and a hundred steps of undo behind it: pins set and orders named. */
function busyBook(): Book {
  const small = smallBook().book;
  let book = withLaidOrders({ ...small, order: {}, transfer: {}, copy: {} });
  const locked = runOf(book, null)?.run;
  if (!locked) throw new Error('no run');
  book = session(book, edits.lockRun(locked.id, null), freshIds()).book;
  const next = session(book, edits.addRun({ name: 'Next', film: locked.film }), freshIds());
  book = withLaidOrders(next.book);
  const orders = Object.values(book.order);
  const copies = Object.values(book.copy).filter(({ run }) => run !== locked.id);
  for (let at = 0; historyOf(book).done.length < STEPS; at += 1) {
    const [order, copy] = [orders[at % orders.length], copies[at % copies.length]];
    if (!order || !copy) throw new Error('no copies');
    const edit =
      at % 3 > 0 ? edits.setPinned([copy.id], at % 2 > 0) : edits.editOrder(order.id, { name: `${at}` });
    book = session(book, edit, freshIds()).book;
  }
  return book;
}

/** Of the processor, in milliseconds. */
function timeOf(work: () => void): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

/** How long edits take that undo leaves alone, and that are made in every state that it leads to. */
export function benchQuietEdits(): void {
  const book = busyBook();
  const run = Object.values(book.run).find(({ state }) => state === 'locked');
  const order = Object.values(book.order)[0];
  if (!run || !order) throw new Error('no run');
  const quiet = [
    ['a tick on the way', benchEdits.tickJobs(run.id, ['begun'], { done: true, by: 'AB' }, 'Next')],
    [
      'an order ticked as packed',
      benchEdits.tickJobs(run.id, [packKey(order.id)], { done: true, by: 'AB' }, 'Next'),
    ],
    ['a setting', edits.editSettings({ shelfFirst: false })],
    ['another currency', edits.changeCurrency('JPY')],
  ] as const;
  printTable(
    `Edits that undo leaves alone, ${2 * COPIES} copies, ${STEPS} steps of undo, ${ROUNDS} times, processor time`,
    ['what', 'fastest', 'median (target 50 ms)', 'slowest'],
    quiet.map(([what, edit]) => {
      const times = Array.from({ length: ROUNDS }, () => timeOf(() => session(book, edit, freshIds())));
      const sorted = times.toSorted((a, b) => a - b);
      const ms = (value: number | undefined) => `${(value ?? Number.NaN).toFixed(1)} ms`;
      return [what, ms(sorted[0]), ms(sorted[ROUNDS / 2]), ms(sorted.at(-1))];
    }),
  );
}
