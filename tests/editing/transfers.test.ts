import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clearMeant, editTransfer, setCount, setMeant, setPinned, setPlaces } from '../../src/editing';
import { asId, type Book, type Id, type Meant } from '../../src/model';
import { UPRIGHT, um } from '../../src/units';
import { context, edited, smallBook } from './book';

const copiesOf = (book: Book, transfer: Id<'transfer'>) =>
  Object.values(book.copy).filter((copy) => copy.transfer === transfer);

const place = {
  x: um(5000),
  y: um(10_000),
  angle: UPRIGHT,
  pinned: false,
};

describe('the copies of a transfer', () => {
  it('are numbered on within the order, over all of its transfers', () => {
    const { book, front, tag } = smallBook();
    expect(copiesOf(book, front).map(({ number }) => number)).toEqual([1, 2, 3]);
    expect(copiesOf(book, tag).map(({ number }) => number)).toEqual([4, 5]);
  });

  it('become as many as are wanted, and no number is given twice', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 12 }), { maxLength: 8 }), (counts) => {
        let { book, front } = smallBook();
        const ids = { ...context(), newId: <Kind extends string>() => asId<Kind>(crypto.randomUUID()) };
        const seen = new Map(Object.values(book.copy).map(({ id, number }) => [number, id]));
        for (const count of counts) {
          book = edited(book, (draft) => setCount(draft, front, count, ids));
          expect(copiesOf(book, front)).toHaveLength(count);
          for (const { id, number } of Object.values(book.copy)) {
            expect(seen.get(number) ?? id).toBe(id);
            seen.set(number, id);
          }
        }
      }),
    );
  });

  it('that wait go before those that lie on the film when the count is lowered (rule 6)', () => {
    const { book, front } = smallBook();
    const [first, second, third] = copiesOf(book, front);
    const [run] = Object.values(book.run).map(({ id }) => id);
    const laid = edited(book, (draft) => {
      if (third && run) setPlaces(draft, run, [[third.id, place]]);
    });
    const two = edited(laid, (draft) => setCount(draft, front, 2, context()));
    expect(copiesOf(two, front).map(({ id }) => id)).toEqual([first?.id, third?.id]);
    const one = edited(two, (draft) => setCount(draft, front, 1, context()));
    expect(copiesOf(one, front).map(({ id }) => id)).toEqual([third?.id]);
    expect(second).toBeDefined();
  });
});

describe('a transfer', () => {
  it('is what it is changed to, and all else stays; one that is gone stays so', () => {
    const { book, front, tag } = smallBook();
    const after = edited(book, (draft) => {
      editTransfer(draft, front, { name: 'back' });
      editTransfer(draft, 'gone', { name: 'lost' });
    });
    expect(after.transfer).toEqual({ ...book.transfer, [front]: { ...book.transfer[front], name: 'back' } });
    expect(after.transfer[tag]).toBe(book.transfer[tag]);
  });
});

describe('copies that are pinned', () => {
  it('are those on film, until they are let go; others have nothing to be pinned to', () => {
    const { book, front, tag } = smallBook();
    const [first, second, third] = copiesOf(book, front);
    const [run] = Object.values(book.run).map(({ id }) => id);
    if (!first || !second || !third || !run) throw new Error('no copies');
    const laid = edited(book, (draft) =>
      setPlaces(draft, run, [
        [first.id, place],
        [second.id, { ...place, y: um(200_000) }],
      ]),
    );
    const pinnedIn = (of: Book) =>
      Object.values(of.copy).flatMap(({ id, place: own }) => (own?.pinned ? [id] : []));
    const pinned = edited(laid, (draft) => setPinned(draft, [first.id, second.id, third.id, 'gone'], true));
    expect(pinnedIn(pinned)).toEqual([first.id, second.id]);
    expect(pinnedIn(edited(pinned, (draft) => setPinned(draft, [first.id], false)))).toEqual([second.id]);
    expect(
      [third.id, ...copiesOf(book, tag).map(({ id }) => id)].map((id) => pinned.copy[id]?.place),
    ).toEqual([null, null, null]);
  });
});

describe('findings that are called meant', () => {
  const meant = (finding: Meant['finding'], ...amounts: number[]): Meant => ({
    finding,
    artwork: 'a' as Id<'artwork'>,
    amounts,
  });

  it('are kept with their transfer, one of a kind, until that is taken back', () => {
    const { book, front, tag } = smallBook();
    const both = edited(book, (draft) => {
      setMeant(draft, front, meant('specks', 3));
      setMeant(draft, front, meant('ground'));
      setMeant(draft, front, meant('specks', 5));
    });
    expect(both.transfer[front]?.meant).toEqual([meant('ground'), meant('specks', 5)]);
    expect(both.transfer[tag]?.meant).toEqual([]);
    const one = edited(both, (draft) => clearMeant(draft, front, 'ground'));
    expect(one.transfer[front]?.meant).toEqual([meant('specks', 5)]);
  });
});
