import { isCutStraight, type RunView, turnsOf } from '../model';
import { type Fault, keepsGapBy, type Lying, type PlaceProblem, ruleFaults, wishFaults } from '../packing';
import { onceFor, um } from '../units';
import { shapeOf, sheetAt, sheetStart } from './film-shape';
import { type LaidCopy, type LaidRun, measureRun } from './laid';

/** Something wrong with a run where it lies. */
export type RunFault =
  /** What may not be: no layout that breaks it is shown. */
  | {
      readonly breaks: 'rule';
      readonly code: PlaceProblem['code'] | 'may-not-turn' | 'cut-by-knife' | 'no-knife-line';
      /** All of them; none where no line parts the run. */
      readonly copies: readonly LaidCopy[];
    }
  /** What was asked for: a hand may lay copies so, and it is said. */
  | { readonly breaks: 'wish'; readonly code: Wish; readonly copies: readonly LaidCopy[] };

/** Straight cuts in any order, in stages, orders apart, and what is due sooner before what is due later. */
export type Wish = 'not-straight' | 'not-staged' | 'not-apart' | 'not-by-due';

const lyingOf = (film: LaidRun['film'], copy: LaidCopy, rank: number): Lying => {
  const { x, width, length, angle, fixed } = copy;
  const outline = keepsGapBy(copy.outline, copy, copy.byOutline);
  const sheet = sheetAt(film, copy.y);
  const y = um(copy.y - sheetStart(film, sheet));
  const turning = copy.transfer.turn;
  return { x, y, width, length, outline, sheet, angle, turning, order: copy.order.id, rank, fixed };
};

function told(fault: Fault, run: LaidRun): RunFault {
  const named = 'copies' in fault ? fault.copies : [fault.copy];
  const copies = named.flatMap((index) => run.copies[index] ?? []);
  switch (fault.code) {
    case 'not-straight':
    case 'not-staged':
    case 'not-apart':
    case 'not-by-due':
      return { breaks: 'wish', code: fault.code, copies };
    case 'edge':
      return { breaks: 'rule', code: fault.problem, copies };
    case 'turned-but-fixed':
      return { breaks: 'rule', code: 'may-not-turn', copies };
    default:
      return { breaks: 'rule', code: fault.code, copies };
  }
}

const turnsIn = onceFor((orders: RunView['order']) => turnsOf(Object.values(orders)));

/** The copies of a run, each with the turn of its order. */
function lyingIn({ film, copies, view }: LaidRun): Lying[] {
  const turns = turnsIn(view.order);
  return copies.map((copy) => lyingOf(film, copy, turns.get(copy.order.id) ?? turns.size));
}

/** What of a run's film was asked for and does not hold; told apart from the rest, since it is shown while copies are carried. */
const brokenBy = onceFor((run: LaidRun): readonly RunFault[] => {
  const { film } = run;
  if (!isCutStraight(film) && film.together.kind === 'any') return [];
  return wishFaults(shapeOf(film, run), lyingIn(run)).map((fault) => told(fault, run));
});

/**
 * All that is wrong with a run where it lies, as its film asks for it: gap, edges and margins, film that may not be used or is
 * not there, knife lines, turns, straight cuts and their stages, orders apart. Copies that are printed lie as they lie: of what
 * is wrong among them alone nothing is told. Worked out once a run.
 */
export const faultsOf = onceFor((run: LaidRun): readonly RunFault[] => {
  const { film, copies, spans } = run;
  const rules = ruleFaults(shapeOf(film, run), lyingIn(run), spans ?? []).map((fault) => told(fault, run));
  const faults = [...rules, ...brokenBy(run)];
  const fixed = copies.filter((copy) => copy.fixed);
  return spans === null && isCuttable(run, fixed)
    ? [...faults, { breaks: 'rule', code: 'no-knife-line', copies: [] }]
    : faults;
});

/** Whether knife lines can cut a run as its film asks, with just these copies on it. */
export const isCuttable = (run: LaidRun, copies: readonly LaidCopy[]): boolean =>
  measureRun(copies, run.film, run).spans !== null;

/** Whether a run may be shown as it lies: it breaks wishes at most. */
export const holds = (run: LaidRun): boolean => faultsOf(run).every(({ breaks }) => breaks === 'wish');

/** What was asked for of a run's layout, and that it does not hold. */
export const brokenWishes = (run: LaidRun): Wish[] => [
  ...new Set(brokenBy(run).flatMap(({ breaks, code }) => (breaks === 'wish' ? [code] : []))),
];
