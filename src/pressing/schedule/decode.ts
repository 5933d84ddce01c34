import { type Block, inTurn } from './blocks';
import { pathsOf } from './paths';
import { Placing } from './placing';
import type { Schedule, ScheduleProblem } from './problem';

/**
 * What a second of each fault costs beside a second of the whole: wet print left too long is spoiled, lateness is worse than
 * a long day, what is urgent is worth as much of the day as it comes sooner, and of equal days the one that has its orders done sooner
 * is better.
 */
const WEIGHT = { overLimit: 100_000, late: 1000, urgent: 1, meanDue: 0.01 };

/** A problem made ready to be given many schedules. */
export interface Decoder {
  readonly problem: ScheduleProblem;
  readonly blocks: readonly Block[];
  readonly placing: Placing;
  /** The least time from the end of each task to the end of all. */
  readonly tails: readonly number[];
}

/**
 * Makes a problem ready.
 * @param blocks those of the problem
 * @throws RangeError if tasks wait for one another in a circle
 */
export const decoderOf = (problem: ScheduleProblem, blocks: readonly Block[]): Decoder => ({
  problem,
  blocks,
  placing: new Placing(problem),
  tails: pathsOf(problem).tails,
});

/** A sequence with its times as they are placed, and how good they are: thousands are made and few are told. */
export interface Decoded extends Pick<Placing, 'starts' | 'ends' | 'taken'>, Measures {
  readonly sequence: readonly number[];
  /** Whether a stint begins later than it could. */
  readonly isPutOff: boolean;
}

type Measures = Pick<Schedule, 'makespan' | 'overLimit' | 'late' | 'cost'>;

/**
 * Goes through the blocks of a sequence in the order in which they are placed: those that find no place on a shelf wait until what lies
 * there is taken up, and what waits for them with them.
 * @param sequence blocks, each after those that it waits for
 * @param put places a block; whether the next shall come
 * @returns the order; `null` if it was broken off
 */
function inPlacingOrder(
  { blocks, placing }: Decoder,
  sequence: readonly number[],
  put: (block: Block, number: number, at: number) => boolean,
): number[] | null {
  const order: number[] = [];
  const waiting: number[] = [];
  const isPlaced = new Uint8Array(blocks.length);
  const isNext = (number: number) =>
    blocks[number]?.before.every((before) => isPlaced[before] === 1) ?? false;
  const mayCome = (number: number) => {
    const block = blocks[number];
    return block !== undefined && isNext(number) && placing.mayTake(block);
  };
  const come = (number: number): boolean => {
    const block = blocks[number];
    isPlaced[number] = 1;
    order.push(number);
    return block === undefined || put(block, number, order.length - 1);
  };
  const comeOf = (at: number): boolean => waiting.splice(at, 1).every(come);
  for (const number of sequence) {
    const block = blocks[number];
    if (waiting.length === 0 && block && placing.mayTake(block)) {
      if (!come(number)) return null;
      continue;
    }
    waiting.push(number);
    for (let at = waiting.findIndex(mayCome); at >= 0; at = waiting.findIndex(mayCome)) {
      if (!comeOf(at)) return null;
    }
  }
  // A load that was begun without regard to the others goes on, though there may be no place for it.
  while (waiting.length > 0) {
    const at = waiting.findIndex(mayCome);
    if (!comeOf(at >= 0 ? at : waiting.findIndex(isNext))) return null;
  }
  return order;
}

/**
 * Gives every task the earliest time at which it can be done, blocks in the order of a sequence as far as shelves let them (the serial
 * generation scheme: Kolisch, European Journal of Operational Research 90(2), 320-333, 1996).
 * Nothing may be placed before.
 * @param near one whose sequence begins alike: so far its times are taken over
 * @returns the order in which they were placed
 */
export function place(decoder: Decoder, sequence: readonly number[], near: Decoded | null): number[] {
  const { placing } = decoder;
  let isAlike = near !== null;
  const order = inPlacingOrder(decoder, sequence, (block, number, at) => {
    isAlike &&= near?.sequence[at] === number;
    if (near && isAlike) placing.takeAs(block, near);
    else {
      placing.set(block);
      placing.take(block);
    }
    return true;
  });
  return order ?? [];
}

/**
 * Decodes a sequence: {@link place}, again with each stint put off that would go on while its unit is switched off.
 * @param sequence blocks, each after those that it waits for
 * @param near another that was decoded: where the sequences begin alike, times are taken over
 */
