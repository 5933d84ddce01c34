import type { LaidRun } from '../layout';
import type { Curer, Station } from '../model';
import { fabricsOn } from './fabrics';
import type { JobKind } from './jobs';
import { pressedOn } from './pressed-on';
import { pressRecipe } from './recipes';

/** What is done at the bench that can hurt, in the order of the work; what heals one is not what heals another. */
const acts = [
  'print',
  'cut-off',
  'apart',
  'powder',
  'cure-press',
  'cure-oven',
  'line',
  'press',
  'again',
] as const;

export type Act = (typeof acts)[number];

/** What a job is as far as it can hurt; `null` for what cannot. */
export function actOf(kind: JobKind, curer: Curer): Act | null {
  switch (kind) {
    case 'ready':
      return 'print';
    case 'pack':
      return null;
    case 'cure':
      return curer === 'oven' ? 'cure-oven' : 'cure-press';
    default:
      return kind;
  }
}

/** Acts where powder is in the air. */
export const isDusty = (act: Act): boolean => act === 'powder' || act === 'line';

/** All that is done to a run with some equipment, in the order of the work. */
export function actsOn(run: LaidRun, station: Station): Act[] {
  const { curer } = station;
  const pressed = run.copies.filter(pressedOn(run.view));
  const isAgain = fabricsOn(run).some(
    ({ fabric }) => pressRecipe(run.view, run.film.peel, fabric).values.secondPress > 0,
  );
  const done = new Set<Act | null>([
    'print',
    ...(run.film.kind === 'roll' ? (['cut-off'] as const) : []),
    'apart',
    ...(curer === 'line' ? (['line'] as const) : (['powder', actOf('cure', curer)] as const)),
    ...(pressed.length > 0 ? (['press'] as const) : []),
    ...(pressed.length > 0 && isAgain ? (['again'] as const) : []),
  ]);
  return acts.filter((act) => done.has(act));
}
