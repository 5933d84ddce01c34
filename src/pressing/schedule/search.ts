import { seededRandom } from '../../units';
import { blocksOf } from './blocks';
import type { ScheduleBound } from './bounds';
import { type Decoded, decode, decoderOf, decodeWithin, scheduleOf } from './decode';
import { justifier } from './justify';
import { ancestors, moved, movedWhole } from './moves';
import { pathsOf } from './paths';
import type { Schedule, ScheduleProblem } from './problem';
import { inOrder, type Rule, sequencesBy } from './rules';

/** Looks for good sequences, one an iteration. */
export interface Search {
  /** The best schedule so far. */
  best(): Schedule;
  /** What it costs. */
  cost(): number;
  /** The rules of the first sequences, that with the best schedule first. */
  readonly rules: readonly Rule[];
  /** Tries so many sequences more. */
  step(iterations: number): void;
  /** Nothing better is left to find. */
  finished(): boolean;
}

/** How long is searched, and from what. */
export interface SearchOptions {
  readonly seed: number;
  /** Annealing goes from warm to cold in so many sequences, then begins again from the best. */
  readonly cycle: number;
  /** A schedule of the same tasks to begin with: after a tick most of it still holds. */
  readonly earlier: Pick<Schedule, 'starts'> | null;
}

/** At first a schedule is taken that is worse by about this share of a task; less where an earlier one is bettered. */
const WARMTH = { first: 0.1, again: 0.03 };
/** Of more blocks none are dispatched: that grows with the square of their number, and the search gets on without. */
const DISPATCHED = 1000;
/** How often a whole job is moved. */
const WHOLE = 0.5;

/**
 * Searches sequences of a problem whose lanes are in a known order already: those of priority rules or of the earlier schedule first, then moves by simulated annealing (Kirkpatrick,
 * Gelatt & Vecchi, Science 220, 671-680, 1983), each move justified: the better of its schedule as it comes, and pushed late and
 * back, is what counts.
 * Deterministic for (problem, options, iterations).
 * @param rules those of the first sequences, where there is no earlier schedule; at least one is not dispatched
 * @throws RangeError if tasks wait for one another in a circle
 */
export function searchOf(
  problem: ScheduleProblem,
  bound: ScheduleBound,
  rules: readonly Rule[],
  { seed, cycle, earlier }: SearchOptions,
): Search {
  const random = seededRandom(seed);
  const blocks = blocksOf(problem);
  const decoder = decoderOf(problem, blocks);
  const justified = justifier(decoder);
  const by = sequencesBy(decoder);
  const own = rules.filter(({ isDispatched }) => !isDispatched || blocks.length <= DISPATCHED);
  const first = earlier
    ? [
        decode(
          decoder,
          inOrder(blocks, (block) => [earlier.starts[blocks[block]?.tasks[0] ?? 0] ?? 0]),
        ),
      ]
    : own.map((rule) => decode(decoder, by(rule)));
  const ranked = own
    .map((rule, at) => ({ rule, cost: first[at]?.cost ?? 0 }))
    .sort((a, b) => a.cost - b.cost)
    .map(({ rule }) => rule);
  let found = first.reduce((best, other) => (other.cost < best.cost ? other : best));
  let current = found;
  const waitsFor = ancestors(blocks, found.sequence);
  const mean = problem.tasks.reduce((sum, { duration }) => sum + duration, 0) / problem.tasks.length;
  const warmest = mean * WARMTH[earlier ? 'again' : 'first'];
  let iteration = 0;

  /** A schedule near the present one, if it costs no more than it may. */
  const neighbour = (atMost: number): Decoded | null => {
    const plain = decode(
      decoder,
      random() < WHOLE
        ? movedWhole(blocks, current.sequence, waitsFor, random)
        : moved(current.sequence, waitsFor, random),
      current,
    );
    const better = decodeWithin(decoder, justified(plain), Math.min(atMost, plain.cost));
    return better ?? (plain.cost <= atMost ? plain : null);
  };
  const soonest = pathsOf(problem).ends;
  const isSoonest = () =>
    problem.dues.every(({ task, at }) => at !== null || (found.ends[task] ?? 0) <= (soonest[task] ?? 0));
  const finished = () =>
    blocks.length < 2 ||
    (found.makespan <= bound.seconds && found.late === 0 && found.overLimit === 0 && isSoonest());
  return {
    best: () => scheduleOf(decoder, found),
    cost: () => found.cost,
    rules: ranked,
    finished,
    step(iterations) {
      for (let count = 0; count < iterations && !finished(); count += 1) {
        const cool = 1 - (iteration % cycle) / cycle;
        const worse = -warmest * cool * cool * Math.log(1 - random());
        current = neighbour(current.cost + worse) ?? current;
        iteration += 1;
        if (current.cost < found.cost) found = current;
        if (iteration % cycle === 0) current = found;
      }
    },
  };
}
