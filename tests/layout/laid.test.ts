import { describe, expect, it } from 'vitest';
import { lockRun, printedTo, setCount, setPinned, setPlaces } from '../../src/editing';
import { applySettled } from '../../src/editing/settled';
import {
  cleanOffcut,
  copiesToLay,
  fillerProblem,
  type LaidRun,
  layRun,
  leftOut,
  orderStretch,
  placeFor,
  placesOf,
  problemAgain,
  problemOf,
  problemOnFilm,
  refusals,
  runFigures,
  savings,
  snap,
  straightCuts,
  tooLargeFor,
  unfitCopies,
  withCopies,
} from '../../src/layout';
import { measureRun } from '../../src/layout/laid';
import { asId, type Book, copiesByTransfer, type Id, type Place, runOf } from '../../src/model';
import { atOnce, createPlanner, validatePlan } from '../../src/packing';
import { asMinor, fromMm, QUARTER, UPRIGHT, um } from '../../src/units';
import { context, edited, NOW, smallBook } from '../editing/book';
import { rollUsed } from '../packing/used';

const { book, front, tag } = smallBook();

function draftIn(inBook: Book) {
  const draft = runOf(inBook, null);
  if (draft?.film.kind !== 'roll') throw new Error('no draft on a roll');
  return { run: draft.run, film: draft.film };
}

function laid(inBook: Book) {
  const run = layRun(inBook, draftIn(inBook).run);
  if (!run) throw new Error('no run');
  return run;
}

const filmFieldsOf = ({
  id,
  name,
  printer,
  width,
  margins,
  gap,
  cutting,
  together,
  peel,
  curl,
  archived,
  changed,
}: LaidRun['film']) => ({
  id,
  name,
  printer,
  width,
  margins,
  gap,
  cutting,
  together,
  peel,
  curl,
  archived,
  changed,
});

const placeAt = (x: number, y: number, more: Partial<Place> = {}): Place => ({
  x: fromMm(x),
  y: fromMm(y),
  angle: UPRIGHT,
  pinned: false,
  ...more,
});

const copiesOf = (transfer: Id<'transfer'>) =>
  (copiesByTransfer(book).get(transfer) ?? []).map(({ id }) => id);
const [front1, front2] = copiesOf(front) as [Id<'copy'>, Id<'copy'>];
const [tag1] = copiesOf(tag) as [Id<'copy'>];

const placed = edited(book, (draft) =>
  setPlaces(draft, draftIn(book).run.id, [
    [front1, placeAt(5, 10)],
    [front2, placeAt(110, 10)],
    [tag1, placeAt(5, 95, { angle: QUARTER })],
  ]),
);

