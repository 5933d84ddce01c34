import { beforeEach, describe, expect, it } from 'vitest';
import { act, redo, undo, useShop } from '../../../app/store/shop';
import {
  clearNotices,
  dismissNotice,
  notify,
  openDialog,
  openRun,
  select,
  selectAlso,
  selectSeveral,
  showOutlines,
  useView,
} from '../../../app/store/view';
import { edits } from '../../../src/editing';
import { smallBook } from '../../editing/book';

const selected = () => [...useView.getState().selected];
const sentences = () => useView.getState().notices.map(({ text }) => text);

beforeEach(() => {
  useShop.setState({ phase: { kind: 'open' }, follows: false, book: smallBook().book });
  useView.setState({ ...useView.getInitialState() });
});

describe('the view', () => {
  it('is not undone: selection, run and what is shown stay when the edit before them goes (rule 9)', () => {
    const before = Object.keys(useShop.getState().book.order);
    act(edits.addOrder({ name: 'Harbour fair', due: null }));
    select('a', 'b');
    selectSeveral(true);
    showOutlines(true);
    useView.setState({ room: 'cut' });
    const { room, several, outlines } = useView.getState();
    undo();
    expect(Object.keys(useShop.getState().book.order)).toEqual(before);
    expect(selected()).toEqual(['a', 'b']);
    expect({ room, several, outlines }).toEqual({ room: 'cut', several: true, outlines: true });
    expect(useView.getState()).toMatchObject({ room, several, outlines });
  });

  it('adds to a selection, and takes one out that was in it', () => {
    select('a');
    selectAlso(['b', 'c']);
    expect(selected()).toEqual(['a', 'b', 'c']);
    selectAlso(['b']);
    expect(selected()).toEqual(['a', 'c']);
  });

  it('lets a selection go with the run it was on', () => {
    select('a');
    openRun('another');
    expect(useView.getState()).toMatchObject({ run: 'another', selected: new Set() });
  });
});

describe('notices', () => {
  it('of an act go with it when it is undone or done again; what failed is still said', () => {
    act(edits.addOrder({ name: 'Harbour fair', due: null }));
    for (const way of [undo, redo]) {
      for (const tone of ['plain', 'care', 'error'] as const) notify(tone, tone);
      way();
      expect(sentences()).toEqual(['error']);
    }
  });

  it('say a sentence once, the latest three', () => {
    for (const text of ['one', 'two', 'one', 'three', 'four']) notify('plain', text);
    expect(sentences()).toEqual(['one', 'three', 'four']);
  });

  it('go one by one, or all at once', () => {
    notify('care', 'one');
    notify('care', 'two');
    const [first] = useView.getState().notices;
    dismissNotice(first?.id ?? -1);
    expect(sentences()).toEqual(['two']);
    clearNotices();
    expect(sentences()).toEqual([]);
  });

  it('of what went well end when a window opens, those of care stay', () => {
    notify('plain', 'saved');
    notify('care', 'look');
    openDialog({ kind: 'keys' });
    expect(sentences()).toEqual(['look']);
  });
});
