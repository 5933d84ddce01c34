import { type ScheduleBound, scheduleBound } from './bounds';
import { inLaneOrder, laneOrderOf, laneOrders } from './lanes';
import type { ScheduleProblem } from './problem';
import { rulesFor } from './rules';
import { type Search, type SearchOptions, searchOf } from './search';

/** Looks for good schedules of a problem. */
export interface Scheduler extends Pick<Search, 'best' | 'step' | 'finished'> {
  readonly bound: ScheduleBound;
}

/** So many priority rules are tried in every order of lanes. */
const RULES = 4;
/** Of the sequences of a cycle this share is tried before the last order of lanes is chosen. */
const CHOOSING = 0.4;

/**
 * Schedules a problem in the orders in which its lanes may come: all are searched, again and again the worse half is let go of
 * (successive halving: Karnin, Koren & Somekh, ICML 2013), and the last one is searched to the end. After a tick lanes keep the
 * order that they have in the earlier schedule. Deterministic for (problem, options, iterations).
 * @throws RangeError if tasks wait for one another in a circle
 */
export function createScheduler(problem: ScheduleProblem, options: SearchOptions): Scheduler {
  const bound = scheduleBound(problem);
  const orders = options.earlier ? [laneOrderOf(problem, options.earlier)] : laneOrders(problem);
  const [first = problem, ...others] = orders.map((order) => inLaneOrder(problem, order));
  const firstSearch = searchOf(first, bound, rulesFor(problem), options);
  // What is good in one order is good in most.
  const rules = firstSearch.rules.slice(0, RULES);
  let searches = [firstSearch, ...others.map((other) => searchOf(other, bound, rules, options))];
  const rounds = Math.ceil(Math.log2(searches.length));
  /** Sequences for each search of this round, and how many are tried already. */
  const each = () =>
    Math.max(1, Math.floor((CHOOSING * options.cycle) / Math.max(1, rounds) / searches.length));
  let tried = 0;
  let turn = 0;

  const best = () => searches.reduce((a, b) => (b.cost() < a.cost() ? b : a));
  const choose = () => {
    const byCost = searches.toSorted((a, b) => a.cost() - b.cost());
    searches = byCost.slice(0, Math.ceil(byCost.length / 2));
    tried = 0;
    turn = 0;
  };
  const finished = () => searches.some((search) => search.finished());
  return {
    bound,
    best: () => best().best(),
    finished,
    step(iterations) {
      for (let count = 0; count < iterations && !finished(); count += 1) {
        searches[turn]?.step(1);
        if (searches.length === 1) continue;
        turn = (turn + 1) % searches.length;
        if (turn > 0) continue;
        tried += 1;
        if (tried >= each()) choose();
      }
    },
  };
}
