import fc from 'fast-check';
import { faultsOf, holds } from '../../src/layout';
import { anyDay } from '../layout/any-day';
import { broken } from '../layout/broken';
import { playDay } from '../layout/play-day';
import { printTable } from './table';

/** Of so many days one is also compared pair by pair, which takes long. */
const COMPARED = 10;

/**
 * Random days at the film, each run held against its rules after every act: laid out, moved by hand, pinned, printed, spoiled, undone
 * and made again. Ends with a code other than 0 if anything is wrong.
 */
export function benchLayouts(days: number, seed: number): void {
  const counts = {
    shown: 0,
    faults: 0,
    compared: 0,
    differ: 0,
    plans: 0,
    wrong: 0,
    refused: 0,
    laid: 0,
    held: 0,
  };
  const from = performance.now();
  for (const [at, day] of fc.sample(anyDay, { seed, numRuns: days }).entries()) {
    const tell = (what: string, found: unknown) =>
      console.error(`day ${at} of seed ${seed}, ${what}: ${JSON.stringify(found)}`);
    playDay(day, {
      see({ act, laid }) {
        counts.shown += 1;
        if (!holds(laid)) {
          counts.faults += 1;
          tell(act, faultsOf(laid));
        }
        if (at % COMPARED > 0) return;
        counts.compared += 1;
        const found = broken(laid);
        if (found.length > 0 !== !holds(laid)) {
          counts.differ += 1;
          tell(act, found);
        }
      },
      planned({ act, wrong, sound }) {
        counts.plans += 1;
        if (wrong.length > 0) counts.wrong += 1;
        else if (!sound) counts.refused += 1;
        if (!sound) tell(act, wrong);
      },
      moved(may) {
        counts.held += 1;
        if (may) counts.laid += 1;
      },
    });
  }
  const seconds = (performance.now() - from) / 1000;
  const { shown, faults, compared, differ, plans, wrong, refused, laid, held } = counts;
  printTable(
    `Random days at the film, seed ${seed}`,
    [
      'days',
      'layouts shown',
      'with faults',
      'compared',
      'differ',
      'plans',
      'wrong',
      'refused',
      'laid by hand',
      's',
    ],
    [
      [
        days,
        shown,
        faults,
        compared,
        differ,
        plans,
        wrong,
        refused,
        `${laid} of ${held}`,
        seconds.toFixed(0),
      ],
    ],
  );
  if (faults + differ + wrong + refused > 0) process.exitCode = 1;
}