describe('a run laid out', () => {
  it('knows its length with the tail, and its copies from the leading edge on', () => {
    const run = laid(placed);
    expect(run.copies.map(({ id }) => id)).toEqual([front1, front2, tag1]);
    // The turned tag ends at 95 + 50, the tail is 10.
    expect(run.lengthUsed).toBe(fromMm(155));
    expect(run.copies[2]).toMatchObject({ width: fromMm(30), length: fromMm(50), angle: QUARTER });
  });

  it('takes of a copy that lies by its outline only what is within it from the waste', () => {
    const run = laid(placed);
    const halves = run.copies.map((copy) => ({
      ...copy,
      outline: [Float64Array.of(0, 0, copy.width, 0, 0, copy.length)],
    }));
    const { waste } = runFigures({ ...run, copies: halves });
    expect(waste).toBeCloseTo(1 - (2 * 100 * 80 + 50 * 30) / 2 / (330 * 155), 10);
  });

  it('tells waste as film minus copies, and cost by length', () => {
    const { waste, cost } = runFigures(laid(placed));
    expect(waste).toBeCloseTo(1 - (2 * 100 * 80 + 50 * 30) / (330 * 155), 10);
    expect(cost).toBe(Math.round(0.155 * 840));
  });

  it.each([
    [420, 272.5],
    [168, 20.5],
    // Between a front and an end margin of 10 mm each, nothing could be printed on 19.5 mm.
    [167, 0],
  ])('of the last sheet, %d mm long, keeps %d mm clean past half a gap', (length, offcut) => {
    const run = laid(placed);
    const sheets = {
      kind: 'sheets',
      length: fromMm(length),
      sheetsLeft: 10,
      price: asMinor(90),
      ...filmFieldsOf(run.film),
    } as const;
    expect(cleanOffcut({ ...run, film: sheets })).toBe(fromMm(offcut));
    expect(cleanOffcut(run)).toBe(0);
  });

  it.each([
    { lies: 'nothing', onSheets: [], printed: 0, used: 0 },
    { lies: 'a copy on the third sheet', onSheets: [2], printed: 0, used: 3 },
    { lies: 'a copy on the first of two printed', onSheets: [0], printed: 2, used: 2 },
    { lies: 'a copy behind one that is printed', onSheets: [0, 1], printed: 1, used: 2 },
    { lies: 'nothing on two that are spoiled', onSheets: [], printed: 2, used: 2 },
  ])('takes $used sheets, each a span of its own, with $lies', ({ onSheets, printed, used }) => {
    const run = laid(placed);
    const film = {
      kind: 'sheets',
      length: fromMm(300),
      sheetsLeft: 10,
      price: asMinor(90),
      ...filmFieldsOf(run.film),
    } as const;
    const copies = onSheets.flatMap((sheet, index) => {
      const copy = run.copies[index];
      return copy ? [{ ...copy, y: um(fromMm(300) * sheet + fromMm(20)) }] : [];
    });
    const { lengthUsed, spans } = measureRun(copies, film, {
      printedTo: um(fromMm(300) * printed),
      spoiled: [],
    });
    expect(lengthUsed).toBe(fromMm(300) * used);
    expect(spans?.map(({ to }) => to)).toEqual(
      Array.from({ length: used }, (_, at) => fromMm(300) * (at + 1)),
    );
  });

  it('is nothing while nothing lies on it', () => {
    expect(runFigures(laid(book))).toEqual({ length: 0, sheets: 0, waste: 0, cost: 0 });
  });
});

describe('a copy held over the film', () => {
  const held = (x: number, y: number) => {
    const run = laid(placed);
    const [copy] = run.copies;
    if (!copy) throw new Error('no copy');
    const moved = { ...copy, x: fromMm(x), y: fromMm(y) };
    return refusals(withCopies(run, [moved]), [moved]).map(({ code }) => code);
  };

  it.each([
    [5, 10, []],
    [4.9, 10, ['outside-left']],
    [225.1, 100, ['outside-right']],
    [215, 10, []],
    [214.9, 9.9, ['before-lead', 'too-close']],
    [5, 9_950, ['past-end']],
    [110, 94.9, ['too-close']],
    [110, 95, []],
  ])('at %d, %d mm is refused for %j', (x, y, codes) => {
    expect(held(x, y)).toEqual(codes);
  });

  it('is drawn to a gap from its neighbours, in line with them, and to the margins', () => {
    const run = laid(placed);
    const copy = run.copies[1];
    if (!copy) throw new Error('no copy');
    const near = { ...copy, x: fromMm(111.5), y: fromMm(8.7) };
    expect(snap(run, near, fromMm(2))).toEqual({ x: fromMm(110), y: fromMm(10) });
    const far = { ...copy, x: fromMm(150), y: fromMm(300) };
    expect(snap(run, far, fromMm(2))).toEqual({ x: fromMm(150), y: fromMm(300) });
  });
});

describe('a film that changes under its copies', () => {
  it('takes off those that no longer fit, the ones further on first, never a pinned one for an unpinned', () => {
    const wider = edited(placed, (draft) => {
      const transfer = draft.transfer[front];
      if (transfer) transfer.width = fromMm(106);
    });
    expect(unfitCopies(laid(wider))).toEqual([front2]);
    const pinned = edited(wider, (draft) => setPinned(draft, [front2], true));
    expect(unfitCopies(laid(pinned))).toEqual([front1]);
  });

  it('does so in one step with the edit', () => {
    const { book: settled, takenOff } = applySettled(
      placed,
      (draft) => {
        const film = Object.values(draft.film)[0];
        if (film) film.width = fromMm(200);
      },
      NOW,
    );
    expect(takenOff).toEqual([front2]);
    expect(settled.copy[front2]?.place).toBeNull();
  });
});

