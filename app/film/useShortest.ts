import { type LaidRun, problemOnFilm, takenOffRoll } from '../../src/layout';
import { leastFilm } from '../../src/packing';
import { type Micrometres, um } from '../../src/units';
import { useLaidRun } from '../store/selectors';

let last: { key: string; shortest: Micrometres } | null = null;

/** The proven shortest length for what lies on the film; it depends on what lies there, not on where. */
function shortestOf(run: LaidRun): Micrometres | null {
  const problem = problemOnFilm(run);
  if (problem.pieces.length === 0) return null;
  const key = JSON.stringify(problem);
  if (last?.key !== key) {
    const least = leastFilm(problem);
    const { film } = run;
    const shortest =
      film.kind === 'sheets' ? um(least * film.length) : takenOffRoll({ film, lengthUsed: least });
    last = { key, shortest };
  }
  return last.shortest;
}

let lastRun: { run: LaidRun; shortest: Micrometres | null } | null = null;

export function useShortest(): Micrometres | null {
  const run = useLaidRun();
  if (!run) return null;
  if (lastRun?.run !== run) lastRun = { run, shortest: shortestOf(run) };
  return lastRun.shortest;
}
