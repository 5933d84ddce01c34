import { type Block, inTurn } from './blocks';
import { type Decoder, dispatch } from './decode';
import { soonestDues } from './dues';
import { pathsOf } from './paths';
import type { ScheduleProblem } from './problem';

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
export function inOrder(blocks: readonly Block[], keyOf: Key): number[] {
  const isSooner = byKey(blocks, keyOf);
  return inTurn(blocks, (ready) =>
    ready.reduce((best, block, at) => (isSooner(block, ready[best] ?? 0) ? at : best), 0),
  );
}

/** The setting that is asked for the longest; 0 if none is. */
function mostUsed(tasks: ScheduleProblem['tasks']): number {
  const times = new Map<number, number>([[0, 0]]);
  for (const { setting, from, to } of tasks.flatMap(({ uses }) => uses)) {
    if (setting > 0) times.set(setting, (times.get(setting) ?? 0) + to - from);
  }
  return [...times].reduce((most, each) => (each[1] > most[1] ? each : most))[0];
}

/** What rules go by: of each block what is least among its tasks. */
interface Traits {
  readonly head: number;
  /** The longest way to go, as a number below 0: the longest comes first. */
  readonly toGo: number;
  readonly due: number;
  /** The same without what is urgent. */
  readonly timed: number;
  readonly longest: number;
  readonly setting: number;
  /** 0 for the setting that is asked for the longest. */
  readonly unusual: number;
}

/** Longest way to go, soonest due, soonest possible, longest first, like settings together. */
const keys: readonly ((traits: Traits) => readonly number[])[] = [
  ({ toGo }) => [toGo],
  ({ due, toGo }) => [due, toGo],
  ({ head, toGo }) => [head, toGo],
  ({ due, setting, toGo }) => [due, setting, toGo],
  ({ setting, due, toGo }) => [setting, due, toGo],
  ({ unusual, toGo }) => [unusual, toGo],
  ({ longest, toGo }) => [longest, toGo],
  ({ head, toGo }) => [head + toGo],
];

/** By which key blocks come, and whether they are put in a row by it or dispatched. */
export interface Rule {
  readonly key: (traits: Traits) => readonly number[];
  readonly isDispatched: boolean;
}

/** What has a time before what is urgent. */
const timedFirst: Rule['key'] = ({ timed, due, toGo }) => [timed, due, toGo];

const bothWays = (key: Rule['key']): Rule[] => [
  { key, isDispatched: false },
  { key, isDispatched: true },
];

/** All priority rules there are (Kolisch 1996). */
export const everyRule: readonly Rule[] = keys.flatMap(bothWays);

/** The rules that may tell sequences of a problem apart. */
export const rulesFor = ({ dues }: Pick<ScheduleProblem, 'dues'>): readonly Rule[] =>
  dues.some(({ at }) => at === null) ? [...everyRule, ...bothWays(timedFirst)] : everyRule;

/** Sequences of a problem by priority rules. */
export function sequencesBy(decoder: Decoder): (rule: Rule) => number[] {
  const { problem, blocks } = decoder;
  const { tasks } = problem;
  const paths = pathsOf(problem);
  const { heads, tails } = paths;
  const due = soonestDues(problem, paths);
  const isUrgent = problem.dues.some(({ at }) => at === null);
  const timed = isUrgent
    ? soonestDues({ ...problem, dues: problem.dues.filter(({ at }) => at !== null) }, paths)
    : due;
  const usual = mostUsed(tasks);
  const traits = blocks.map((block): Traits => {
    const least = (pick: (task: number) => number) => Math.min(...block.tasks.map(pick));
    const setting = least((task) => tasks[task]?.uses.find((use) => use.setting > 0)?.setting ?? 0);
    return {
      head: least((task) => heads[task] ?? 0),
      toGo: least((task) => -((tasks[task]?.duration ?? 0) + (tails[task] ?? 0))),
      due: least((task) => Math.min(due[task] ?? 0, 1e9)),
      timed: least((task) => Math.min(timed[task] ?? 0, 1e9)),
      longest: least((task) => -(tasks[task]?.duration ?? 0)),
      setting,
      unusual: setting === usual ? 0 : setting,
    };
  });
  return ({ key, isDispatched }) => {
    const keyOf: Key = (block) => (traits[block] ? key(traits[block]) : []);
    return isDispatched ? dispatch(decoder, byKey(blocks, keyOf)) : inOrder(blocks, keyOf);
  };
}
