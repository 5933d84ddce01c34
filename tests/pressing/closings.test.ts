import { describe, expect, it } from 'vitest';
import { addGarment, addOrder, addPlacement, lockRun, removeGarment, setPlaces } from '../../src/editing';
import { takeOff } from '../../src/editing/places';
import { layRun } from '../../src/layout';
import type { Book, Id, Place, Station } from '../../src/model';
import { platenClosings, pressedTogether, startingStation, type Work, workOf } from '../../src/pressing';
import { fromInches, fromMm, type Micrometres, UPRIGHT } from '../../src/units';
import { context, edited, smallBook } from '../editing/book';
import { presses } from './stations';

const { book: small } = smallBook();
const empty: Book = { ...small, order: {}, transfer: {}, copy: {} };
const run = Object.keys(small.run)[0] as Id<'run'>;
const ORIGIN = new Date('2026-11-25T08:00:00');

/** Shirts with prints in some places, all of them on film one behind the other; adults' and youths' are printed at other widths. */
function shirts(
  places: readonly (readonly [place: string, inches: number, ratio: number])[],
  sizes: Readonly<Record<string, number>> = { M: 3 },
): Book {
  const ids = context();
  const print = (width: Micrometres) => ({ width, typed: '' });
  const made = edited(empty, (draft) => {
    const order = addOrder(draft, { name: 'Hill Bakers', due: null }, ids);
    for (const [place, inches, ratio] of places) {
      const adult = fromInches(inches);
      const youth = fromInches(inches * 0.75);
      const widths = { adult: print(adult), youth: print(youth), toddler: print(youth) };
      addPlacement(draft, order, { place, design: 'Loaf', ratio, widths }, ids);
    }
    for (const [size, count] of Object.entries(sizes)) {
      addGarment(draft, order, { style: 'tee', colour: '', shade: null, size, count }, ids);
    }
  });
  return edited(made, (draft) => {
    let y = 10;
    const at = Object.values(draft.copy).map(({ id, transfer }): [Id<'copy'>, Place] => {
      const place = { x: fromMm(5), y: fromMm(y), angle: UPRIGHT, pinned: false };
      y += (draft.transfer[transfer]?.height ?? 0) / 1000 + 10;
      return [id, place];
    });
    setPlaces(draft, run, at);
  });
}

const laidOf = (book: Book) => {
  const own = book.run[run];
  const laid = own && layRun(book, own);
  if (!laid) throw new Error('not laid');
  return laid;
};

function closings(book: Book, more: Partial<Station> = {}): string[] {
  const station = { ...startingStation('C'), ...more };
  return platenClosings(laidOf(book).view, laidOf(book).copies, station).map(
    ({ copies, isFirst }) =>
      `${copies.map(({ transfer }) => transfer.name.replace('Loaf, ', '')).join(' + ')}${isFirst ? ' first' : ''}`,
  );
}

const counts = (list: readonly string[]) =>
  Object.fromEntries([...new Set(list)].map((one) => [one, list.filter((other) => other === one).length]));

