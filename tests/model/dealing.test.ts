import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addGarment,
  addOrder,
  addPlacement,
  addRun,
  addTransfer,
  lockRun,
  moveToRun,
  printedTo,
  removePlacement,
  setPlaces,
  spoil,
  unlockRun,
} from '../../src/editing';
import { type Book, type Id, type Place, runViewOf } from '../../src/model';
import { fromMm, type Micrometres, UPRIGHT } from '../../src/units';
import { context, edited, smallBook } from '../editing/book';

const { book: small } = smallBook();
const film = Object.keys(small.film)[0] as Id<'film'>;

/** An order of shirts, front and back, of two lines that share a printed size, and two empty drafts. */
function shop(lines: readonly (readonly [size: string, fabric: 'cotton' | 'polyester', count: number])[]) {
  const ids = context();
  const empty: Book = { ...small, order: {}, transfer: {}, copy: {}, run: {}, garment: {}, placement: {} };
  let runs: Id<'run'>[] = [];
  const book = edited(empty, (draft) => {
    runs = ['A', 'B'].map((name) => addRun(draft, { name, film, takes: 'chosen' }, ids));
    const order = addOrder(draft, { name: 'Hill Bakers', due: null }, ids);
    const print = { width: fromMm(40), typed: '' };
    for (const place of ['front', 'back']) {
      const widths = { adult: print, youth: print, toddler: print };
      addPlacement(draft, order, { place, design: 'Loaf', ratio: 0.5, widths }, ids);
    }
    for (const [size, fabric, count] of lines)
      addGarment(draft, order, { style: 'tee', colour: '', shade: null, size, fabric, count }, ids);
  });
  const [a, b] = runs;
  if (!a || !b) throw new Error('no runs');
  return { book, a, b };
}

/** Copies of one place, or of all, in the order of their numbers. */
const copiesOf = (book: Book, place?: 'front' | 'back') =>
  Object.values(book.copy)
    .filter(({ transfer }) => !place || book.transfer[transfer]?.name.includes(place))
    .sort((x, y) => x.number - y.number)
    .map(({ id }) => id);

/** A book with some copies laid on a draft one behind the other. */
const laid = (book: Book, run: Id<'run'>, copies: readonly Id<'copy'>[]): Book =>
  edited(book, (draft) => {
    moveToRun(draft, run, copies);
    const at = copies.map((id, index): [Id<'copy'>, Place] => [
      id,
      { x: fromMm(10), y: fromMm(10 + 30 * index), angle: UPRIGHT, pinned: false },
    ]);
    setPlaces(draft, run, at);
  });

const locked = (book: Book, run: Id<'run'>): Book => edited(book, (draft) => lockRun(draft, run, context()));

/** How many copies on a run go on each size, and how many garments of each it takes. */
function dealing(book: Book, run: Id<'run'>) {
  const view = runViewOf(book, run) ?? expect.fail();
  const { onto, takes } = view.dealt();
  const sizeOf = (line: string | undefined) => view.garment[line ?? '']?.size ?? 'none';
  const prints: Record<string, number> = {};
  for (const { copy } of view.placed) {
    const size = sizeOf(onto.get(copy.id));
    prints[size] = (prints[size] ?? 0) + 1;
  }
  const taken = Object.fromEntries(
    [...takes].flatMap(([line, count]) => (count > 0 ? [[sizeOf(line), count]] : [])),
  );
  return { prints, taken };
}

const lines = [
  ['S', 'cotton', 4],
  ['M', 'polyester', 6],
] as const;

