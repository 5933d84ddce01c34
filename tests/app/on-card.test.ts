import { describe, expect, it } from 'vitest';
import { ordersOn, reprintsAmong } from '../../app/press/on-card';
import { addOrder, addTransfer, editOrder, setPlaces } from '../../src/editing';
import { layRun } from '../../src/layout';
import { fromMm, type LocalDate, UPRIGHT } from '../../src/units';
import { edited, freshIds, NOW, smallBook } from '../editing/book';

/** Three orders on a run: one due last and in a rush, one due first, one without a date, of which one copy is printed again. */
function laid() {
  const { book, order, front } = smallBook();
  const run = Object.values(book.run)[0] ?? expect.fail();
  const more = edited(book, (draft) => {
    editOrder(draft, order, { rush: true, due: '2026-12-09' as LocalDate });
    for (const [name, due] of [
      ['No date', null],
      ['Soon', '2026-11-26' as LocalDate],
    ] as const) {
      const { width, height, typed, turn } = draft.transfer[front] ?? expect.fail();
      const other = addOrder(draft, { name, due }, freshIds());
      addTransfer(draft, other, { name, width, height, typed, turn }, 2, freshIds());
    }
    const copies = Object.values(draft.copy);
    setPlaces(
      draft,
      run.id,
      copies.map(({ id }, at) => [
        id,
        { x: fromMm(5), y: fromMm(10 + 90 * at), angle: UPRIGHT, pinned: false },
      ]),
    );
    const again =
      copies.find(({ transfer }) => draft.transfer[transfer]?.name === 'No date') ?? expect.fail();
    draft.spoilage.s = {
      id: 's' as never,
      run: 'gone' as never,
      copy: again.id,
      stage: 'press',
      garment: false,
      reason: 'crooked',
      changed: NOW,
    };
  });
  const own = layRun(more, more.run[run.id] ?? expect.fail()) ?? expect.fail();
  return { run: own, nameOf: (order: string) => more.order[order]?.name };
}

describe('the orders of a run’s cards', () => {
  it('begin with those in a rush, then what is due soonest', () => {
    const { run, nameOf } = laid();
    expect(ordersOn(run, run.copies).map(({ order, copies }) => [nameOf(order.id), copies.length])).toEqual([
      ['Hill Bakers', 5],
      ['Soon', 2],
      ['No date', 2],
    ]);
  });

  it('count what is printed again', () => {
    const { run } = laid();
    const counts = ordersOn(run, run.copies).map(({ copies }) =>
      reprintsAmong(run, copies, copies[0]?.transfer.id ?? ''),
    );
    expect(counts).toEqual([0, 0, 1]);
  });
});
