import { turned } from '../outlines';
import type { Plan, Problem } from '../packing';
import { QUARTER, um } from '../units';
import type { OutlinePlan, OutlineProblem } from './problem';

/** Of a piece's rotations those that a box may take: as it lies, and a quarter turn from that, if there is one. */
function turnsOf(rotations: readonly number[]): { as: number; quarter: number | undefined } {
  const as = rotations[0] as number;
  return { as, quarter: rotations.find((other) => Math.abs(((other - as) % 180) + 180) % 180 === 90) };
}

/** The same work for a planner of boxes: each outline as its box. Its plans are plans of the outlines too. */
export function boxesOf({ film, margins, gap, pieces }: OutlineProblem): Problem {
  return {
    film: film.kind === 'roll' ? film : { ...film, printed: 0 },
    margins,
    gap,
    cutting: 'free',
    together: { kind: 'any' },
    pieces: pieces.map(({ id, rings, count, rotations }) => {
      const { as, quarter } = turnsOf(rotations);
      const { width, length } = turned(rings, as);
      return {
        id,
        count,
        width: um(Math.ceil(width)),
        length: um(Math.ceil(length)),
        turn: quarter === undefined ? 'fixed' : 'quarter',
        rank: 0,
      };
    }),
    pinned: [],
  };
}

/** A plan of boxes as one of the outlines in them. */
export const fromBoxes = ({ pieces }: OutlineProblem, { placed, used }: Plan): OutlinePlan => ({
  placed: placed.map(({ piece, sheet, x, y, angle }) => {
    const { as, quarter } = turnsOf(pieces[piece]?.rotations ?? [0]);
    return { piece, sheet, x, y, rotation: angle === QUARTER && quarter !== undefined ? quarter : as };
  }),
  used,
});
