import {
  boxesOf,
  createOutlinePlanner,
  fromBoxes,
  type OutlinePlan,
  type OutlineProblem,
  outlineFaults,
} from '../../src/nesting';
import { areaOf, turned } from '../../src/outlines';
import type { OutlineInstance } from './outline-instance';
import { misfit, planFor } from './plan-for';
import type { Result } from './result';

/** What the headless planner prints for outlines; lengths are in the unit of the instance. */
export type OutlineResult = Omit<Result, 'placements'> & {
  readonly placements: readonly (Omit<Result['placements'][number], 'turned'> & {
    readonly rotation: number;
  })[];
};

/** The share of the time that a plan of the boxes is looked for, which none by outlines may be worse than; no more than so many seconds. */
const BOXES = { share: 0.1, most: 1 };

const filmOf = ({ used }: OutlinePlan): number => (used.kind === 'roll' ? used.length : used.sheets);

const inkOf = ({ pieces }: OutlineProblem): number =>
  pieces.reduce((sum, { rings, count }) => sum + count * areaOf(rings), 0);

/** No plan takes less: outlines a gap apart share no ink, in the printable film grown by half a gap on all sides. */
function leastFilm(problem: OutlineProblem): number {
  const { film, margins, gap } = problem;
  const width = film.width - margins.left - margins.right + gap;
  const along = inkOf(problem) / width;
  if (film.kind === 'roll') return Math.max(0, margins.lead + margins.tail + along - gap);
  return Math.ceil(along / (film.length - margins.lead - margins.tail + gap));
}

function planned(problem: OutlineProblem, seconds: number, seed: number): OutlinePlan {
  const began = performance.now();
  const isOver = () => performance.now() - began > seconds * 1000;
  const { plan } = planFor(boxesOf(problem), {
    seconds: Math.min(BOXES.most, BOXES.share * seconds),
    seed,
  });
  const boxes = fromBoxes(problem, plan);
  const planner = createOutlinePlanner(problem, seed, boxes);
  while (!isOver()) planner.step(1);
  const outlines = planner.best();
  return filmOf(outlines) < filmOf(boxes) ? outlines : boxes;
}

/**
 * Plans an instance of outlines on this core.
 * @throws an error of one sentence: a piece whose box fits no film, or a plan that its validator refuses
 */
export function planOutlines(
  { name, problem, unit }: OutlineInstance,
  seconds: number,
  seed: number,
): OutlineResult {
  const sentence = misfit(boxesOf(problem));
  if (sentence !== null) throw new Error(sentence);
  const began = performance.now();
  const plan = planned(problem, seconds, seed);
  const [wrong] = outlineFaults(problem, plan);
  if (wrong) throw new Error(`The plan failed its own check (${wrong.code}), so it is not printed.`);
  const { pieces, margins, film } = problem;
  const copies = pieces.map(() => 0);
  let end = 0;
  const placements = plan.placed.map(({ piece, sheet, x, y, rotation }) => {
    const own = pieces[piece];
    copies[piece] = (copies[piece] ?? 0) + 1;
    end = Math.max(end, y + turned(own?.rings ?? [], rotation).length);
    return { piece: own?.id ?? '', copy: copies[piece], sheet, x: x / unit, y: y / unit, rotation };
  });
  const took = (performance.now() - began) / 1000;
  const least = leastFilm(problem);
  const waste = (area: number) => 100 * (1 - inkOf(problem) / area);
  if (plan.used.kind === 'sheets') {
    const { sheets } = plan.used;
    const sheet = film.kind === 'sheet' ? film.width * film.length : 0;
    const figures = {
      lengthUsed: null,
      sheetsUsed: sheets,
      wastePercent: waste(sheets * sheet),
      leastSheets: least,
    };
    return { name, ...figures, seconds: took, placements, spans: [] };
  }
  const length = end + margins.tail;
  const last = plan.used.spans.length - 1;
  return {
    name,
    lengthUsed: length / unit,
    sheetsUsed: null,
    wastePercent: waste(film.width * length),
    leastLength: least / unit,
    seconds: took,
    placements,
    spans: plan.used.spans.map(({ from, to }, at) => ({
      from: from / unit,
      to: (at === last ? length : to) / unit,
    })),
  };
}
