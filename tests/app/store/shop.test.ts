import { beforeEach, describe, expect, it } from 'vitest';
import { act, actInstead, redo, undo, useShop } from '../../../app/store/shop';
import { useView } from '../../../app/store/view';
import { edits, historyOf } from '../../../src/editing';
import type { Id } from '../../../src/model';
import { fromMm, UPRIGHT } from '../../../src/units';
import { edited, smallBook } from '../../editing/book';

const { book, front, order } = smallBook();
const bookNow = () => useShop.getState().book;
const noticeNow = () => useView.getState().notices.at(-1) ?? null;
const renamed = (name: string) => edits.editOrder(order, { name });

beforeEach(() => {
  useShop.setState({ phase: { kind: 'open' }, follows: false, book });
  useView.setState({ notices: [] });
});

describe('the shop', () => {
  it.each([
    ['another tab writes', { follows: true }],
    ['the book is not in yet', { phase: { kind: 'opening' } }],
    ['a newer version wrote it', { phase: { kind: 'newer' } }],
  ] as const)('changes nothing while %s', (_, state) => {
    act(renamed('Before'));
    useShop.setState(state);
    const before = bookNow();
    expect(act(renamed('After'))).toBeNull();
    expect(actInstead(null, renamed('After'))).toBeNull();
    undo();
    redo();
    expect(bookNow()).toBe(before);
  });

  it('says why nothing changes while another tab writes, whatever is tried', () => {
    useShop.setState({ follows: true });
    for (const attempt of [() => act(renamed('A')), () => actInstead(null, renamed('A')), undo, redo]) {
      useView.setState({ notices: [] });
      attempt();
      expect(noticeNow()).toMatchObject({ tone: 'care', text: expect.stringContaining('another tab') });
    }
  });

  it('holds what an edit comes to, takes it back and makes it again', () => {
    expect(act(renamed('Mill Bakers'))?.changed).toBe(true);
    expect(bookNow().order[order]?.name).toBe('Mill Bakers');
    undo();
    expect(bookNow().order[order]?.name).toBe('Hill Bakers');
    redo();
    expect(bookNow().order[order]?.name).toBe('Mill Bakers');
  });

  it('keeps the same book where there is nothing to take back, or an edit changes nothing', () => {
    undo();
    redo();
    expect(act(renamed('Hill Bakers'))?.changed).toBe(false);
    expect(bookNow()).toBe(book);
  });

  it('leaves it to the edit what undo takes back', () => {
    act(renamed('Mill Bakers'));
    act(edits.editSettings({ currency: 'EUR' }));
    expect(historyOf(bookNow()).done).toHaveLength(1);
    act(edits.addRun({ name: 'Next', film: Object.values(book.film)[0]?.id as Id<'film'>, takes: 'all' }));
    expect(historyOf(bookNow()).done).toHaveLength(0);
  });

  it('puts an edit in place of a step', () => {
    const first = actInstead(null, renamed('A'));
    actInstead(first, renamed('B'));
    undo();
    expect(bookNow().order[order]?.name).toBe('Hill Bakers');
  });

  it('says what came off the film', () => {
    const [run] = Object.values(book.run);
    const copies = Object.values(book.copy).filter(({ transfer }) => transfer === front);
    const places = copies.slice(0, 2).map(({ id }, at) => {
      const place = { x: fromMm(5 + 105 * at), y: fromMm(10), angle: UPRIGHT, pinned: false };
      return [id, place] as const;
    });
    act(edits.setPlaces(run?.id as Id<'run'>, places));
    expect(noticeNow()).toBeNull();
    expect(act(edits.editTransfer(front, { width: fromMm(120) }))?.takenOff).toHaveLength(1);
    expect(noticeNow()).toMatchObject({ tone: 'care' });
  });

  it('says what was taken from the shelf', () => {
    const own = book.transfer[front];
    const [run] = Object.values(book.run);
    if (!own || !run) throw new Error('the small book has a transfer and a run');
    const { name, width, height, artwork, changed } = own;
    const id = `${run.id}/${front}` as Id<'shelf'>;
    const stocked = edited(book, (draft) => {
      draft.shelf[id] = { id, name, code: 'HB', width, height, artwork, count: 2, cured: changed, changed };
    });
    useShop.setState({ book: stocked });
    act(edits.setCount(front, 4, 'ordered'));
    expect(bookNow().shelf[id]?.count).toBe(1);
    expect(noticeNow()).toMatchObject({ tone: 'plain' });
    expect(noticeNow()?.text).toContain(name);
  });
});
