import { describe, expect, it } from 'vitest';
import { setPlaces } from '../../src/editing';
import { brokenWishes, faultsOf, holds, layRun, unfitCopies } from '../../src/layout';
import { type Book, copiesByTransfer, type Film, type Id, runOf } from '../../src/model';
import { fromMm, QUARTER, UPRIGHT } from '../../src/units';
import { edited, smallBook } from '../editing/book';

const { book, front, tag } = smallBook();
const ids = (transfer: Id<'transfer'>) => (copiesByTransfer(book).get(transfer) ?? []).map(({ id }) => id);
const copies = [...ids(front), ...ids(tag)];

/** Where fronts of 100 x 80 mm and tags of 50 x 30 mm lie, turned or not, on a roll with other wishes. */
function laidAt(film: Partial<Film>, places: readonly (readonly [number, number, boolean])[]) {
  const lying = edited(book, (draft) => {
    for (const own of Object.values(draft.film)) Object.assign(own, film);
    const [run] = Object.values(draft.run);
    if (!run) throw new Error('no run');
    setPlaces(
      draft,
      run.id as Id<'run'>,
      places.map(([x, y, turned], index) => [
        copies[index] as Id<'copy'>,
        { x: fromMm(x), y: fromMm(y), angle: turned ? QUARTER : UPRIGHT, pinned: false },
      ]),
    );
  });
  return { lying, laid: shown(lying) };
}

function shown(inBook: Book) {
  const open = runOf(inBook, null);
  const laid = open && layRun(inBook, open.run);
  if (!laid) throw new Error('no run');
  return laid;
}

describe('a layout that a hand has left otherwise than was asked for', () => {
  it.each([
    ['free', []],
    ['straight', ['not-straight']],
    ['staged', ['not-staged']],
  ] as const)('holds, and cut %s it is told of %j', (cutting, wishes) => {
    const { laid } = laidAt({ cutting }, [
      [5, 10, false],
      [110, 10, true],
      [45, 115, false],
      [5, 95, true],
    ]);
    expect(faultsOf(laid).filter(({ breaks }) => breaks === 'rule')).toEqual([]);
    expect(brokenWishes(laid)).toEqual(wishes);
  });
});

describe('knife lines that find no place', () => {
  it('take off as few copies as give them one, those further on first', () => {
    const chain = [
      [5, 10, false],
      [110, 60, false],
      [215, 110, false],
    ] as const;
    const { laid } = laidAt({ spanMax: fromMm(130) } as Partial<Film>, chain);
    expect(laid.spans).toBeNull();
    expect(holds(laid)).toBe(false);
    expect(unfitCopies(laid)).toEqual([copies[1]]);
  });
});
