import { seededRandom } from '../../packing/random';
import { type Block, blocksOf } from './blocks';
import { type ScheduleBound, scheduleBound } from './bounds';
import { type Decoder, decode, dispatch } from './decode';
import { pathsOf } from './paths';
import { Placing } from './placing';
import type { Schedule, ScheduleProblem } from './problem';

/** Looks for good sequences, an iteration a schedule. */
export interface Scheduler {
  /** The best schedule so far. */
  best(): Schedule;
  /** Builds so many schedules more. */
  step(iterations: number): void;
  /** Nothing better is left to find. */
  finished(): boolean;
  readonly bound: ScheduleBound;
}

/** Annealing goes from warm to cold in so many schedules, then begins again from the best. */
const CYCLE = 3000;
/** At first a schedule is taken that is worse by about this share. */
const WARMTH = 0.001;
/** How often a whole job is moved. */
const WHOLE = 0.5;

type Key = (block: number) => readonly number[];

/** Whether a block's key is the smaller one. */
function byKey(blocks: readonly Block[], keyOf: Key): (a: number, b: number) => boolean {
  const keys = blocks.map((_, index) => keyOf(index));
  return (a, b) => {
    const own = keys[a] ?? [];
    const other = keys[b] ?? [];
    for (let at = 0; at < own.length; at += 1) {
      const difference = (own[at] ?? 0) - (other[at] ?? 0);
      if (difference !== 0) return difference < 0;
    }
    return a < b;
  };
}

/** Blocks in the order of a key, the smallest first, each after those that it waits for. */
function inOrder(blocks: readonly Block[], keyOf: Key): number[] {
  const isSooner = byKey(blocks, keyOf);
  const waiting = blocks.map(({ before }) => before.length);
  const ready = blocks.flatMap((_, index) => (waiting[index] === 0 ? [index] : []));
  const sequence: number[] = [];
  while (ready.length > 0) {
    let at = 0;
    for (let other = 1; other < ready.length; other += 1) {
      if (isSooner(ready[other] ?? 0, ready[at] ?? 0)) at = other;
    }
    const [next] = ready.splice(at, 1);
    if (next === undefined) break;
    sequence.push(next);
    for (const follower of blocks[next]?.after ?? []) {
      waiting[follower] = (waiting[follower] ?? 0) - 1;
      if (waiting[follower] === 0) ready.push(follower);
    }
  }
  return sequence;
}

/** The setting that is asked for the longest; 0 if none is. */
function mostUsed(tasks: ScheduleProblem['tasks']): number {
  const times = new Map<number, number>([[0, 0]]);
  for (const { setting, from, to } of tasks.flatMap(({ uses }) => uses)) {
    if (setting > 0) times.set(setting, (times.get(setting) ?? 0) + to - from);
  }
  return [...times].reduce((most, each) => (each[1] > most[1] ? each : most))[0];
}

/** Sequences by priority rules (Kolisch 1996): longest way to go, soonest due, soonest possible, longest first, like settings together. */
function* starts(decoder: Decoder): Generator<number[]> {
  const { problem, blocks } = decoder;
  const { tasks, dues } = problem;
  const { heads, tails, order } = pathsOf(problem);
  const due = tasks.map(() => Number.POSITIVE_INFINITY);
  for (const { task, at } of dues) due[task] = Math.min(due[task] ?? at, at);
  for (const index of order.toReversed()) {
    for (const { task: before } of tasks[index]?.after ?? []) {
      due[before] = Math.min(due[before] ?? 0, due[index] ?? 0);
    }
  }
  const of = (pick: (task: number) => number) => (block: number) => {
    const own = blocks[block]?.tasks ?? [];
    return Math.min(...own.map(pick));
  };
  const head = of((task) => heads[task] ?? 0);
  const toGo = of((task) => -((tasks[task]?.duration ?? 0) + (tails[task] ?? 0)));
  const soonest = of((task) => Math.min(due[task] ?? 0, 1e9));
  const longest = of((task) => -(tasks[task]?.duration ?? 0));
  const setting = of((task) => tasks[task]?.uses.find((use) => use.setting > 0)?.setting ?? 0);
  const usual = mostUsed(tasks);
  const rules: readonly Key[] = [
    (block) => [toGo(block)],
    (block) => [soonest(block), toGo(block)],
    (block) => [head(block), toGo(block)],
    (block) => [soonest(block), setting(block), toGo(block)],
    (block) => [setting(block), soonest(block), toGo(block)],
    (block) => [setting(block) === usual ? 0 : setting(block), toGo(block)],
    (block) => [longest(block), toGo(block)],
    (block) => [head(block) + toGo(block)],
  ];
  for (const rule of rules) {
    yield inOrder(blocks, rule);
    yield dispatch(decoder, byKey(blocks, rule));
  }
}

