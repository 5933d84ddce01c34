/** Annealing begins by accepting layouts longer by about this share, and ends near none. */
const WARM = 0.006;
const COLD = 0.000_05;

/** How much worse a layout may be and still be gone on from, as a share of the film, once a share of a cycle is done. */
export const warmthAt = (done: number): number => WARM * (COLD / WARM) ** done;

/** Whether annealing goes on from a layout that costs so much more than the present one, or less. */
export const isTaken = (more: number, warmth: number, random: () => number): boolean =>
  more <= 0 || random() < Math.exp(-more / warmth);