describe('the prints of a garment', () => {
  it('on its front are pressed at once, where they fit the platen', () => {
    const book = shirts([
      ['left chest', 3.5, 1],
      ['right chest', 3, 1],
    ]);
    expect(counts(closings(book))).toEqual({ 'left chest + right chest first': 3 });
    expect(counts(closings(book, { oneClosing: false }))).toEqual({
      'left chest first': 3,
      'right chest': 3,
    });
    const narrow = { width: fromMm(200), length: fromMm(200) };
    expect(closings(book, presses(1, { platen: narrow }))).toHaveLength(6);
  });

  it('that would overlap lie one below the other: a large front below a chest print', () => {
    // 3.5 in, the space between and 11 in are less than the platen's 20; with 17 in they are not.
    const fits = shirts([
      ['left chest', 3.5, 1],
      ['front', 11, 1],
    ]);
    expect(counts(closings(fits))).toEqual({ 'left chest + front first': 3 });
    const long = shirts([
      ['left chest', 3.5, 1],
      ['front', 11, 17 / 11],
    ]);
    expect(closings(long)).toHaveLength(6);
  });

  it.each([['back'], ['sleeve'], ['neck tag'], ['manga']])('on front and %s never are', (place) => {
    const book = shirts([
      ['left chest', 3.5, 1],
      [place, 3, 1],
    ]);
    expect(counts(closings(book))).toEqual({ 'left chest first': 3, [place]: 3 });
  });

  it('of three places are two closings, and it is pre-pressed once', () => {
    const book = shirts([
      ['left chest', 3.5, 1],
      ['back', 11, 1],
      ['right chest', 3, 1],
    ]);
    // The back's copies come off the film before the last ones of the front.
    expect(counts(closings(book))).toEqual({ 'back first': 3, 'left chest + right chest': 3 });
  });

  it('go together size by size', () => {
    const book = shirts(
      [
        ['left chest', 3.5, 1],
        ['right chest', 3, 1],
      ],
      { M: 2, YM: 1 },
    );
    expect(counts(closings(book))).toEqual({
      'left chest M + right chest M first': 2,
      'left chest YM + right chest YM first': 1,
    });
  });

  it('that are not on the run are left out; others are pressed all the same', () => {
    const book = shirts([
      ['left chest', 3.5, 1],
      ['right chest', 3, 1],
    ]);
    const [away] = laidOf(book).copies;
    const less = edited(book, (draft) => {
      const copy = draft.copy[away?.id ?? ''];
      if (copy) takeOff(draft, [copy.id]);
    });
    expect(counts(closings(less))).toEqual({ 'left chest + right chest first': 2, 'right chest first': 1 });
  });

  it('stay as they were when the run was locked', () => {
    const book = edited(
      shirts([
        ['left chest', 3.5, 1],
        ['right chest', 3, 1],
      ]),
      (draft) => lockRun(draft, run, context()),
    );
    const later = edited(book, (draft) => {
      for (const garment of Object.keys(draft.garment)) removeGarment(draft, garment, context());
    });
    expect(closings(later)).toEqual(closings(book));
  });
});

describe('the work of garments with several places', () => {
  const book = shirts([
    ['left chest', 3.5, 1],
    ['right chest', 3, 1],
  ]);
  const workWith = (more: Partial<Station>): Work => {
    const work = workOf(laidOf(book), { ...startingStation('C'), allowance: 0, ...more }, ORIGIN);
    if (!work.ok) throw new Error(work.problem.join());
    return work.value;
  };
  const pressing = ({ jobs, problem }: Work) =>
    jobs.reduce((sum, { kind }, at) => sum + (kind === 'press' ? (problem.tasks[at]?.duration ?? 0) : 0), 0);

  it('takes less time in one closing, and names both transfers', () => {
    const together = workWith({});
    const apart = workWith({ oneClosing: false });
    // Of three garments: a dressing, a closing and a second press less each; cotton, by the values to start with.
    expect(pressing(together)).toBeLessThan(pressing(apart) - 3 * 15);
    const jobs = together.jobs.filter(({ kind }) => kind === 'press');
    expect(jobs.flatMap(({ transfers }) => transfers.map(({ name }) => name))).toEqual([
      'Loaf, left chest',
      'Loaf, right chest',
    ]);
    for (const work of [together, apart]) {
      const pressed = work.jobs.flatMap(({ kind, copies }) => (kind === 'press' ? copies : []));
      expect(pressed.toSorted()).toEqual(Object.keys(book.copy).toSorted());
      expect(new Set(work.jobs.map(({ key }) => key)).size).toBe(work.jobs.length);
    }
  });

  it('is told on the card: what goes together, and on how many garments', () => {
    const station = startingStation('C');
    const together = pressedTogether(platenClosings(laidOf(book).view, laidOf(book).copies, station));
    expect(together).toMatchObject([{ garments: 3, transfers: [{}, {}] }]);
    expect(
      pressedTogether(
        platenClosings(laidOf(book).view, laidOf(book).copies, { ...station, oneClosing: false }),
      ),
    ).toEqual([]);
  });
});
