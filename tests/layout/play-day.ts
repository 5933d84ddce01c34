import {
  addOrder,
  addTransfer,
  applySettled,
  type Edit,
  edits,
  type NewArtwork,
  redo,
  session,
  setArtwork,
  setCount,
  undo,
} from '../../src/editing';
import { keepOutline } from '../../src/editing/artwork';
import {
  fillerProblem,
  type Keep,
  type LaidCopy,
  type LaidRun,
  layRun,
  placeFor,
  problemAgain,
  problemOf,
  type RunProblem,
  refusals,
  sheetAt,
  sheetStart,
  soundPlaces,
  turnedTo,
  withCopies,
} from '../../src/layout';
import { furthestEnd } from '../../src/layout/laid';
import {
  type ArtworkOutline,
  asId,
  type Book,
  type Film,
  OUTLINE_STEPS,
  type Run,
  runOf,
  settingsOf,
} from '../../src/model';
import { type Plan, validatePlan } from '../../src/packing';
import { atOnce, createPlanner } from '../../src/planning';
import { asMinor, fromMm, type Micrometres, turnedBy, um } from '../../src/units';
import { freshIds, NOW, smallBook } from '../editing/book';
import type { Act, Day } from './any-day';

/** What is seen of a run after an act. */
interface Seen {
  readonly laid: LaidRun;
  readonly act: Act['kind'];
  /** Copies that came off the film by it. */
  readonly takenOff: number;
}

/** A plan before it is shown. */
interface Planned {
  readonly act: Act['kind'];
  readonly problem: RunProblem['problem'];
  readonly plan: Plan;
  /** What is wrong with it as an answer to its problem. */
  readonly wrong: ReturnType<typeof validatePlan>;
  /** Whether it may be shown. */
  readonly sound: boolean;
}

/** Told of a day as it goes on. */
export interface Watch {
  /** A run after an act that changed something. */
  see?(seen: Seen): void;
  planned?(planned: Planned): void;
  /** A hand has moved a copy, and may lay it there or not. */
  moved?(may: boolean): void;
}

/** A box, the half of one, three sides of a frame, two islands, and a frame around a hole: corners in shares of the box. */
const OUTLINES: readonly (ArtworkOutline | null)[] = [
  null,
  [[0, 0, 1, 0, 0, 1]],
  [[0, 0, 1, 0, 1, 0.2, 0.2, 0.2, 0.2, 1, 0, 1]],
  [
    [0, 0, 0.4, 0, 0, 0.4],
    [1, 1, 0.6, 1, 1, 0.6],
  ],
  [
    [0, 0, 1, 0, 1, 1, 0, 1],
    [0.1, 0.1, 0.1, 0.9, 0.9, 0.9, 0.9, 0.1],
  ],
].map((lines) => lines?.map((line) => line.map((by) => by * OUTLINE_STEPS)) ?? null);

const artworkOf = (transfer: string): NewArtwork => ({
  id: asId(transfer),
  fileName: 'print.png',
  kind: 'png',
  pixels: { width: 10, height: 10 },
  density: null,
  trim: null,
  madeFrom: null,
});

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
        const outline = at(OUTLINES, order) ?? null;
        if (outline === null) continue;
        const artwork = artworkOf(own);
        setArtwork(draft, own, artwork, ids);
        keepOutline(draft, artwork.id, outline, 1);
      }
    },
    NOW,
  ).book;
}

/** Sheets are printed whole. */
const printable = (film: Film, to: Micrometres): Micrometres =>
  film.kind === 'sheets' ? um(Math.ceil(to / film.length) * film.length) : to;

/** Where a hand lays a copy. */
function laidTo(
  { film, copies }: LaidRun,
  { width, length }: Pick<LaidCopy, 'width' | 'length'>,
  to: Extract<Act, { kind: 'move' }>['to'],
  others: readonly LaidCopy[],
): { x: Micrometres; y: Micrometres } | null {
  const { gap, margins } = film;
  const across = (by: number) =>
    um(margins.left + Math.round(by * Math.max(0, film.width - margins.left - margins.right - width)));
  const lead = margins.lead + film.curl;
  switch (to.at) {
    case 'beside': {
      const other = at(others, to.other);
      if (!other) return null;
      const { x, y } = other;
      if (to.side === 'left') return { x: um(x - gap - width), y };
      if (to.side === 'right') return { x: um(x + other.width + gap), y };
      return { x, y: um(to.side === 'before' ? y - gap - length : y + other.length + gap) };
    }
    case 'behind-all': {
      const end = furthestEnd(others);
      const y =
        film.kind === 'roll' ? Math.max(lead, end + gap) : sheetStart(film, sheetAt(film, end) + 1) + lead;
      return { x: across(to.x), y: um(y) };
    }
    default:
      return { x: across(to.x), y: um(lead + Math.round(to.y * furthestEnd(copies))) };
  }
}

