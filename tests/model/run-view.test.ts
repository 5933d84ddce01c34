import { describe, expect, it } from 'vitest';
import { edits, lockRun, session, setPlaces } from '../../src/editing';
import { type LaidRun, layRun } from '../../src/layout';
import { type Book, ordersOfRun, type Run, runViewOf } from '../../src/model';
import { ordersOnFilm } from '../../src/model/film-codes';
import { fromMm, type LocalDate, UPRIGHT } from '../../src/units';
import { afterEdits } from '../editing/after-edits';
import { edited, freshIds, smallBook } from '../editing/book';

const { book: empty, order } = smallBook();
const [run] = Object.keys(empty.run);
const book = edited(empty, (draft) => {
  const places = Object.values(draft.copy).map(
    ({ id }, at) => [id, { x: fromMm(5), y: fromMm(10 + 90 * at), angle: UPRIGHT, pinned: false }] as const,
  );
  setPlaces(draft, run as Run['id'], [...places]);
});
const recordIn = (own: Book): Run => own.run[run ?? ''] ?? expect.fail();
const laidIn = (own: Book) => layRun(own, recordIn(own)) ?? expect.fail();
const having = (fields: Parameters<typeof edits.editOrder>[1]) =>
  session(book, edits.editOrder(order, fields), freshIds()).book;

describe('a laid run', () => {
  it.each([
    { name: 'Hill Bakers and Sons' },
    { contact: '07700 900123' },
    { notes: 'at the back door' },
    { handover: 'ship' as const },
    { archived: true },
  ])('is the same where only what is told of an order changes: %o', (fields) => {
    expect(laidIn(having(fields))).toBe(laidIn(book));
  });

  it.each([
    { code: 'ZQ' },
    { due: '2026-12-03' as LocalDate },
    { rush: true },
    { wants: 'transfers' as const },
  ])('is another where its work is: %o', (fields) => {
    const laid = laidIn(having(fields));
    expect(laid).not.toBe(laidIn(book));
    expect(laid.view.order[order]).toMatchObject(fields);
  });

  /** What of it can be compared: what is worked out when it is asked for is no part of that. */
  const told = (laid: LaidRun | null) =>
    laid && { ...laid, view: { ...laid.view, dealt: laid.view.dealt(), reprints: laid.view.reprints() } };

  it('that is kept is what it would be if it were laid anew, after any edits', () => {
    const see = (own: Book, anew: Book) => {
      for (const [id, record] of Object.entries(own.run)) {
        expect(told(layRun(own, record))).toEqual(told(layRun(anew, anew.run[id] ?? expect.fail())));
        const view = runViewOf(own, id) ?? expect.fail();
        const all = { ...ordersOnFilm(own), ...(record.state === 'draft' ? {} : view.order) };
        for (const each of Object.values(view.order)) expect(all[each.id]).toMatchObject(each);
      }
    };
    afterEdits(book, see, { most: 12, numRuns: 150 });
  }, 60_000);
});

describe('the orders of a run', () => {
  it('are told as they are while it is a draft, and as they were once it is locked', () => {
    const nameIn = (own: Book) => ordersOfRun(own, recordIn(own))[order]?.name;
    expect(nameIn(having({ name: 'Mill' }))).toBe('Mill');
    const locked = edited(book, (draft) => lockRun(draft, run as Run['id'], freshIds()));
    const later = session(locked, edits.editOrder(order, { name: 'Mill' }), freshIds()).book;
    expect(nameIn(later)).toBe('Hill Bakers');
    expect(later.order[order]?.name).toBe('Mill');
  });

  it('are the same object while they and the runs are', () => {
    for (const own of [book, edited(book, (draft) => lockRun(draft, run as Run['id'], freshIds()))])
      expect(ordersOfRun({ order: own.order, run: own.run }, recordIn(own))).toBe(
        ordersOfRun(own, recordIn(own)),
      );
  });
});