describe('a copy put back', () => {
  it('lies where there is room nearest to the leading edge, and moves no other', () => {
    const { run, film } = draftIn(placed);
    const waiting = placed.copy[copiesOf(front)[2] ?? ''];
    if (!waiting) throw new Error('no copy waits');
    const place = placeFor(placed, run, film, waiting, atOnce);
    const after = edited(placed, (draft) => setPlaces(draft, run.id, [[waiting.id, place]]));
    const result = laid(after);
    for (const copy of result.copies) expect(refusals(result, [copy])).toEqual([]);
    // Beside the two fronts 110 mm are left across: the third lies beside them, and the film gets no longer.
    expect(result.lengthUsed).toBe(laid(placed).lengthUsed);
    expect(placeFor(placed, run, { ...film, lengthLeft: fromMm(20) }, waiting, atOnce)).toBeNull();
  });
});

describe('straight cuts', () => {
  it('are counted for the copies as they lie', () => {
    // Two fronts side by side, a tag behind: one cut across, one along.
    expect(straightCuts(laid(placed))).toBe(2);
  });
});

describe('fillers', () => {
  it('are placed only where they add no film', () => {
    const ids = { ...context(NOW), newId: <Kind extends string>() => asId<Kind>(crypto.randomUUID()) };
    const filled = edited(placed, (draft) => setCount(draft, tag, 40, ids, 'filler'));
    const { run, film } = draftIn(filled);
    const own = fillerProblem(filled, run, film, { length: laid(filled).lengthUsed, sheets: 0 });
    expect(copiesToLay(own)).toHaveLength(40);
    // Waiting fillers are no part of the layout itself.
    expect(copiesToLay(problemOf(filled, run, film, 'pinned'))).toHaveLength(5);
    const plan = createPlanner(own.problem, 1).best();
    const after = edited(filled, (draft) => setPlaces(draft, run.id, placesOf(plan, own, film)));
    expect(laid(after).lengthUsed).toBe(laid(placed).lengthUsed);
    expect(laid(after).copies.length).toBeGreaterThan(3);
    for (const copy of laid(after).copies) expect(refusals(laid(after), [copy])).toEqual([]);
  });
});

describe('the problem of a run', () => {
  const { run, film } = draftIn(placed);

  it('asks for every copy, those of one order with one rank', () => {
    const { problem } = problemOf(placed, run, film, 'pinned');
    expect(problem.pieces.map(({ count, rank }) => [count, rank])).toEqual([
      [3, 0],
      [2, 0],
    ]);
    expect(problem.pinned).toEqual([]);
  });

  it('keeps what lies where only the rest is to be placed (rule 4)', () => {
    const { problem } = problemOf(placed, run, film, 'placed');
    expect(problem.pieces.map(({ count }) => count)).toEqual([1, 1]);
    expect(problem.pinned).toHaveLength(3);
  });

  it('keeps all that begins before a place, and lays nothing new there', () => {
    const before = fromMm(95);
    const own = problemOf(placed, run, film, { before });
    const { problem } = own;
    expect(problem.pinned).toHaveLength(2);
    expect(copiesToLay(own)).toHaveLength(3);
    const plan = createPlanner(problem, 1).best();
    expect(validatePlan(problem, plan)).toEqual([]);
    for (const { y } of plan.placed.slice(2)) expect(y).toBeGreaterThanOrEqual(before);
  });

  it('comes back as places that lie right in the book, numbers going up along the film', () => {
    const own = problemOf(placed, run, film, 'pinned');
    const planner = createPlanner(own.problem, 1);
    planner.step(100);
    const plan = planner.best();
    expect(validatePlan(own.problem, plan)).toEqual([]);
    const after = edited(placed, (draft) => setPlaces(draft, run.id, placesOf(plan, own, film)));
    const result = laid(after);
    expect(result.copies).toHaveLength(5);
    expect(result.lengthUsed).toBe(rollUsed(plan).length);
    for (const copy of result.copies) expect(refusals(result, [copy])).toEqual([]);
    const fronts = result.copies.filter(({ transfer }) => transfer.id === front).map(({ number }) => number);
    expect(fronts).toEqual(fronts.toSorted((a, b) => a - b));
  });

  it('tells what was left out by its transfer', () => {
    const short = { ...film, lengthLeft: fromMm(60) };
    const own = problemOf(placed, run, short, 'pinned');
    const plan = createPlanner(own.problem, 1).best();
    expect(leftOut(plan, own)).toEqual([{ transfer: front, count: 3, reason: 'too-long' }]);
  });

  it('is asked for the shortest of just what lies there', () => {
    expect(problemOnFilm(laid(placed)).pieces.map(({ id, count }) => [id, count])).toEqual([
      [front, 2],
      [tag, 1],
    ]);
  });

  it('knows what is too large for the film, before it is laid out', () => {
    const size = (width: number, height: number, turn: 'fixed' | 'quarter') => ({
      width: fromMm(width),
      height: fromMm(height),
      turn,
    });
    expect(tooLargeFor(film, size(320, 100, 'fixed'))).toBeNull();
    expect(tooLargeFor(film, size(320.1, 100, 'fixed'))).toBe('too-wide');
    expect(tooLargeFor(film, size(400, 100, 'quarter'))).toBeNull();
    expect(tooLargeFor({ ...film, spanMax: fromMm(350) }, size(400, 100, 'quarter'))).toBe('too-long');
  });
});