/** Plays a day of acts on a shop's film, each an edit of a session as the app makes it, undo and redo included. */
export function playDay(day: Day, { see, planned, moved }: Watch): void {
  const ids = freshIds();
  let book = bookOf(day);
  const open = (): { run: Run; film: Film; laid: LaidRun } => {
    const found = runOf(book, null);
    const laid = found && layRun(book, found.run);
    if (!found || !laid) throw new Error('no run');
    return { ...found, laid };
  };
  const go = (act: Act['kind'], to: { readonly book: Book; readonly takenOff: readonly unknown[] }): void => {
    if (to.book === book) return;
    book = to.book;
    see?.({ laid: open().laid, act, takenOff: to.takenOff.length });
  };
  const make = (act: Act['kind'], edit: Edit): void => go(act, session(book, edit, ids));
  const lay = (act: Act['kind'], problem: RunProblem): void => {
    const { run, film } = open();
    const planner = createPlanner(problem.problem, 1);
    planner.step(4);
    const plan = planner.best();
    const places = soundPlaces({ book, run, film }, problem, plan);
    const wrong = validatePlan(problem.problem, plan);
    planned?.({ act, problem: problem.problem, plan, wrong, sound: places !== null });
    if (places) make(act, edits.layOut(run.id, places));
  };
  const hand = (act: Act['kind'], held: LaidCopy): void => {
    const { run, laid } = open();
    const may = refusals(withCopies(laid, [held]), [held]).length === 0;
    moved?.(may);
    const { id, x, y, angle, pinned } = held;
    if (may) make(act, edits.setPlaces(run.id, [[id, { x, y, angle, pinned }]]));
  };

  for (const own of day.acts) {
    const { run, film, laid } = open();
    const along = (by: number): Micrometres => um(Math.round(by * Math.max(laid.lengthUsed, fromMm(300))));
    const transferAt = (by: number) => at(Object.values(book.transfer), by);
    const held = (by: number) =>
      at(
        laid.copies.filter(({ fixed }) => !fixed),
        by,
      );
    switch (own.kind) {
      case 'lay-out': {
        const keep: Keep = own.keep === 'before' ? { before: along(own.at) } : own.keep;
        lay(own.kind, problemOf(book, run, film, keep));
        break;
      }
      case 'fill': {
        const used = { length: laid.lengthUsed, sheets: sheetAt(film, laid.lengthUsed) };
        if (laid.lengthUsed > 0) lay(own.kind, fillerProblem(book, run, film, used));
        break;
      }
      case 'again':
        lay(own.kind, problemAgain(book, run, film));
        break;
      case 'put-back': {
        const copy = at(
          Object.values(book.copy).filter(({ place }) => place === null),
          own.which,
        );
        const place = copy && placeFor(book, run, film, copy, atOnce);
        if (place) make(own.kind, edits.setPlaces(run.id, [[copy.id, place]]));
        break;
      }
      case 'move': {
        const copy = held(own.which);
        if (!copy) break;
        const lies = own.turns ? turnedTo(copy, turnedBy(copy.angle, 90)) : copy;
        const others = laid.copies.filter(({ id }) => id !== copy.id);
        const to = laidTo(laid, lies, own.to, others);
        if (to) hand(own.kind, { ...lies, ...to });
        break;
      }
      case 'pin':
      case 'take-off': {
        const copy = held(own.which);
        if (!copy) break;
        make(
          own.kind,
          own.kind === 'pin' ? edits.setPinned([copy.id], own.pinned) : edits.takeOff([copy.id]),
        );
        break;
      }
      case 'resize': {
        const resized = transferAt(own.which);
        const { width, height, turn } = own.to;
        if (resized) make(own.kind, edits.editTransfer(resized.id, { width, height, turn }));
        break;
      }
      case 'count': {
        const counted = transferAt(own.which);
        const role = own.filler ? 'filler' : 'ordered';
        if (counted) make(own.kind, edits.setCount(counted.id, own.count, role));
        break;
      }
      case 'film': {
        const { id, changed: _, ...fields } = filmWith(film, { ...own, film: own.to });
        make(own.kind, edits.chooseFilm(run.id, id, fields));
        break;
      }
      case 'printed':
      case 'spoil': {
        if (laid.copies.length === 0) break;
        make(own.kind, edits.lockRun(run.id, null));
        if (own.kind === 'printed') make(own.kind, edits.printedTo(run.id, printable(film, along(own.to))));
        else {
          const from = along(own.from);
          make(own.kind, edits.spoil(run.id, { from, to: printable(film, um(from + own.long)) }));
        }
        break;
      }
      case 'currency':
        make(own.kind, edits.changeCurrency(own.to));
        break;
      case 'settings': {
        const settings = settingsOf(book);
        if (!settings) break;
        make(own.kind, edits.editPrinter(settings.station.printers[0].id, { inkUp: own.inkUp }));
        break;
      }
      default:
        for (let time = 0; time < own.times; time += 1) {
          go(own.kind, own.kind === 'undo' ? undo(book, ids) : redo(book, ids));
        }
    }
  }
}
