import type { Calibration, Closing, Driver, Quantity } from '../../model';
import { inOrder, toMm } from '../../units';

/** What a quantity is measured in, and what it may count by. */
interface Model {
  /** What was measured; `null` where nobody did. */
  readonly measured: (run: Closing) => number | null;
  /** What the plan took for it. */
  readonly planned: (run: Closing) => number | null;
  /** Half of the last digit that a form shows: a figure no further from the plan is the plan's own. */
  readonly half: number;
  /**
   * Sets of drivers, the one that tells most first. Which one is taken follows from the drivers of the runs alone, never from how
   * well it fits: choosing by the fit would make every interval look narrower than it is.
   */
  readonly sets: readonly (readonly Driver[])[];
}

const SQUARE_MILLIMETRES = 1_000_000;

/** Amounts as a person reads them: ml, g, s. */
const models: Readonly<Record<Quantity, Model>> = {
  colour: {
    measured: ({ actual }) => thousandth(actual.colour),
    planned: ({ planned }) => thousandth(planned.colour),
    half: 0.005,
    sets: [['area', 'run'], ['area']],
  },
  white: {
    measured: ({ actual }) => thousandth(actual.white),
    planned: ({ planned }) => thousandth(planned.white),
    half: 0.005,
    sets: [['area', 'run'], ['area']],
  },
  // What a span loses is in the rate: nothing else counts powder by the span.
  powder: {
    measured: ({ actual }) => thousandth(actual.powder),
    planned: ({ planned }) => thousandth(planned.powder),
    half: 0.05,
    sets: [['area']],
  },
  printer: {
    measured: ({ actual }) => actual.time.printer,
    planned: ({ planned }) => planned.time.printer,
    half: 3,
    sets: [['length', 'run'], ['length']],
  },
  hands: {
    measured: ({ actual }) => actual.time.hands,
    planned: ({ planned }) => planned.time.hands,
    half: 3,
    sets: [['span', 'copy', 'pressed'], ['span', 'copy'], ['span', 'pressed'], ['plan']],
  },
};

function thousandth(amount: number | null): number | null {
  return amount === null ? null : amount / 1000;
}

/** How much of a driver a run has; `null` where it is not known. */
export function driverOf(run: Closing, quantity: Quantity, driver: Driver): number | null {
  const { work } = run;
  switch (driver) {
    case 'area':
      return work.coverage && work.coverage[quantity === 'colour' ? 'colour' : 'white'] / SQUARE_MILLIMETRES;
    case 'length':
      return toMm(run.actual.film) / 1000;
    case 'run':
      return 1;
    case 'span':
      return work.spans;
    case 'copy':
      return work.copies;
    case 'pressed':
      return work.pressed;
    case 'plan':
      return run.planned.time.hands;
  }
}

export const driverSets = (quantity: Quantity): readonly (readonly Driver[])[] => models[quantity].sets;

export const plannedOf = (run: Closing, quantity: Quantity): number => models[quantity].planned(run) ?? 0;

/** Why a closed run tells nothing of a quantity. `as-planned`: it was closed with the plan's own figure, as stands in
 * the form when nobody measures; it would tell the rate that is set already, and very sure of it. */
export type Untold = 'not-measured' | 'as-planned' | 'no-artwork' | 'other-times' | 'nothing-printed';

/** A closed run that tells something of a quantity. */
export interface ToldRun {
  readonly run: Closing;
  readonly measured: number;
}

/** Changes in force at an instant. */
const inForce = (changes: readonly Calibration[], at: string): string =>
  changes
    .filter((change) => change.at <= at && (change.takenBack === null || change.takenBack > at))
    .map(({ id }) => id)
    .sort()
    .join();

/** Older runs tell of a printer, an ink and hands as they were then: so many of the latest are looked at. */
const LATEST = 60;

/**
 * The latest closed runs that tell something of a quantity, the oldest first, and how many others do not, and why.
 * @param changes earlier calibrations: hand times are told against plans that were made with the times of now
 */
export function toldRuns(
  closings: Iterable<Closing>,
  quantity: Quantity,
  changes: Iterable<Calibration>,
): { readonly runs: readonly ToldRun[]; readonly untold: ReadonlyMap<Untold, number> } {
  const { measured, planned, half, sets } = models[quantity];
  const needed = new Set(sets.flat());
  const ofHands = [...changes].filter((change) => quantity === 'hands' && change.quantity === 'hands');
  const present = inForce(ofHands, '9999');
  const runs: ToldRun[] = [];
  const untold = new Map<Untold, number>();
  const reasonAgainst = (run: Closing): Untold | null => {
    const own = measured(run);
    if (own === null) return 'not-measured';
    const plan = planned(run);
    if (plan !== null && Math.abs(own - plan) <= half) return 'as-planned';
    if (inForce(ofHands, run.at) !== present) return 'other-times';
    const amounts = [...needed].map((driver) => driverOf(run, quantity, driver));
    if (amounts.includes(null)) return 'no-artwork';
    return amounts.every((amount) => amount === 0) || own === 0 ? 'nothing-printed' : null;
  };
  for (const run of [...closings].sort((a, b) => inOrder(a.at, b.at)).slice(-LATEST)) {
    const reason = reasonAgainst(run);
    const own = measured(run);
    if (reason === null && own !== null) runs.push({ run, measured: own });
    else if (reason !== null) untold.set(reason, (untold.get(reason) ?? 0) + 1);
  }
  return { runs, untold };
}