describe('a layout that is offered', () => {
  const { run, film } = draftIn(placed);
  const planOf = (problem: ReturnType<typeof problemAgain>['problem']) => {
    const planner = createPlanner(problem, 1);
    planner.step(100);
    return planner.best();
  };

  it('is one of just what lies on the film and may be moved: nothing waits for it, and what is pinned stays', () => {
    const pinned = edited(placed, (draft) => setPinned(draft, [front1], true));
    const own = problemAgain(pinned, draftIn(pinned).run, film);
    const { problem } = own;
    expect(problem.pinned).toHaveLength(1);
    expect(copiesToLay(own).map(({ id }) => id)).toEqual([front2, tag1]);
    expect(problem.pieces.map(({ count }) => count)).toEqual([1, 1]);
  });

  it('leaves what is printed where it is, and lays the rest behind it', () => {
    const locked = edited(placed, (draft) => lockRun(draft, run.id, context()));
    const half = edited(locked, (draft) => printedTo(draft, run.id, fromMm(95), context()));
    const own = problemAgain(half, draftIn(half).run, film);
    const { problem } = own;
    expect(copiesToLay(own).map(({ id }) => id)).toEqual([tag1]);
    expect(problem.pinned).toHaveLength(2);
    expect(validatePlan(problem, planOf(problem))).toEqual([]);
  });

  it('says what it saves in length and money, and is none where it saves nothing or leaves a copy out', () => {
    const { problem } = problemAgain(placed, run, film);
    const plan = planOf(problem);
    // Fronts and the tag lie side by side: 10 + 80 + 10 of 155 mm.
    expect(rollUsed(plan).length).toBe(fromMm(100));
    const saved = asMinor(Math.round(0.155 * 840) - Math.round(0.1 * 840));
    expect(savings(laid(placed), plan)).toEqual({ length: fromMm(55), sheets: 0, cost: saved });
    const [piece] = problem.pieces.keys();
    const leaving = { ...plan, unplaced: [{ piece: piece ?? 0, count: 1, reason: 'no-room' as const }] };
    expect(savings(laid(placed), leaving)).toBeNull();
    expect(
      savings(laid(placed), {
        ...plan,
        used: { kind: 'roll', ...rollUsed(plan), length: um(fromMm(155) - fromMm(0.9)) },
      }),
    ).toBeNull();
  });

  it('knows the share of film from an order’s first copy to its last', () => {
    // From 10 to 145 of 155 mm.
    expect(orderStretch(laid(placed))).toBeCloseTo(135 / 155, 10);
    expect(orderStretch({ copies: [], lengthUsed: um(0) })).toBe(1);
  });
});
