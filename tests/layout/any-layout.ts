import fc from 'fast-check';
import {
  addOrder,
  addTransfer,
  applySettled,
  type BookDraft,
  editFilm,
  editTransfer,
  forget,
  lockRun,
  printedTo,
  redoStep,
  remember,
  setCount,
  setPinned,
  setPlaces,
  spoil,
  stepBack,
  stepForward,
  undoStep,
} from '../../src/editing';
import { takeOff } from '../../src/editing/places';
import {
  fillerProblem,
  type Keep,
  type LaidCopy,
  type LaidRun,
  layRun,
  placeFor,
  placesOf,
  problemAgain,
  problemOf,
  type RunProblem,
  refusals,
  sheetAt,
  withCopies,
} from '../../src/layout';
import { type Book, type Film, type Run, runOf } from '../../src/model';
import { createPlanner, validatePlan } from '../../src/packing';
import { asMinor, fromMm, type Micrometres, um } from '../../src/units';
import { freshIds, NOW, smallBook } from '../editing/book';

/** A share of something, by which an act finds its copy, its place or its amount in whatever book there is. */
const share = fc.nat({ max: 999 }).map((parts) => parts / 1000);
const mm = (least: number, most: number) =>
  fc.integer({ min: least * 10, max: most * 10 }).map((tenths) => fromMm(tenths / 10));
const gap = fc.integer({ min: 0, max: 40 }).map((half) => um(half * 200));
const cutting = fc.constantFrom('free' as const, 'straight' as const, 'staged' as const);
const together = fc.constantFrom(
  { kind: 'any' } as const,
  { kind: 'near', share: 0.05 } as const,
  { kind: 'apart' } as const,
);
const turn = fc.constantFrom('fixed' as const, 'quarter' as const);

/** What a film may be changed to at any time. */
const changes = fc.record(
  {
    width: mm(120, 330),
    gap,
    cutting,
    together,
    margins: fc.record({ left: mm(0, 8), right: mm(0, 8), lead: mm(0, 15), tail: mm(0, 15) }),
    curl: mm(0, 5),
  },
  { requiredKeys: [] },
);
const rollChanges = fc.record(
  {
    lengthLeft: mm(200, 2000),
    spanMax: fc.option(mm(80, 400), { nil: null }),
    cutBlank: mm(0, 20),
    unreached: mm(0, 50),
    noPrint: fc.array(
      fc.tuple(mm(0, 600), mm(1, 60)).map(([from, long]) => ({ from, to: um(from + long) })),
      { maxLength: 2 },
    ),
  },
  { requiredKeys: [] },
);
const sheetChanges = fc.record(
  { length: mm(180, 420), sheetsLeft: fc.nat({ max: 6 }) },
  { requiredKeys: [] },
);

const transfer = fc.record({ order: share, width: mm(10, 110), height: mm(10, 110), turn });

/** What somebody may do to a layout. */
const act = fc.oneof(
  fc.record({ kind: fc.constant('lay-out'), keep: fc.constantFrom('pinned', 'placed', 'before'), at: share }),
  fc.record({ kind: fc.constant('fill') }),
  fc.record({ kind: fc.constant('again') }),
  fc.record({ kind: fc.constant('put-back'), which: share }),
  fc.record({ kind: fc.constant('move'), which: share, x: share, y: share, turns: fc.boolean() }),
  fc.record({ kind: fc.constant('nudge'), which: share, x: mm(-20, 20), y: mm(-20, 20) }),
  fc.record({ kind: fc.constant('pin'), which: share, pinned: fc.boolean() }),
  fc.record({ kind: fc.constant('take-off'), which: share }),
  fc.record({ kind: fc.constant('resize'), which: share, to: transfer }),
  fc.record({ kind: fc.constant('count'), which: share, count: fc.nat({ max: 6 }), filler: fc.boolean() }),
  fc.record({ kind: fc.constant('film'), to: changes, roll: rollChanges, sheets: sheetChanges }),
  fc.record({ kind: fc.constant('printed'), to: share }),
  fc.record({ kind: fc.constant('spoil'), from: share, long: mm(1, 200) }),
  fc.record({ kind: fc.constant('undo'), times: fc.integer({ min: 1, max: 4 }) }),
  fc.record({ kind: fc.constant('redo'), times: fc.integer({ min: 1, max: 4 }) }),
);
type Act = typeof act extends fc.Arbitrary<infer Any> ? Any : never;

