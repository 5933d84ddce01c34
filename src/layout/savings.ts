import { type Book, runCost } from '../model';
import type { Plan } from '../packing';
import { asMinor, fromMm, type Micrometres, type Minor, um } from '../units';
import { filmTaken, runFigures } from './figures';
import type { LaidRun } from './laid';

/** What a plan takes less than the layout that lies on the film. */
export interface Savings {
  readonly length: Micrometres;
  /** 0 on a roll. */
  readonly sheets: number;
  readonly cost: Minor;
}

/** Film of a roll that is not worth a word, shorter. */
const LEAST = fromMm(1);

/** What a plan of all that lies on a run would save; `null` if it leaves a copy out, or saves nothing worth a word. */
export function savings(run: LaidRun, plan: Plan): Savings | null {
  const { film } = run;
  if (plan.unplaced.length > 0) return null;
  const now = runFigures(run);
  const taken = filmTaken(film, plan.used, run);
  const saved = {
    length: um(film.kind === 'roll' ? Math.max(0, now.length - taken.length) : 0),
    sheets: Math.max(0, now.sheets - taken.sheets),
    cost: asMinor(Math.max(0, now.cost - runCost(film, taken))),
  };
  return saved.length >= LEAST || saved.sheets > 0 ? saved : null;
}

/** Whether an edit changes what a layout is made of or where it lies; new artwork, or a name, does not. */
export function changesLayout(now: Book, before: Book): boolean {
  if (now.copy !== before.copy || now.film !== before.film || now.run !== before.run) return true;
  if (now.transfer === before.transfer) return false;
  return Object.values(now.transfer).some((transfer) => {
    const was = before.transfer[transfer.id];
    return was?.width !== transfer.width || was.height !== transfer.height || was.turn !== transfer.turn;
  });
}
