import { describe, expect, it } from 'vitest';
import {
  addRun,
  type BookDraft,
  chooseCopies,
  editTransfer,
  finishRun,
  lockRun,
  moveToRun,
  printedTo,
  removeTransfer,
  reopenRun,
  setCount,
  setPlaces,
  spoil,
  spoilCopy,
  unlockRun,
} from '../../src/editing';
import { takeOff } from '../../src/editing/places';
import { copiesToLay, fillerProblem, layRun, placesOf, problemOf, refusals } from '../../src/layout';
import { asId, type Book, type Id, type Place, runOf } from '../../src/model';
import { createPlanner, validatePlan } from '../../src/packing';
import { fromMm, UPRIGHT } from '../../src/units';
import { context, edited, freshIds, smallBook } from './book';

const { book: empty, front, tag } = smallBook();
const open = runOf(empty, null);
if (open?.film.kind !== 'roll') throw new Error('no roll');
const { id: run } = open.run;
const { id: film } = open.film;
const [a, b, c] = Object.values(empty.copy)
  .filter((copy) => copy.transfer === front)
  .map(({ id }) => id) as [Id<'copy'>, Id<'copy'>, Id<'copy'>];

const at = (x: number, y: number): Place => ({ x: fromMm(x), y: fromMm(y), angle: UPRIGHT, pinned: false });

/** Three fronts of 100 x 80 mm one behind the other, the tags waiting. */
const laid = edited(empty, (draft) =>
  setPlaces(draft, run, [
    [a, at(5, 10)],
    [b, at(5, 100)],
    [c, at(5, 190)],
  ]),
);
const locked = edited(laid, (draft) => lockRun(draft, run, context()));
const shown = (book: Book, id = run) => {
  const record = book.run[id];
  const laidRun = record && layRun(book, record);
  if (!laidRun) throw new Error('no run');
  return laidRun;
};
/** What is drawn of a run, whatever the records behind it say. */
const drawn = (book: Book) => {
  const { view: _, ...rest } = shown(book);
  return rest;
};
const rollOf = (book: Book) => {
  const roll = book.film[film];
  if (roll?.kind !== 'roll') throw new Error('no roll');
  return roll;
};

describe('a locked run', () => {
  it('embeds all it needs: no later edit changes it', () => {
    const before = shown(locked);
    const after = edited(locked, (draft) => {
      editTransfer(draft, front, { width: fromMm(300), name: 'other' });
      setCount(draft, front, 1, context());
      removeTransfer(draft, front);
      const order = Object.values(draft.order)[0];
      if (order) order.code = 'ZZ';
      const roll = draft.film[film];
      if (roll) roll.width = fromMm(200);
    });
    expect(shown(after)).toEqual(before);
    expect(Object.values(after.copy).filter((copy) => copy.transfer === front)).toHaveLength(3);
  });

  it('goes back to a draft as it was', () => {
    const draft = edited(locked, (book) => unlockRun(book, run, context()));
    expect(drawn(draft)).toEqual(drawn(laid));
    expect(draft.run[run]).toMatchObject({ state: 'draft', printed: null });
    expect(draft.run[run]).not.toHaveProperty('snapshot');
  });

  it('is not made of nothing', () => {
    expect(edited(empty, (draft) => lockRun(draft, run, context())).run[run]?.state).toBe('draft');
  });
});