/** A shop with a film of any kind, some orders, and what is done to their layout, one act after the other. */
export const anyDay = fc.record({
  onSheets: fc.boolean(),
  film: changes,
  roll: rollChanges,
  sheets: sheetChanges,
  transfers: fc.array(fc.tuple(transfer, fc.integer({ min: 1, max: 5 }), fc.nat({ max: 3 })), {
    minLength: 1,
    maxLength: 4,
  }),
  acts: fc.array(act, { minLength: 2, maxLength: 10 }),
});
export type Day = typeof anyDay extends fc.Arbitrary<infer Any> ? Any : never;

/** An entry of a list, by a share of it. */
const at = <Entry>(entries: readonly Entry[], by: number): Entry | undefined =>
  entries[Math.floor(by * entries.length)];

function filmWith<Own extends Film>(
  film: Own,
  { film: to, roll, sheets }: Pick<Day, 'film' | 'roll' | 'sheets'>,
): Own {
  return { ...film, ...to, ...(film.kind === 'roll' ? roll : sheets) };
}

function bookOf(day: Day): Book {
  const { book } = smallBook();
  const [small] = Object.values(book.film);
  if (small?.kind !== 'roll') throw new Error('no roll');
  const { lengthLeft, spanMax, jobBlank, cutBlank, unreached, noPrint, price, ...fields } = small;
  const film: Film = day.onSheets
    ? { ...fields, kind: 'sheets', length: fromMm(300), sheetsLeft: 4, price: asMinor(90) }
    : small;
  const ids = freshIds();
  const bare: Book = { ...book, order: {}, transfer: {}, copy: {}, film: { [film.id]: filmWith(film, day) } };
  return applySettled(
    bare,
    (draft) => {
      const orders = [0, 1].map((number) => addOrder(draft, { name: `Order ${number}`, due: null }, ids));
      for (const [{ order, ...size }, count, fillers] of day.transfers) {
        const id = at(orders, order);
        if (!id) continue;
        const own = addTransfer(
          draft,
          id,
          { name: 'print', typed: { width: '', height: '' }, ...size },
          count,
          ids,
        );
        setCount(draft, own, fillers, ids, 'filler');
      }
    },
    NOW,
  ).book;
}

/** What is seen of a run after an act. */
export interface Seen {
  readonly laid: LaidRun;
  readonly act: Act['kind'];
  /** Copies that came off the film by it. */
  readonly takenOff: number;
}

/** How often plans were shown, and refused since they failed their check. */
export interface Tally {
  plans: number;
  refused: number;
}

/**
 * Plays a day of acts on a shop's film, as the app does them, undo and redo included.
 * @param see is shown the run after every act that changed something
 */
