import { afterAll, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { laidNow, openRunNow, settingsOrFirst, waysNow } from '../../../app/store/selectors';
import { act, useShop } from '../../../app/store/shop';
import { useView } from '../../../app/store/view';
import { edits } from '../../../src/editing';
import { emptyBook } from '../../../src/model';
import { smallBook } from '../../editing/book';

const { book, order } = smallBook();

beforeAll(() => {
  vi.stubGlobal('navigator', { language: 'en-US' });
});
afterAll(() => vi.unstubAllGlobals());
beforeEach(() => {
  useView.setState({ run: null });
  useShop.setState({ phase: { kind: 'open' }, follows: false, book });
});

describe('what is read of the book', () => {
  it('is the same object while the book and the run are the same', () => {
    const laid = laidNow();
    expect(laid).not.toBeNull();
    expect(laidNow()).toBe(laid);
    expect(openRunNow()).toBe(openRunNow());
    expect(waysNow()).toBe(waysNow());
    act(edits.editOrder(order, { name: 'Mill' }));
    expect(laidNow()).not.toBe(laid);
  });

  it('is nothing of an empty book, whose settings are those of the region', () => {
    useShop.setState({ book: emptyBook });
    expect([laidNow(), openRunNow()]).toEqual([null, null]);
    expect(settingsOrFirst(emptyBook)).toMatchObject({ unit: 'in', currency: 'USD' });
    expect(waysNow()).toMatchObject({ unit: 'in', currency: 'USD' });
  });

  it('is of the run that is looked at, of the first open one while none is chosen or it is gone', () => {
    const first = openRunNow()?.run.id;
    useView.setState({ run: 'gone' });
    expect(openRunNow()?.run.id).toBe(first);
  });
});
