import { describe, expect, it } from 'vitest';
import {
  applySettled,
  editTransfer,
  remember,
  setPlaces,
  stepBack,
  stepForward,
  undoStep,
} from '../../src/editing';
import type { Book } from '../../src/model';
import { fromMm, UPRIGHT } from '../../src/units';
import { freshIds, LATER, NOW, smallBook } from './book';

const later = freshIds(LATER);

/** A book without the instants of change and the ledger: undoing is a change too, and says when it was. */
const contents = (book: Book): unknown =>
  JSON.parse(
    JSON.stringify({ ...book, step: {}, entry: {} }, (key, value) => (key === 'changed' ? undefined : value)),
  );

describe('undo', () => {
  it('is forgotten forwards by a new command', () => {
    const step = { undo: [], redo: [] };
    const { book } = smallBook();
    const back = stepBack(remember(book, step, NOW));
    expect(back && stepForward(back.book)).not.toBeNull();
    expect(back && stepForward(remember(back.book, step, NOW))).toBeNull();
  });
});

describe('a draft', () => {
  it('follows edits: a copy that no longer fits comes off the film in the same step (rule 5)', () => {
    const { book, front } = smallBook();
    const run = Object.values(book.run)[0];
    const [a, b] = Object.values(book.copy).filter((copy) => copy.transfer === front);
    if (!run || !a || !b) throw new Error('the small book lacks copies');
    const at = (
      x: number,
    ): {
      x: ReturnType<typeof fromMm>;
      y: ReturnType<typeof fromMm>;
      angle: typeof UPRIGHT;
      pinned: false;
    } => ({
      x: fromMm(x),
      y: fromMm(10),
      angle: UPRIGHT,
      pinned: false,
    });
    const laid = applySettled(
      book,
      (draft) =>
        setPlaces(draft, run.id, [
          [a.id, at(5)],
          [b.id, at(110)],
        ]),
      NOW,
    ).book;
    const wider = applySettled(laid, (draft) => editTransfer(draft, front, { width: fromMm(120) }), NOW);
    expect(wider.takenOff).toHaveLength(1);
    expect([wider.book.copy[a.id]?.place === null, wider.book.copy[b.id]?.place === null].sort()).toEqual([
      false,
      true,
    ]);
    const undone = wider.step && undoStep(wider.book, wider.step, later);
    expect(undone && contents(undone)).toEqual(contents(laid));
  });
});