export function playDay(day: Day, see: (seen: Seen) => void, tally: Tally = { plans: 0, refused: 0 }): void {
  const ids = freshIds();
  let book = bookOf(day);
  const open = (): { run: Run; film: Film; laid: LaidRun } => {
    const found = runOf(book, null);
    const laid = found && layRun(book, found.run);
    if (!found || !laid) throw new Error('no run');
    return { ...found, laid };
  };
  const make = (own: Act, edit: (draft: BookDraft) => unknown): void => {
    const { book: edited, step, takenOff } = applySettled(book, (draft) => void edit(draft), NOW);
    if (!step) return;
    book = remember(edited, step, NOW);
    see({ laid: open().laid, act: own.kind, takenOff: takenOff.length });
  };
  const lay = (own: Act, problem: RunProblem, before: (draft: BookDraft) => void = () => undefined): void => {
    const { run, film } = open();
    const planner = createPlanner(problem.problem, 1);
    planner.step(4);
    const plan = planner.best();
    tally.plans += 1;
    const places = placesOf(plan, problem, film);
    if (validatePlan(problem.problem, plan).length > 0) tally.refused += 1;
    else {
      make(own, (draft) => {
        before(draft);
        setPlaces(draft, run.id, places);
      });
    }
  };
  const hand = (own: Act, copy: LaidCopy | undefined, change: (copy: LaidCopy) => LaidCopy): void => {
    if (!copy || copy.fixed) return;
    const { run, laid } = open();
    const moved = change(copy);
    if (refusals(withCopies(laid, [moved]), [moved]).length > 0) return;
    const { id, x, y, turned, pinned } = moved;
    make(own, (draft) => setPlaces(draft, run.id, [[id, { x, y, turned, pinned }]]));
  };

  for (const own of day.acts) {
    const { run, film, laid } = open();
    const along = (by: number): Micrometres => um(Math.round(by * Math.max(laid.lengthUsed, fromMm(300))));
    const transferAt = (by: number) => at(Object.values(book.transfer), by);
    switch (own.kind) {
      case 'lay-out': {
        const keep: Keep = own.keep === 'before' ? { before: along(own.at) } : own.keep;
        const fillers = Object.values(book.copy)
          .filter(({ role, run: on, place }) => role === 'filler' && on === run.id && place && !place.pinned)
          .filter(({ place }) => keep === 'pinned' && (place?.y ?? 0) >= laid.printedTo)
          .map(({ id }) => id);
        lay(own, problemOf(book, run, film, keep), (draft) => takeOff(draft, fillers));
        break;
      }
      case 'fill': {
        const used = { length: laid.lengthUsed, sheets: sheetAt(film, laid.lengthUsed) };
        if (laid.lengthUsed > 0) lay(own, fillerProblem(book, run, film, used));
        break;
      }
      case 'again':
        lay(own, problemAgain(book, run, film));
        break;
      case 'put-back': {
        const copy = at(
          Object.values(book.copy).filter(({ place }) => place === null),
          own.which,
        );
        const place = copy && placeFor(book, run, film, copy);
        if (place) make(own, (draft) => setPlaces(draft, run.id, [[copy.id, place]]));
        break;
      }
      case 'move':
        hand(own, at(laid.copies, own.which), (copy) => ({
          ...copy,
          x: um(Math.round(own.x * film.width)),
          y: along(own.y),
          ...(own.turns ? { turned: !copy.turned, width: copy.length, length: copy.width } : {}),
        }));
        break;
      case 'nudge':
        hand(own, at(laid.copies, own.which), (copy) => ({
          ...copy,
          x: um(copy.x + own.x),
          y: um(copy.y + own.y),
        }));
        break;
      case 'pin':
      case 'take-off': {
        const copy = at(
          laid.copies.filter(({ fixed }) => !fixed),
          own.which,
        );
        if (copy && own.kind === 'pin') make(own, (draft) => setPinned(draft, [copy.id], own.pinned));
        else if (copy) make(own, (draft) => takeOff(draft, [copy.id]));
        break;
      }
      case 'resize': {
        const resized = transferAt(own.which);
        const { width, height, turn: may } = own.to;
        if (resized) make(own, (draft) => editTransfer(draft, resized.id, { width, height, turn: may }));
        break;
      }
      case 'count': {
        const counted = transferAt(own.which);
        const role = own.filler ? 'filler' : 'ordered';
        if (counted) make(own, (draft) => setCount(draft, counted.id, own.count, ids, role));
        break;
      }
      case 'film': {
        const {
          id,
          changed: _,
          ...fields
        } = filmWith(film, { film: own.to, roll: own.roll, sheets: own.sheets });
        make(own, (draft) => editFilm(draft, id, fields, ids));
        break;
      }
      case 'printed':
        if (laid.copies.length > 0) {
          make(own, (draft) => {
            lockRun(draft, run.id, ids);
            printedTo(draft, run.id, printable(film, along(own.to)), ids);
          });
          book = forget(book);
        }
        break;
      case 'spoil':
        if (laid.copies.length > 0) {
          const from = along(own.from);
          make(own, (draft) => {
            lockRun(draft, run.id, ids);
            spoil(draft, run.id, { from, to: printable(film, um(from + own.long)) }, ids);
          });
          book = forget(book);
        }
        break;
      default:
        for (let time = 0; time < own.times; time += 1) {
          const before = book;
          const step = own.kind === 'undo' ? stepBack(book) : stepForward(book);
          if (step) book = (own.kind === 'undo' ? undoStep : redoStep)(step.book, step.step, ids);
          if (book !== before) see({ laid: open().laid, act: own.kind, takenOff: 0 });
        }
    }
  }
}

/** Sheets are printed whole. */
const printable = (film: Film, to: Micrometres): Micrometres =>
  film.kind === 'sheets' ? um(Math.ceil(to / film.length) * film.length) : to;