/** For each block all that it waits for, directly or not: `table[block * count + other]`. */
function ancestors(blocks: readonly Block[], sequence: readonly number[]): Uint8Array {
  const count = blocks.length;
  const table = new Uint8Array(count * count);
  for (const block of sequence) {
    for (const before of blocks[block]?.before ?? []) {
      table[block * count + before] = 1;
      for (let other = 0; other < count; other += 1) {
        if (table[before * count + other]) table[block * count + other] = 1;
      }
    }
  }
  return table;
}

/** Moves one block forward or back by some places, and with it all on the way that it waits for, or that waits for it. */
function moved(sequence: readonly number[], waitsFor: Uint8Array, random: () => number): number[] {
  const count = sequence.length;
  const from = Math.floor(random() * count);
  // Small moves are tried more often than far ones.
  const far = Math.max(1, Math.floor(random() ** 2 * count));
  const to = random() < 0.5 ? from - far : from + far;
  const low = Math.max(0, Math.min(from, to));
  const high = Math.min(count - 1, Math.max(from, to));
  const block = sequence[from] ?? 0;
  const isBack = to < from;
  const along: number[] = [];
  const without: number[] = [];
  for (let at = low; at <= high; at += 1) {
    const other = sequence[at] ?? 0;
    const related = isBack ? waitsFor[block * count + other] : waitsFor[other * count + block];
    (other === block || related ? along : without).push(other);
  }
  const between = isBack ? [...along, ...without] : [...without, ...along];
  return [...sequence.slice(0, low), ...between, ...sequence.slice(high + 1)];
}

/** Moves one block with all that it waits for and that waits for it: a whole job, soonest to latest. */
function movedWhole(
  blocks: readonly Block[],
  sequence: readonly number[],
  waitsFor: Uint8Array,
  random: () => number,
): number[] {
  const count = sequence.length;
  const block = Math.floor(random() * count);
  const shift = (random() - 0.5) * count;
  const places = new Float64Array(count);
  sequence.forEach((other, at) => {
    const isKin = other === block || waitsFor[block * count + other] || waitsFor[other * count + block];
    let place = at + (isKin ? shift : 0);
    // No sooner than what it waits for, which comes before it in the sequence.
    for (const before of blocks[other]?.before ?? []) place = Math.max(place, places[before] ?? 0);
    places[other] = place;
  });
  return sequence.toSorted((a, b) => (places[a] ?? 0) - (places[b] ?? 0));
}

/**
 * Searches sequences: those of priority rules first, then moves by simulated annealing (Kirkpatrick, Gelatt & Vecchi, Science
 * 220, 671-680, 1983). Deterministic for
 * (problem, seed, iterations).
 * @param earlier a schedule of the same tasks to begin with: after a tick most of it still holds
 * @throws RangeError if tasks wait for one another in a circle
 */
export function createScheduler(
  problem: ScheduleProblem,
  seed: number,
  earlier: Pick<Schedule, 'starts'> | null = null,
): Scheduler {
  const random = seededRandom(seed);
  const blocks = blocksOf(problem);
  const bound = scheduleBound(problem);
  const decoder: Decoder = { problem, blocks, placing: new Placing(problem), tails: pathsOf(problem).tails };
  const first = [...starts(decoder)];
  if (earlier) {
    first.unshift(inOrder(blocks, (block) => [earlier.starts[blocks[block]?.tasks[0] ?? 0] ?? 0]));
  }
  let best: Schedule | null = null;
  for (const sequence of first) {
    const schedule = decode(decoder, sequence);
    if (schedule && (best === null || schedule.cost < best.cost)) best = schedule;
  }
  if (!best) throw new RangeError('no sequence to begin with');
  let found: Schedule = best;
  let current = found;
  const waitsFor = ancestors(blocks, found.sequence);
  let iteration = 0;
  const finished = () =>
    blocks.length < 2 || (found.makespan <= bound.seconds && found.late === 0 && found.overLimit === 0);
  return {
    bound,
    best: () => found,
    finished,
    step(iterations) {
      for (let count = 0; count < iterations && !finished(); count += 1) {
        const sequence =
          random() < WHOLE
            ? movedWhole(blocks, current.sequence, waitsFor, random)
            : moved(current.sequence, waitsFor, random);
        const cool = 1 - (iteration % CYCLE) / CYCLE;
        const warmth = WARMTH * found.makespan * cool * cool;
        const next = decode(decoder, sequence, current, current.cost - warmth * Math.log(1 - random()));
        iteration += 1;
        if (next) current = next;
        if (current.cost < found.cost) found = current;
        if (iteration % CYCLE === 0) current = found;
      }
    },
  };
}
