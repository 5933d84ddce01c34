import {
  type Closing,
  type Driver,
  printerOf,
  type Quantity,
  type Tunable,
  type Tuned,
  tunedTo,
} from '../../model';
import { cleaned } from '../rates';
import type { Finding, Rate } from './finding';
import { driverOf, plannedOf } from './runs';

/** A setting and what a rate found makes of it. */
export interface Change {
  readonly setting: Tunable;
  readonly before: number;
  readonly after: number;
}

const isInk = (quantity: Quantity): quantity is 'colour' | 'white' =>
  quantity === 'colour' || quantity === 'white';

const handDrivers = ['span', 'copy', 'pressed'] as const;

type HandDriver = (typeof handDrivers)[number];

/** How often a run takes each time of the hands, by what it counts by: as the work of a run is made of them. */
const handling: Readonly<
  Record<HandDriver, readonly { readonly setting: Tunable; readonly often: number }[]>
> = {
  span: [
    { setting: 'handling.cutOff', often: 1 },
    { setting: 'handling.powder', often: 1 },
    { setting: 'handling.load', often: 2 },
  ],
  copy: [{ setting: 'handling.cutApart', often: 1 }],
  pressed: [
    { setting: 'handling.dress', often: 1 },
    { setting: 'handling.place', often: 2 },
    { setting: 'handling.pack', often: 1 },
  ],
};

/** Times of the hands are made no more than so many times longer or shorter at once. */
const MOST_AT_ONCE = 5;

/** The value of now of the setting that a rate stands for, in the rate's own unit; `null` where no setting does. */
export function presentRate(
  { quantity, printer }: Pick<Finding, 'quantity' | 'printer'>,
  rate: Rate,
  { rates, station, costs }: Tuned,
): number | null {
  const own = printerOf(station, printer === null ? undefined : { printer });
  switch (rate.driver) {
    case 'area':
      return isInk(quantity) || quantity === 'powder' ? rates[quantity] / 1000 : null;
    case 'length':
      return (3600 * METRE) / own.perHour;
    case 'run':
      if (isInk(quantity)) return (costs.maintenance.start[quantity] + cleaned(costs)) / 1000;
      return quantity === 'printer' ? own.warmUp + own.check : null;
    case 'plan':
      return 1;
    default:
      return rate.planned;
  }
}

/** In micrometres. */
const METRE = 1_000_000;

/**
 * The settings that a rate found would change.
 *
 * Hands do more than the times that a shop can set: they stand at a closed press, too. So the times of a driver take up the whole
 * difference between what was measured and what the plans of the same runs took, in proportion.
 * @param closings those that the finding was made from
 * @returns empty where no setting stands for the rate, or it cannot be changed so far
 */
export function changesFor(
  { quantity, printer, points, rates: found }: Finding,
  rate: Rate,
  settings: Tuned,
  closings: Readonly<Record<string, Closing>>,
): readonly Change[] {
  const { rates, station, costs } = settings;
  const own = printerOf(station, printer === null ? undefined : { printer });
  switch (rate.driver) {
    case 'area': {
      if (!isInk(quantity) && quantity !== 'powder') return [];
      return [
        { setting: `rates.${quantity}`, before: rates[quantity], after: Math.round(1000 * rate.value) },
      ];
    }
    case 'length':
      return [
        {
          setting: 'printer.perHour',
          before: own.perHour,
          after: Math.round((3600 * METRE) / rate.value),
        },
      ];
    case 'run': {
      if (isInk(quantity)) {
        const after = Math.round(1000 * rate.value) - cleaned(costs);
        const before = costs.maintenance.start[quantity];
        return after < 0 ? [] : [{ setting: `start.${quantity}`, before, after }];
      }
      if (quantity !== 'printer') return [];
      const after = Math.max(0, Math.round(rate.value) - own.check);
      return [{ setting: 'printer.warmUp', before: own.warmUp, after }];
    }
    default: {
      const runs = points.flatMap(({ run, isLeftOut }) => (isLeftOut ? [] : (closings[run] ?? [])));
      const others = found.map(({ driver }) => driver);
      return handChanges(rate, others, runs, settings);
    }
  }
}

/** The drivers whose times a rate stands for: its own, and those that it could not be told apart from. */
function standsFor(driver: Driver, others: readonly Driver[]): readonly HandDriver[] {
  if (driver === 'plan') return handDrivers;
  const own = handDrivers.filter((each) => each === driver);
  // Copies and garments go up and down together: the one that is there stands for both.
  const also = handDrivers.filter((each) => each !== 'span' && driver !== 'span' && !others.includes(each));
  return [...own, ...also];
}

function handChanges(
  rate: Rate,
  others: readonly Driver[],
  runs: readonly Closing[],
  settings: Tuned,
): readonly Change[] {
  const sum = (of: (run: Closing) => number) => runs.reduce((total, run) => total + of(run), 0);
  const amount = (driver: Driver) => sum((run) => driverOf(run, 'hands', driver) ?? 0);
  const planned =
    rate.driver === 'plan' ? sum((run) => plannedOf(run, 'hands')) : rate.planned * amount(rate.driver);
  const measured = rate.value * amount(rate.driver);
  const stands = standsFor(rate.driver, others);
  const times = stands.flatMap((driver) =>
    handling[driver].map(({ setting, often }) => {
      const before = tunedTo(settings, setting, null);
      return { setting, before, total: often * amount(driver) * before };
    }),
  );
  const inHand = (1 + settings.station.allowance) * times.reduce((total, { total: own }) => total + own, 0);
  const factor = inHand > 0 ? (inHand + measured - planned) / inHand : 0;
  if (factor < 1 / MOST_AT_ONCE || factor > MOST_AT_ONCE) return [];
  return times.map(({ setting, before }) => ({ setting, before, after: Math.round(before * factor) }));
}