describe('a run printed to a length', () => {
  const part = edited(locked, (draft) => printedTo(draft, run, fromMm(120), context()));

  it('holds what begins before it and frees the rest', () => {
    expect(shown(part).copies.map(({ id, fixed }) => [id, fixed])).toEqual([
      [a, true],
      [b, true],
      [c, false],
    ]);
  });

  it.each([
    ['taken off', (draft: BookDraft) => takeOff(draft, [a, b, c])],
    [
      'moved to another run',
      (draft: BookDraft) => moveToRun(draft, addRun(draft, { name: 'Run 2', film }, freshIds()), [a, b, c]),
    ],
    [
      'put elsewhere',
      (draft: BookDraft) =>
        setPlaces(
          draft,
          run,
          [a, b, c].map((id) => [id, null]),
        ),
    ],
  ])('lets nothing that is printed be %s', (_, act) => {
    const after = edited(part, act);
    expect([a, b, c].map((id) => after.copy[id]?.state)).toEqual(['placed', 'placed', 'waiting']);
  });

  it('keeps what is done when its count is lowered: what is not printed goes', () => {
    const less = edited(part, (draft) => setCount(draft, front, 1, context()));
    const left = Object.values(less.copy).filter((copy) => copy.transfer === front);
    expect(left.map(({ id }) => id)).toEqual([a, b]);
  });

  it('shows what is done as it was printed, whatever its transfer becomes', () => {
    const after = edited(part, (draft) => editTransfer(draft, front, { width: fromMm(60) }));
    expect(shown(after).copies.map(({ width }) => width)).toEqual([100, 100, 60].map(fromMm));
  });

  it('plans only what lies behind', () => {
    const draft = runOf(part, run);
    if (!draft) throw new Error('no run');
    const own = problemOf(part, draft.run, draft.film, 'pinned');
    const { problem } = own;
    expect(copiesToLay(own).map(({ id }) => id)).toContain(c);
    expect(problem.pinned).toHaveLength(2);
    const plan = createPlanner(problem, 1).best();
    expect(validatePlan(problem, plan)).toEqual([]);
    for (const copy of plan.placed.slice(2)) expect(copy.y).toBeGreaterThanOrEqual(fromMm(120));
  });

  it('lays fillers as they are now: not as copies of them were printed, and turned only if they may be', () => {
    const ids = freshIds();
    const asked = edited(part, (draft) => {
      editTransfer(draft, front, { width: fromMm(160), height: fromMm(60), turn: 'fixed' });
      setCount(draft, front, 20, ids, 'filler');
      setPlaces(draft, run, [[c, at(5, 500)]]);
    });
    const open = runOf(asked, run);
    if (!open) throw new Error('no run');
    const used = { length: shown(asked).lengthUsed, sheets: 0 };
    const fillers = fillerProblem(asked, open.run, open.film, used);
    const plan = createPlanner(fillers.problem, 1).best();
    expect(validatePlan(fillers.problem, plan)).toEqual([]);
    const filled = edited(asked, (draft) => setPlaces(draft, run, placesOf(plan, fillers, open.film)));
    expect(shown(filled).copies.length).toBeGreaterThan(shown(asked).copies.length);
    for (const copy of shown(filled).copies) {
      if (!copy.fixed) expect([copy.number, refusals(shown(filled), [copy])]).toEqual([copy.number, []]);
    }
  });

  it('refuses a copy dropped on printed film', () => {
    const copies = shown(part).copies.filter(({ id }) => id === c);
    const moved = copies.map((copy) => ({ ...copy, x: fromMm(150), y: fromMm(60) }));
    expect(refusals(shown(part), moved).map(({ code }) => code)).toContain('no-print');
  });
});

describe('a jam', () => {
  it('puts every copy touched back on the list, and the film is not used twice', () => {
    let back = 0;
    const jammed = edited(locked, (draft) => {
      back = spoil(draft, run, { from: fromMm(95), to: fromMm(185) }, context());
    });
    expect(back).toBe(1);
    expect(jammed.copy[b]).toMatchObject({ place: null, run: null });
    expect(jammed.run[run]).toMatchObject({ state: 'draft', printed: { to: fromMm(185) } });
    expect(jammed.run[run]?.spoiled).toMatchObject([{ from: fromMm(95), to: fromMm(185), copies: [b] }]);
    expect(shown(jammed).copies.map(({ id }) => id)).toEqual([a, c]);
    const draft = runOf(jammed, run);
    if (!draft) throw new Error('no run');
    const { problem } = problemOf(jammed, draft.run, draft.film, 'pinned');
    const plan = createPlanner(problem, 1).best();
    expect(validatePlan(problem, plan)).toEqual([]);
    expect(plan.unplaced).toEqual([]);
    for (const copy of plan.placed.slice(problem.pinned.length)) {
      expect(copy.y).toBeGreaterThanOrEqual(fromMm(185));
    }
  });
});

