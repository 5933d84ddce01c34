import { addOrder, addRun, addTransfer, editOrder, setPlaces } from '../../src/editing';
import type { Book, Id, Place } from '../../src/model';
import { fromMm, type LocalDate, UPRIGHT } from '../../src/units';
import { edited, freshIds, smallBook } from '../editing/book';

const at = (x: number, y: number): Place => ({ x: fromMm(x), y: fromMm(y), angle: UPRIGHT, pinned: false });

/**
 * Two runs: the fronts of an order on the first, its tags on the second beside those of another order, which is due early on a
 * Wednesday; in spans of at most 150 mm.
 */
export function dayOfTwoRuns(): {
  book: Book;
  one: Id<'run'>;
  two: Id<'run'>;
  order: Id<'order'>;
  early: Id<'order'>;
} {
  const { book: empty, order, front, tag } = smallBook();
  const ids = freshIds();
  const [first] = Object.values(empty.run);
  const [film] = Object.values(empty.film);
  if (!first || !film) throw new Error('no run');
  let two = first.id;
  let early = order;
  const book = edited(empty, (draft) => {
    for (const own of Object.values(draft.film)) if (own.kind === 'roll') own.spanMax = fromMm(150);
    early = addOrder(draft, { name: 'Lake Rowers', due: '2026-11-25' as LocalDate }, ids);
    editOrder(draft, early, { dueTime: '09:26' });
    const size = { width: fromMm(50), height: fromMm(30), typed: { width: '50 mm', height: '30 mm' } };
    const badge = addTransfer(draft, early, { name: 'badge', ...size, turn: 'quarter' }, 2, ids);
    two = addRun(draft, { name: 'Run 2', film: film.id }, ids);
    const of = (transfer: string) => Object.values(draft.copy).filter((copy) => copy.transfer === transfer);
    const place = (transfer: string, x: number, step: number) =>
      of(transfer).map(({ id }, index): [Id<'copy'>, Place] => [id, at(x, 10 + step * index)]);
    setPlaces(draft, first.id, place(front, 5, 90));
    setPlaces(draft, two, [...place(tag, 5, 40), ...place(badge, 120, 40)]);
  });
  return { book, one: first.id, two, order, early };
}
