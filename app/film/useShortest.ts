import { type LaidRun, leastOffRoll, problemOnFilm, sheetStart } from '../../src/layout';
import { type FilmAmount, leastFilm } from '../../src/packing';
import type { Micrometres } from '../../src/units';
import { useLaidRun } from '../store/selectors';

/** What no layout of what lies on a film goes below. */
interface Shortest {
  /** As it is taken off the film. */
  readonly film: FilmAmount;
  /** The same as a length; of sheets, of all of them. */
  readonly length: Micrometres;
}

function shortestOn(run: LaidRun, least: FilmAmount): Shortest {
  const { film } = run;
  if (least.kind === 'roll') {
    const length = leastOffRoll(film, least.length, run);
    return { film: { kind: 'roll', length }, length };
  }
  return { film: least, length: sheetStart(film, least.sheets) };
}

let last: { key: string; shortest: Shortest } | null = null;

/** The proven shortest length for what lies on the film; it depends on what lies there, not on where. */
function shortestOf(run: LaidRun): Shortest | null {
  const problem = problemOnFilm(run);
  if (problem.pieces.length === 0) return null;
  const key = JSON.stringify(problem);
  if (last?.key !== key) last = { key, shortest: shortestOn(run, leastFilm(problem)) };
  return last.shortest;
}

let lastRun: { run: LaidRun; shortest: Shortest | null } | null = null;

export function useShortest(): Shortest | null {
  const run = useLaidRun();
  if (!run) return null;
  if (lastRun?.run !== run) lastRun = { run, shortest: shortestOf(run) };
  return lastRun.shortest;
}
