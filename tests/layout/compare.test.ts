import { describe, expect, it } from 'vitest';
import { addFilm, addOrder, addTransfer, removeOrder, setPinned, setPlaces } from '../../src/editing';
import {
  byThrift,
  candidateOf,
  filmTried,
  laidBy,
  laidQuickly,
  orderAlone,
  refusals,
  type Trial,
} from '../../src/layout';
import { asId, type Book, copiesByTransfer, type Film, type Run, runOf } from '../../src/model';
import { createPlanner, validatePlan } from '../../src/packing';
import { asMinor, fromMm, UPRIGHT, um } from '../../src/units';
import { context, edited, NOW, smallBook } from '../editing/book';

const { book, front, order } = smallBook();
const ids = { ...context(NOW), newId: <Kind extends string>() => asId<Kind>(crypto.randomUUID()) };

function openIn(inBook: Book) {
  const open = runOf(inBook, null);
  if (open?.film.kind !== 'roll') throw new Error('no draft on a roll');
  return { run: open.run, film: open.film };
}

/** A run as it is laid out for a comparison. */
function layOutOn(inBook: Book, run: Run, trial: Trial, iterations = 100) {
  const candidate = candidateOf(inBook, run, trial);
  const planner = createPlanner(candidate.problem.problem, 1);
  planner.step(iterations);
  const plan = planner.best();
  expect(validatePlan(candidate.problem.problem, plan)).toEqual([]);
  return { ...filmTried(candidate, plan), laid: laidBy(candidate, plan).laid };
}

describe('a run tried another way', () => {
  it('takes the film that its way of cutting needs', () => {
    // Nine squares that fill 33 x 32 cm with their gaps, in one way that no straight cut parts (Moron 1925).
    const squares = [18, 15, 14, 10, 9, 8, 7, 4, 1];
    const squared = edited(book, (draft) => {
      removeOrder(draft, order);
      const own = addOrder(draft, { name: 'Squares', due: null }, ids);
      for (const side of squares) {
        const mm = 10 * side - 5;
        const size = { width: fromMm(mm), height: fromMm(mm), typed: { width: `${mm}`, height: `${mm}` } };
        addTransfer(draft, own, { name: `square ${side}`, ...size, turn: 'fixed' }, 1, ids);
      }
    });
    const { run, film } = openIn(squared);
    const margins = { left: um(0), right: um(0), lead: um(0), tail: um(0) };
    const narrow: Film = { ...film, width: fromMm(325), margins, gap: fromMm(5) };
    const by = (cutting: Film['cutting']) =>
      layOutOn(squared, run, { film: { ...narrow, cutting }, endless: true }, 5000).length;
    expect(by('free')).toBe(fromMm(315));
    expect(by('straight')).toBeGreaterThan(fromMm(315));
    expect(by('staged')).toBeGreaterThan(fromMm(315));
  });

  it('is laid out without leaving a trace, pins and print let go', () => {
    const { run, film } = openIn(book);
    const [first] = copiesByTransfer(book).get(front) ?? [];
    if (!first) throw new Error('no copy');
    const pinned = edited(book, (draft) => {
      setPlaces(draft, run.id, [
        [first.id, { x: fromMm(120), y: fromMm(500), angle: UPRIGHT, pinned: false }],
      ]);
      setPinned(draft, [first.id], true);
    });
    const printed: Run = { ...run, state: 'draft', printed: { to: fromMm(300), as: [] }, received: null };
    const before = JSON.stringify(pinned);
    const tried = layOutOn(pinned, printed, { film });
    expect(tried.laid?.copies).toHaveLength(5);
    expect(tried.length).toBeLessThan(fromMm(500));
    if (tried.laid) expect(refusals(tried.laid, tried.laid.copies)).toEqual([]);
    expect(JSON.stringify(pinned)).toBe(before);
  });

  it('lets every copy turn where that is asked for', () => {
    const { run, film } = openIn(book);
    const upright = edited(book, (draft) => {
      for (const transfer of Object.values(draft.transfer)) transfer.turn = 'fixed';
    });
    // 100 x 80 mm between margins of 5 mm: on 95 mm of film they lie only turned.
    const narrow = { ...film, width: fromMm(95) };
    expect(layOutOn(upright, run, { film: narrow }).leftOut).toBe(3);
    expect(layOutOn(upright, run, { film: narrow, allTurn: true }).leftOut).toBe(0);
  });

  it('comes first on the cheapest film that takes every copy', () => {
    const { run, film } = openIn(book);
    const { id: _id, changed: _changed, ...fields } = film;
    const stocked = edited(book, (draft) => {
      addFilm(draft, { ...fields, name: 'dear', price: { ...film.price, amount: asMinor(2000) } }, ids);
      addFilm(draft, { ...fields, name: 'narrow', width: fromMm(80) }, ids);
    });
    const films = Object.values(stocked.film)
      .map((each) => layOutOn(stocked, run, { film: each }))
      .sort(byThrift);
    expect(films.map((each) => each.film.name)).toEqual(['Roll', 'dear', 'narrow']);
    expect(films.map(({ leftOut }) => leftOut > 0)).toEqual([false, false, true]);
  });
});

describe('an order that is not laid out', () => {
  it('is reckoned alone, with all its copies, on as much film as it takes', () => {
    const two = edited(book, (draft) => {
      const other = addOrder(draft, { name: 'Other', due: null }, ids);
      const size = { width: fromMm(100), height: fromMm(100), typed: { width: '100', height: '100' } };
      addTransfer(draft, other, { name: 'square', ...size, turn: 'quarter' }, 4, ids);
    });
    const { film } = openIn(two);
    const own = two.order[order];
    if (!own) throw new Error('no order');
    const { book: apart, run } = orderAlone(two, own, film);
    const trial = { film: { ...film, lengthLeft: um(1) }, endless: true };
    const { laid } = laidQuickly(candidateOf(apart, run, trial));
    expect(laid?.copies.map((copy) => copy.order.id)).toEqual(Array.from({ length: 5 }, () => order));
  });
});