describe('the garments that copies go on', () => {
  it('are of each line as many as it has, whichever run brings them', () => {
    const { book, a, b } = shop(lines);
    const fronts = copiesOf(book, 'front');
    const part = laid(book, a, fronts.slice(0, 5));
    expect(dealing(part, a)).toEqual({ prints: { S: 4, M: 1 }, taken: { S: 4, M: 1 } });
    const both = laid(locked(part, a), b, fronts.slice(5));
    expect(dealing(both, b)).toEqual({ prints: { M: 5 }, taken: { M: 5 } });
    expect(dealing(locked(both, b), b)).toEqual(dealing(both, b));
  });

  it('that were taken for one print are not taken again for another', () => {
    const { book, a, b } = shop(lines);
    const first = locked(laid(book, a, copiesOf(book, 'front')), a);
    expect(dealing(first, a).taken).toEqual({ S: 4, M: 6 });
    const second = locked(laid(first, b, copiesOf(book, 'back')), b);
    expect(dealing(second, b)).toEqual({ prints: { S: 4, M: 6 }, taken: {} });
    // The first is sent to print again: what the second did not take is still to be taken.
    const again = locked(
      edited(second, (draft) => unlockRun(draft, a, context())),
      a,
    );
    expect(dealing(again, a).taken).toEqual({ S: 4, M: 6 });
  });

  it('stay the same when the lines are changed once a run is locked', () => {
    const { book, a } = shop(lines);
    const once = locked(laid(book, a, copiesOf(book, 'front')), a);
    const later = edited(once, (draft) => {
      for (const garment of Object.values(draft.garment)) {
        garment.size = 'XL';
        garment.fabric = 'nylon';
      }
    });
    expect(dealing(later, a)).toEqual(dealing(once, a));
  });

  it('are taken once where a run stopped on the way, and where film was spoiled', () => {
    const { book, a, b } = shop(lines);
    const all = locked(laid(book, a, copiesOf(book, 'front')), a);
    const stopped = edited(all, (draft) => printedTo(draft, a, fromMm(75) as Micrometres, context()));
    expect(dealing(locked(stopped, a), a).taken).toEqual({ S: 4, M: 6 });
    const spoiled = edited(all, (draft) => {
      spoil(draft, a, { from: fromMm(0), to: fromMm(35) }, context());
    });
    const rest = copiesOf(spoiled, 'front').filter((id) => spoiled.copy[id]?.state === 'waiting');
    const renewed = locked(laid(locked(spoiled, a), b, rest), b);
    const sum = (run: Id<'run'>) =>
      Object.values(dealing(renewed, run).taken).reduce((total, count) => total + count, 0);
    expect(sum(a) + sum(b)).toBe(10);
  });

  it('that no print is called for on are taken once, by what completes the print of their order', () => {
    const { book, a, b } = shop(lines);
    const bare = edited(book, (draft) => {
      const [order] = Object.values(draft.order);
      if (order)
        addGarment(
          draft,
          order.id,
          { style: 'cap', colour: '', shade: null, size: 'one', count: 7 },
          context(),
        );
      const size = { width: fromMm(20), height: fromMm(20), typed: { width: '', height: '' } };
      if (order) addTransfer(draft, order.id, { name: 'badge', ...size, turn: 'fixed' }, 7, context());
      for (const placement of Object.keys(draft.placement)) removePlacement(draft, placement, context());
    });
    const badges = copiesOf(bare);
    const first = locked(laid(bare, a, badges.slice(0, 3)), a);
    expect(dealing(first, a)).toEqual({ prints: { none: 3 }, taken: {} });
    const second = laid(first, b, badges.slice(3));
    expect(dealing(laid(first, b, badges.slice(3, -1)), b).taken).toEqual({});
    expect(dealing(second, b)).toEqual({
      prints: { none: badges.length - 3 },
      taken: { S: 4, M: 6, one: 7 },
    });
    const both = locked(second, b);
    expect([dealing(both, a).taken, dealing(both, b).taken]).toEqual([{}, { S: 4, M: 6, one: 7 }]);
    // One that is locked again behind it takes none.
    const again = locked(
      edited(both, (draft) => unlockRun(draft, a, context())),
      a,
    );
    expect([dealing(again, a).taken, dealing(again, b).taken]).toEqual([{}, { S: 4, M: 6, one: 7 }]);
  });

  it('add up to the order over any two runs: no garment is taken twice, none is left, and every line gets its prints', () => {
    fc.assert(
      fc.property(
        fc.array(fc.nat({ max: 4 }), { minLength: 2, maxLength: 4 }),
        fc.array(fc.boolean(), { minLength: 40, maxLength: 40 }),
        (counts, goes) => {
          const named = counts.map((count, at) => [`${at + 1}XL`, 'cotton', count] as const);
          const { book, a, b } = shop(named);
          const all = copiesOf(book);
          const first = locked(
            laid(
              book,
              a,
              all.filter((_, at) => goes[at]),
            ),
            a,
          );
          const second = locked(
            laid(
              first,
              b,
              all.filter((_, at) => !goes[at]),
            ),
            b,
          );
          for (const [size, , count] of named) {
            const runs = [a, b].map((run) => dealing(second, run));
            const sum = (of: 'prints' | 'taken') =>
              runs.reduce((total, run) => total + (run[of][size] ?? 0), 0);
            expect(sum('prints')).toBe(2 * count);
            expect(sum('taken')).toBe(count);
          }
        },
      ),
      { numRuns: 40 },
    );
  });
});
