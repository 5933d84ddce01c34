import type { LaidRun } from '../../src/layout';
import type { WorkProblem } from '../../src/pressing';
import type { DayState } from '../store/timeline';

/** Why a run is not in the plan of the day; empty if it is, or if it is closed. */
export function whyNotPlanned(run: LaidRun, state: DayState): readonly WorkProblem[] {
  if (run.state === 'closed') return [];
  if (run.copies.length === 0) return ['nothing-laid'];
  const without =
    state.kind === 'missing' ? state.without : state.kind === 'ready' ? state.day.plan.without : [];
  return without.find((other) => other.run.id === run.id)?.problems ?? [];
}
