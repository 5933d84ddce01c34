import type { FilmAmount, Plan } from '../../src/packing';
import { QUARTER, toMm } from '../../src/units';
import { rollUsed, sheetsUsed as takenSheets } from '../packing/used';
import type { Instance } from './instance';

/** What the headless planner prints; lengths are millimetres. */
export interface Result {
  readonly name: string;
  readonly lengthUsed: number | null;
  readonly sheetsUsed: number | null;
  readonly wastePercent: number;
  readonly leastLength?: number;
  readonly leastSheets?: number;
  readonly seconds: number;
  readonly placements: readonly {
    readonly piece: string;
    readonly copy: number;
    readonly sheet: number;
    readonly x: number;
    readonly y: number;
    readonly turned: boolean;
  }[];
  readonly spans: readonly { readonly from: number; readonly to: number }[];
}

/** Rounded up for the plan, copies may reach a little less far than the bound says. */
const leastOf = (least: FilmAmount, lengthUsed: number): Pick<Result, 'leastLength' | 'leastSheets'> =>
  least.kind === 'sheets'
    ? { leastSheets: least.sheets }
    : { leastLength: Math.min(toMm(least.length), lengthUsed) };

/** Tells a plan in the terms of its instance. */
export function resultOf(instance: Instance, plan: Plan, least: FilmAmount, seconds: number): Result {
  const { film, margins, pieces } = instance;
  const copies = pieces.map(() => 0);
  let end = 0;
  const placements = plan.placed.map(({ piece, sheet, x, y, angle }) => {
    const turned = angle === QUARTER;
    const copy = (copies[piece] ?? 0) + 1;
    copies[piece] = copy;
    const own = pieces[piece];
    end = Math.max(end, toMm(y) + ((turned ? own?.width : own?.length) ?? 0));
    return { piece: own?.id ?? '', copy, sheet, x: toMm(x), y: toMm(y), turned };
  });
  const area = pieces.reduce((sum, piece) => sum + piece.count * piece.width * piece.length, 0);
  const waste = (filmArea: number) => 100 * (1 - area / filmArea);
  if (film.kind === 'sheet') {
    const sheetsUsed = takenSheets(plan);
    return {
      name: instance.name,
      lengthUsed: null,
      sheetsUsed,
      wastePercent: waste(film.width * film.length * sheetsUsed),
      ...leastOf(least, 0),
      seconds,
      placements,
      spans: [],
    };
  }
  const lengthUsed = end + margins.tail;
  const { spans } = rollUsed(plan);
  const last = spans.length - 1;
  return {
    name: instance.name,
    lengthUsed,
    sheetsUsed: null,
    wastePercent: waste(film.width * lengthUsed),
    ...leastOf(least, lengthUsed),
    seconds,
    placements,
    spans: spans.map(({ from, to }, index) => ({
      from: toMm(from),
      to: index === last ? lengthUsed : toMm(to),
    })),
  };
}
