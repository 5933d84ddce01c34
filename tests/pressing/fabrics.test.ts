import { describe, expect, it } from 'vitest';
import {
  addGarment,
  addOrder,
  addPlacement,
  addTransfer,
  lockRun,
  setPlaces,
  tellFabric,
} from '../../src/editing';
import { layRun } from '../../src/layout';
import { type Book, type Id, type Place, untoldLines } from '../../src/model';
import {
  fabricsOn,
  garmentsPressed,
  placesPressed,
  startingPress,
  startingStation,
  workOf,
} from '../../src/pressing';
import { type Fabric, fromMm, UPRIGHT } from '../../src/units';
import { context, edited, smallBook } from '../editing/book';

const { book: small } = smallBook();
const run = Object.keys(small.run)[0] as Id<'run'>;

/** One order of shirts of several fabrics with the same print, and a transfer listed by hand, all on film. */
function mixed(fabrics: readonly (Fabric | null)[], byHand: Fabric | null): Book {
  const ids = context();
  const empty: Book = { ...small, order: {}, transfer: {}, copy: {} };
  const made = edited(empty, (draft) => {
    const order = addOrder(draft, { name: 'Hill Bakers', due: null }, ids);
    const print = { width: fromMm(60), typed: '' };
    const widths = { adult: print, youth: print, toddler: print };
    addPlacement(draft, order, { place: 'front', design: 'Loaf', ratio: 0.5, widths }, ids);
    for (const fabric of fabrics)
      addGarment(draft, order, { style: 'tee', colour: '', shade: null, size: 'M', fabric, count: 2 }, ids);
    const size = { width: fromMm(50), height: fromMm(20), typed: { width: '', height: '' } };
    addTransfer(draft, order, { name: 'label', ...size, turn: 'fixed', fabric: byHand }, 1, ids);
  });
  return edited(made, (draft) => {
    const at = Object.keys(draft.copy).map((id, index): [Id<'copy'>, Place] => [
      id as Id<'copy'>,
      { x: fromMm(5), y: fromMm(10 + 40 * index), angle: UPRIGHT, pinned: false },
    ]);
    setPlaces(draft, run, at);
  });
}

const laidOf = (book: Book) => {
  const own = book.run[run];
  return (own && layRun(book, own)) ?? expect.fail();
};

/** Each pressing of a run: on what, how many copies, and how hot the press is. */
function pressings(book: Book): [Fabric | null, number, number][] {
  const work = workOf(laidOf(book), startingStation('C'), new Date('2026-11-25T08:00:00'));
  if (!work.ok) throw new Error(work.problem.join());
  const { jobs, problem, workers } = work.value;
  return jobs.flatMap((job, at) =>
    job.kind === 'press'
      ? [
          [
            job.fabric,
            job.copies.length,
            problem.tasks[at]?.uses.find(({ resource }) => workers[resource] === 'press')?.setting ?? 0,
          ] as [Fabric | null, number, number],
        ]
      : [],
  );
}

const degrees = (fabric: Fabric) => Math.round(startingPress('hot', fabric).temperature / 10);

describe('an order of several fabrics', () => {
  it('is pressed line by line, each at the temperature of its own', () => {
    expect(pressings(mixed(['cotton', 'polyester', 'nylon'], 'canvas'))).toEqual([
      ['cotton', 2, degrees('cotton')],
      ['polyester', 2, degrees('polyester')],
      ['nylon', 2, degrees('nylon')],
      ['canvas', 1, degrees('canvas')],
    ]);
  });

  it('is told by fabric, in the order of the list, with what nobody has told behind', () => {
    const laid = laidOf(mixed(['nylon', null, 'cotton'], null));
    expect(fabricsOn(laid).map(({ fabric, orders }) => [fabric, orders.length])).toEqual([
      ['cotton', 1],
      ['nylon', 1],
      [null, 1],
    ]);
  });

  it('keeps the keys that are ticked, of which none is given twice', () => {
    const work = workOf(laidOf(mixed(['cotton', 'polyester'], 'cotton')), startingStation('C'), new Date(0));
    const keys = work.ok ? work.value.jobs.map(({ key }) => key) : [];
    expect(new Set(keys).size).toBe(keys.length);
  });
});

