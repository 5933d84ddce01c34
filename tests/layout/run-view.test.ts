import { beforeEach, describe, expect, it, vi } from 'vitest';
import { runCosts } from '../../src/costing/run';
import {
  editOrder,
  editTransfer,
  finishRun,
  lockRun,
  printedTo,
  setPlaces,
  spoil,
  tickJobs,
} from '../../src/editing';
import { fillerProblem, layRun, problemAgain, problemOf } from '../../src/layout';
import { proposeClosing } from '../../src/log';
import { type Book, type Id, runOf, runView } from '../../src/model';
import { knifeLines } from '../../src/packing';
import { startingStation, workOf } from '../../src/pressing';
import { blanksOfRun, filmOutlook } from '../../src/stock';
import { fromMm, type LocalDate, UPRIGHT } from '../../src/units';
import { edited, freshIds, NOW, smallBook } from '../editing/book';

// Every laying of a run on a roll looks for its knife lines.
vi.mock('../../src/packing', async (original) => {
  const packing = await original<typeof import('../../src/packing')>();
  return { ...packing, knifeLines: vi.fn(packing.knifeLines) };
});

const { book: empty, order, front } = smallBook();
const run = Object.keys(empty.run)[0] as Id<'run'>;
const fronts = Object.values(empty.copy).filter(({ transfer }) => transfer === front);
const at = (mm: number) => ({ x: fromMm(5), y: fromMm(mm), angle: UPRIGHT, pinned: false });
/** Fronts of 80 mm at 10, 100 and 190 mm. */
const placed = edited(empty, (draft) =>
  setPlaces(
    draft,
    run,
    fronts.map(({ id }, index) => [id, at(10 + 90 * index)]),
  ),
);
const locked = edited(placed, (draft) => lockRun(draft, run, freshIds()));
/** The first front is printed. */
const part = edited(locked, (draft) => printedTo(draft, run, fromMm(95), freshIds()));

function laidIn(book: Book) {
  const record = book.run[run];
  const laid = record && layRun(book, record);
  if (!laid) throw new Error('no run');
  return laid;
}
const lengths = (book: Book) => laidIn(book).copies.map(({ y, length }) => [y / 1000, length / 1000]);

describe('a run', () => {
  beforeEach(() => void vi.mocked(knifeLines).mockClear());

  it('is laid once in a flow, whoever asks for it', () => {
    const book = edited(placed, () => undefined);
    const draft = { ...book, run: { [run]: { ...book.run[run] } } } as Book;
    const open = runOf(draft, null);
    const settings = draft.settings.shop;
    if (!open || !settings) throw new Error('no run');
    const laid = laidIn(draft);
    runCosts(draft, laid, settings, () => null);
    filmOutlook(draft, laid);
    problemOf(draft, open.run, open.film, 'pinned');
    problemAgain(draft, open.run, open.film);
    fillerProblem(draft, open.run, open.film, { length: laid.lengthUsed, sheets: 0 });
    expect(knifeLines).toHaveBeenCalledTimes(1);
  });

  it('is laid once when it is locked, whatever is edited or ticked since', () => {
    const later = edited(locked, (draft) => {
      editOrder(draft, order, { due: '2026-12-01' as LocalDate });
      editTransfer(draft, front, { width: fromMm(50) });
    });
    expect(laidIn(later)).toBe(laidIn(locked));
    const record = later.run[run];
    const settings = later.settings.shop;
    if (!record || !settings) throw new Error('no run');
    vi.mocked(knifeLines).mockClear();
    proposeClosing(later, run, settings, () => null, { now: NOW, day: '2026-11-25' as LocalDate });
    blanksOfRun(later, record);
    expect(knifeLines).not.toHaveBeenCalled();
  });

  it('is laid anew when one of its records changes, and not for a tick', () => {
    const ticked = edited(placed, (draft) =>
      tickJobs(draft, run, ['print/0'], { done: true, by: '' }, freshIds()),
    );
    expect(laidIn(ticked)).toBe(laidIn(placed));
    const [first] = fronts;
    const moved = edited(placed, (draft) => setPlaces(draft, run, [[first?.id as Id<'copy'>, at(400)]]));
    expect(laidIn(moved)).not.toBe(laidIn(placed));
    expect(lengths(moved)).toEqual([
      [100, 80],
      [190, 80],
      [400, 80],
    ]);
  });

  it('is laid as an edit has left it so far, in the middle of it', () => {
    const back = edited(placed, (draft) => {
      lockRun(draft, run, freshIds());
      finishRun(draft, run, freshIds());
    });
    expect(back.run[run]?.state).toBe('printed');
    // All of it is off the roll: 190 + 80 + 10 of 10,000 mm.
    expect(back.film[laidIn(back).film.id]).toMatchObject({ lengthLeft: fromMm(10_000 - 280) });
  });
});

describe('a part printed run', () => {
  it('follows the orders of what is not printed: they are due when they are due now', () => {
    const dues = (book: Book) => {
      const work = workOf(laidIn(book), startingStation('C'), new Date('2026-11-25T08:00:00'));
      return work.ok ? work.value.problem.dues.length : null;
    };
    expect(dues(part)).toBe(0);
    expect(dues(edited(part, (draft) => editOrder(draft, order, { due: '2026-11-26' as LocalDate })))).toBe(
      1,
    );
  });

  it('keeps what is printed as it was printed, and the rest as it was locked, when it is locked again', () => {
    const [, second, third] = fronts;
    const resized = edited(part, (draft) => {
      editTransfer(draft, front, { width: fromMm(50), height: fromMm(40) });
      setPlaces(draft, run, [
        [second?.id as Id<'copy'>, at(100)],
        [third?.id as Id<'copy'>, at(145)],
      ]);
    });
    const rest = [
      [10, 80],
      [100, 40],
      [145, 40],
    ];
    expect(lengths(resized)).toEqual(rest);
    const again = edited(resized, (draft) => lockRun(draft, run, freshIds()));
    expect(lengths(again)).toEqual(rest);
    // Printed a bit further, and resized once more: each copy keeps the size it was printed in.
    const further = edited(again, (draft) => printedTo(draft, run, fromMm(142), freshIds()));
    const twice = edited(further, (draft) => editTransfer(draft, front, { height: fromMm(30) }));
    expect(lengths(twice)).toEqual([
      [10, 80],
      [100, 40],
      [145, 30],
    ]);
    expect(lengths(edited(twice, (draft) => lockRun(draft, run, freshIds())))).toEqual(lengths(twice));
  });

  it('shows every copy of it when film behind is spoiled', () => {
    // The second front is laid anew since the run was locked.
    const [, second] = fronts;
    const moved = edited(part, (draft) => setPlaces(draft, run, [[second?.id as Id<'copy'>, at(105)]]));
    const spoiled = edited(moved, (draft) => {
      spoil(draft, run, { from: fromMm(200), to: fromMm(210) }, freshIds());
    });
    // The third front is taken off; the second, before it, is printed now.
    expect(lengths(spoiled)).toEqual([
      [10, 80],
      [105, 80],
    ]);
    expect(laidIn(spoiled).copies.every(({ fixed }) => fixed)).toBe(true);
    const record = spoiled.run[run];
    if (!record) throw new Error('no run');
    expect(Object.keys(runView(spoiled, record).copy)).toHaveLength(5);
  });
});