describe('a jam in a run of which a copy was printed anew', () => {
  it('leaves that copy on the film of the other run', () => {
    let other = '' as Id<'run'>;
    const anew = edited(locked, (draft) => {
      const by = freshIds();
      finishRun(draft, run, by);
      spoilCopy(draft, { run, copy: a, stage: 'press', garment: false, reason: '' }, by);
      other = addRun(draft, { name: 'Anew', film, takes: 'chosen' }, by);
      chooseCopies(draft, other, [a]);
      setPlaces(draft, other, [[a, at(5, 10)]]);
      lockRun(draft, other, by);
      reopenRun(draft, run, by);
    });
    let back = 0;
    const jammed = edited(anew, (draft) => {
      back = spoil(draft, run, { from: fromMm(10), to: fromMm(185) }, context());
    });
    expect(back).toBe(1);
    expect(jammed.copy[a]).toMatchObject({ state: 'placed', run: other });
    expect(jammed.copy[b]).toMatchObject({ state: 'waiting', run: null });
  });
});

describe('a printed run', () => {
  const printed = edited(locked, (draft) => finishRun(draft, run, freshIds()));

  it('takes its film off the roll, lead and tail and all', () => {
    expect(rollOf(printed).lengthLeft).toBe(rollOf(laid).lengthLeft - fromMm(280));
    expect(printed.run[run]?.state).toBe('printed');
  });

  it('moves what is marked on the roll nearer, and drops what is gone', () => {
    const marked = edited(laid, (draft) => {
      const roll = draft.film[film];
      if (roll?.kind === 'roll') {
        roll.noPrint = [
          { from: fromMm(400), to: fromMm(450) },
          { from: fromMm(275), to: fromMm(300) },
        ];
      }
    });
    const after = edited(
      edited(marked, (draft) => lockRun(draft, run, context())),
      (draft) => finishRun(draft, run, freshIds()),
    );
    expect(rollOf(after).noPrint).toEqual([
      { from: fromMm(120), to: fromMm(170) },
      { from: 0, to: fromMm(20) },
    ]);
    expect(rollOf(edited(after, (draft) => reopenRun(draft, run, freshIds()))).noPrint).toEqual(
      rollOf(marked).noPrint,
    );
  });

  it('can be taken a step back', () => {
    const back = edited(printed, (draft) => reopenRun(draft, run, freshIds()));
    expect(rollOf(back).lengthLeft).toBe(rollOf(laid).lengthLeft);
    expect(drawn(back)).toEqual(drawn(locked));
    expect(back.run[run]?.history.map(({ state }) => state)).toEqual(['locked', 'printed', 'locked']);
  });
});

describe('several drafts', () => {
  const ids = context();
  let second = '' as Id<'run'>;
  const two = edited(laid, (draft) => {
    second = addRun(
      draft,
      { name: 'Run 2', film, takes: 'chosen' },
      { ...ids, newId: <Kind extends string>() => asId<Kind>('second') },
    );
  });

  it('take each their own copies', () => {
    const tags = Object.values(two.copy)
      .filter((copy) => copy.transfer === tag)
      .map(({ id }) => id);
    const chosen = edited(two, (draft) => chooseCopies(draft, second, tags.slice(0, 1)));
    const counts = ([run, second] as const).map((id) => {
      const record = chosen.run[id];
      if (!record) throw new Error('no run');
      return copiesToLay(problemOf(chosen, record, open.film, 'pinned')).length;
    });
    // Three fronts and the tag left over; the one tag chosen.
    expect(counts).toEqual([4, 1]);
  });

  it('hand copies to each other, which wait there for a place', () => {
    const moved = edited(two, (draft) => moveToRun(draft, second, [c]));
    expect(moved.copy[c]).toMatchObject({ run: second, place: null });
    expect(shown(moved).copies.map(({ id }) => id)).toEqual([a, b]);
  });
});