describe('a fabric that nobody has told', () => {
  it('is asked for line by line, and told for all of them at once', () => {
    const book = mixed([null, 'cotton', null], null);
    const asked = untoldLines(laidOf(book).view);
    expect(asked).toHaveLength(3);
    const told = edited(book, (draft) =>
      tellFabric(
        draft,
        asked.map(({ id }) => id),
        'polyester',
      ),
    );
    expect(untoldLines(laidOf(told).view)).toEqual([]);
    expect(pressings(told).map(([fabric]) => fabric)).toEqual(['polyester', 'cotton', 'polyester']);
  });

  it('is never taken for cotton: it is pressed as what is not in the list', () => {
    const [[fabric, copies, heat] = expect.fail()] = pressings(mixed([null], 'cotton'));
    expect([fabric, copies, heat]).toEqual([null, 2, degrees('other')]);
    expect(heat).toBeLessThan(degrees('cotton'));
  });

  it('is not asked for transfers that the customer presses, nor for lines that are not on the run', () => {
    const sold = edited(mixed([null], null), (draft) => {
      for (const order of Object.values(draft.order)) order.wants = 'transfers';
    });
    expect(untoldLines(laidOf(sold).view)).toEqual([]);
    const off = edited(mixed([null, 'cotton'], 'cotton'), (draft) =>
      setPlaces(
        draft,
        run,
        laidOf(mixed([null, 'cotton'], 'cotton'))
          .copies.slice(0, 2)
          .map(({ id }) => [id, null] as const),
      ),
    );
    expect(untoldLines(laidOf(off).view)).toEqual([]);
  });

  it('stays as it was told when the run was locked', () => {
    const locked = edited(mixed(['polyester'], 'nylon'), (draft) => lockRun(draft, run, context()));
    const later = edited(locked, (draft) => {
      for (const line of [...Object.values(draft.garment), ...Object.values(draft.transfer)])
        line.fabric = 'cotton';
    });
    expect(pressings(later)).toEqual(pressings(locked));
  });
});

describe('the garments that get a print on a run', () => {
  it('are its own share of each line, counted once where several places are printed', () => {
    const book = mixed(['cotton', 'polyester'], 'cotton');
    const laid = laidOf(book);
    const share = (copies: typeof laid.copies) =>
      [...garmentsPressed(laid.view, copies)].map(([line, count]) => [
        laid.view.garment[line]?.fabric,
        count,
      ]);
    expect(share(laid.copies)).toEqual([
      ['cotton', 2],
      ['polyester', 2],
    ]);
    const off = edited(book, (draft) =>
      setPlaces(
        draft,
        run,
        laid.copies.slice(0, 1).map(({ id }) => [id, null] as const),
      ),
    );
    const less = laidOf(off);
    expect([...garmentsPressed(less.view, less.copies).values()]).toEqual([1, 2]);
  });
});

describe('the places that a run is pressed at', () => {
  it('are those of the groups that get a print, and no other', () => {
    const book = edited(mixed(['cotton'], 'cotton'), (draft) => {
      for (const garment of Object.values(draft.garment)) garment.style = 'Youth tee';
      for (const transfer of Object.values(draft.transfer)) {
        if (transfer.name === 'label') transfer.name = 'pecho izquierdo';
      }
    });
    expect(placesPressed(laidOf(book))).toEqual([
      { place: 'front', group: 'youth' },
      { place: 'left chest', group: 'adult' },
    ]);
    const sold = edited(book, (draft) => {
      for (const order of Object.values(draft.order)) order.wants = 'transfers';
    });
    expect(placesPressed(laidOf(sold))).toEqual([]);
  });
});
