import {
  type Calibration,
  type Closing,
  type Driver,
  type Id,
  type LeftOut,
  type Printer,
  type Quantity,
  quantities,
} from '../../model';
import { conditionOfScaled, type Estimate, fitRates, MOST_CONDITION } from './fit';
import { misfits } from './misfits';
import { nnls } from './nnls';
import type { Columns } from './qr';
import { driverOf, driverSets, plannedOf, type ToldRun, toldRuns, type Untold } from './runs';

/**
 * Runs beyond the number of rates that it takes. With five, the interval of 95% reaches 2.57 times the standard error to each side;
 * with one 12.7, with very many 1.96: below five it tells mostly that nobody knows how the runs scatter.
 */
const SPARE_RUNS = 5;

/** A rate is told well enough to be offered when its interval is no wider than this share of it. */
const WIDEST = 0.5;

/** A run as a finding sees it. */
export interface RunPoint {
  readonly run: Id<'run'>;
  readonly name: string;
  readonly day: Closing['day'];
  readonly measured: number;
  /** What the rates found tell of it; `null` where none are. */
  readonly told: number | null;
  /** How much it pulls the line to itself, from 0 to 1; 0 for one that is left out. */
  readonly pull: number;
  /** It does not fit what most of the others tell. */
  readonly isMisfit: boolean;
  readonly isLeftOut: boolean;
}

/** A rate found. */
export interface Rate extends Estimate {
  readonly driver: Driver;
  /** `told`: narrow enough to be offered. `loose`: about so many runs more, like these, would make it so. `nothing`: it came out as 0. */
  readonly verdict:
    | { readonly kind: 'told' }
    | { readonly kind: 'loose'; readonly more: number }
    | { readonly kind: 'nothing' };
  /** What the plans of these runs took for the same driver, in the same way; the settings of now may differ. */
  readonly planned: number;
}

/** What closed runs tell of a quantity. */
export interface Finding {
  readonly quantity: Quantity;
  /** Whose runs it is made of; `null` where that tells nothing. */
  readonly printer: Printer['id'] | null;
  readonly points: readonly RunPoint[];
  readonly untold: ReadonlyMap<Untold, number>;
  /** Empty where the runs do not tell any. */
  readonly rates: readonly Rate[];
  /** What cannot be told apart from the rest, and why: too few runs for it, or drivers that go up and down together. */
  readonly apart: { readonly drivers: readonly Driver[]; readonly reason: 'few' | 'alike' } | null;
  /** Standard deviation of a run about what is told; 0 where nothing is. */
  readonly scatter: number;
  /** How many more runs it takes before anything can be told. */
  readonly missing: number;
}

const columnsOf = (runs: readonly ToldRun[], quantity: Quantity, drivers: readonly Driver[]): Columns =>
  drivers.map((driver) => runs.map(({ run }) => driverOf(run, quantity, driver) ?? 0));

/** The set of drivers that tells most, of those that these runs can tell apart. */
function chosenDrivers(runs: readonly ToldRun[], quantity: Quantity) {
  const sets = driverSets(quantity);
  let reason: 'few' | 'alike' | null = null;
  for (const drivers of sets) {
    if (runs.length < drivers.length + SPARE_RUNS) reason ??= 'few';
    else if (conditionOfScaled(columnsOf(runs, quantity, drivers)) > MOST_CONDITION) reason = 'alike';
    else return { drivers, apart: apartFrom(sets[0] ?? [], drivers, reason) };
  }
  return { drivers: null, apart: null };
}

function apartFrom(most: readonly Driver[], drivers: readonly Driver[], reason: 'few' | 'alike' | null) {
  const left = most.filter((driver) => !drivers.includes(driver));
  return reason === null || left.length === 0 ? null : { drivers: left, reason };
}

/** So many runs tell the first rate of a quantity. */
export const FEWEST_RUNS = SPARE_RUNS + 1;

/** The quantities that closed runs tell enough of to be looked at. */
export const toldQuantities = (closings: readonly Closing[], changes: readonly Calibration[]): Quantity[] =>
  quantities.filter((quantity) => toldRuns(closings, quantity, changes).runs.length >= FEWEST_RUNS);

function verdictOf({ value, low, high }: Estimate, runs: number): Rate['verdict'] {
  if (value === 0) return { kind: 'nothing' };
  const width = (high - low) / value;
  if (width <= WIDEST) return { kind: 'told' };
  // An interval narrows with the square root of the number of runs.
  return { kind: 'loose', more: Math.max(1, Math.ceil(runs * ((width / WIDEST) ** 2 - 1))) };
}

/**
 * What closed runs tell of a quantity: rates with 95% intervals by non-negative least squares, how each run fits, and what they
 * cannot tell. Every run counts alike.
 * @param leftOut runs that the shop leaves out
 * @param changes see {@link toldRuns}
 * @param printer whose runs they all are; `null` where that tells nothing
 */
export function findRates(
  closings: Iterable<Closing>,
  quantity: Quantity,
  leftOut: Iterable<LeftOut>,
  changes: Iterable<Calibration>,
  printer: Printer['id'] | null = null,
): Finding {
  const { runs, untold } = toldRuns(closings, quantity, changes);
  const out = new Set(
    [...leftOut].flatMap((each) => (each.quantity === quantity ? [each.run as string] : [])),
  );
  const taken = runs.filter(({ run }) => !out.has(run.id));
  const { drivers, apart } = chosenDrivers(taken, quantity);
  const columns = columnsOf(taken, quantity, drivers ?? []);
  const measured = taken.map((each) => each.measured);
  const fit = drivers ? fitRates(columns, measured) : null;
  const known = fit && drivers ? { fit, drivers } : null;
  const odd = new Set(known ? misfits(columns, measured).map((at) => taken[at]?.run.id) : []);
  const pulls = new Map(known ? taken.map(({ run }, at) => [run.id, known.fit.leverage[at] ?? 0]) : []);
  const told = ({ run }: ToldRun) =>
    known?.drivers.reduce(
      (sum, driver, at) =>
        sum + (known.fit.estimates[at]?.value ?? 0) * (driverOf(run, quantity, driver) ?? 0),
      0,
    ) ?? null;
  const planned = nnls(
    columns,
    taken.map(({ run }) => plannedOf(run, quantity)),
  );
  return {
    quantity,
    printer,
    untold,
    apart,
    points: runs.map((each) => ({
      run: each.run.id,
      name: each.run.name,
      day: each.run.day,
      measured: each.measured,
      told: told(each),
      pull: pulls.get(each.run.id) ?? 0,
      isMisfit: odd.has(each.run.id),
      isLeftOut: out.has(each.run.id),
    })),
    rates: known
      ? known.drivers.flatMap((driver, at): Rate[] => {
          const estimate = known.fit.estimates[at];
          if (!estimate) return [];
          const verdict = verdictOf(estimate, taken.length);
          return [{ driver, ...estimate, verdict, planned: planned[at] ?? 0 }];
        })
      : [],
    scatter: known?.fit.scatter ?? 0,
    missing: Math.max(0, FEWEST_RUNS - taken.length),
  };
}