export function decode(decoder: Decoder, sequence: readonly number[], near: Decoded | null = null): Decoded {
  const { problem, placing } = decoder;
  placing.clear();
  // What was put off was so for what comes behind.
  let order = place(decoder, sequence, near?.isPutOff ? null : near);
  while (placing.putOff()) order = place(decoder, sequence, null);
  return decoded(problem, placing, order);
}

/**
 * Decodes a sequence unless its schedule costs too much: `null`, mostly as soon as that is plain.
 * @param sequence blocks, each after those that it waits for
 */
export function decodeWithin(decoder: Decoder, sequence: readonly number[], atMost: number): Decoded | null {
  const { problem, placing, tails } = decoder;
  if (problem.stints.length > 0) {
    const whole = decode(decoder, sequence);
    return whole.cost > atMost ? null : whole;
  }
  placing.clear();
  const order = inPlacingOrder(decoder, sequence, (block) => {
    placing.set(block);
    for (const task of block.tasks) {
      if ((placing.ends[task] ?? 0) + (tails[task] ?? 0) > atMost) return false;
    }
    placing.take(block);
    return true;
  });
  return order && measure(problem, placing).cost <= atMost ? decoded(problem, placing, order) : null;
}

/**
 * A sequence in which what can begin soonest comes next, of several the one with the smaller key (the parallel generation scheme,
 * ibid.): no worker waits while there is something to do.
 */
export function dispatch(
  { blocks, placing }: Decoder,
  isSooner: (a: number, b: number) => boolean,
): number[] {
  placing.clear();
  // What is taken only makes others begin later, so that an old time need be looked at again only if it is the soonest;
  // but where a unit was set up, others of that setting may begin sooner, and where places of a shelf were given back, what waits for them.
  const soonest = blocks.map(() => Number.NEGATIVE_INFINITY);
  const first = (ready: readonly number[]) =>
    ready.reduce((chosen, block, at) => {
      const best = ready[chosen] ?? 0;
      const difference = (soonest[block] ?? 0) - (soonest[best] ?? 0);
      return difference < 0 || (difference === 0 && isSooner(block, best)) ? at : chosen;
    }, 0);
  return inTurn(blocks, (ready) => {
    for (;;) {
      const chosen = first(ready);
      const number = ready[chosen] ?? 0;
      const block = blocks[number];
      if (!block) return chosen;
      const isForced = soonest[number] === Number.POSITIVE_INFINITY;
      const start = isForced || placing.mayTake(block) ? placing.set(block) : Number.POSITIVE_INFINITY;
      if (isForced || start === soonest[number]) {
        if (placing.take(block)) soonest.fill(Number.NEGATIVE_INFINITY);
        return chosen;
      }
      soonest[number] = start;
    }
  });
}

/** What was placed, kept. */
const decoded = (problem: ScheduleProblem, placing: Placing, sequence: readonly number[]): Decoded => ({
  starts: placing.starts.slice(),
  ends: placing.ends.slice(),
  taken: placing.taken.slice(),
  sequence,
  isPutOff: placing.isPutOff(),
  ...measure(problem, placing),
});

/** Tells a schedule in plain data. */
export const scheduleOf = (
  { placing }: Decoder,
  { starts, ends, taken, sequence, makespan, overLimit, late, cost }: Decoded,
): Schedule => ({
  starts: [...starts],
  ends: [...ends],
  units: placing.placesOf(taken),
  sequence,
  makespan,
  overLimit,
  late,
  cost,
});

/** How good times are. */
function measure(
  { tasks, chains, waits, dues, now }: ScheduleProblem,
  { starts, ends }: Pick<Placing, 'starts' | 'ends'>,
): Measures {
  let makespan = now;
  for (const end of ends) makespan = Math.max(makespan, end);
  let overLimit = 0;
  const count = (from: number, to: number, limit: number) => {
    // What has been powdered already cannot be powdered sooner.
    if (!tasks[to]?.fixed) overLimit += Math.max(0, (starts[to] ?? 0) - (ends[from] ?? 0) - limit);
  };
  for (const { tasks: chained, limit } of chains) count(chained[0] ?? 0, chained.at(-1) ?? 0, limit);
  for (const { from, to, limit } of waits) count(from, to, limit);
  let late = 0;
  let urgent = 0;
  let sum = 0;
  for (const { task, at, weight } of dues) {
    const end = ends[task] ?? 0;
    if (at === null) urgent += weight * end;
    else late += weight * Math.max(0, end - at);
    sum += end;
  }
  const cost =
    WEIGHT.overLimit * overLimit +
    WEIGHT.late * late +
    WEIGHT.urgent * urgent +
    makespan +
    (WEIGHT.meanDue * sum) / Math.max(1, dues.length);
  return { makespan, overLimit, late, cost };
}
