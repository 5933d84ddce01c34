/** A table of colours over four inks: so many places along each, the last ink's the nearest to each other. */
export interface Grid {
  readonly sides: readonly [number, number, number, number];
  /** Three figures for each place, 0..1. */
  readonly figures: Float32Array;
}

type Three = [number, number, number];

/**
 * What a table says of four inks of 0..1, linear along the first ink between tetrahedra of the three others, each of which is gone
 * through from its lowest corner along the axis of the largest share first (J. M. Kasson, S. I. Nin, W. Plouffe and J. L. Hafner,
 * Journal of Electronic Imaging 4(3), 226-250, 1995, from memory).
 */
export function lookUp({ sides, figures }: Grid, inks: readonly [number, number, number, number]): Three {
  const steps = [sides[1] * sides[2] * sides[3], sides[2] * sides[3], sides[3], 1] as const;
  const shares: number[] = [];
  let base = 0;
  for (let ink = 0; ink < 4; ink += 1) {
    const last = (sides[ink] as number) - 1;
    const place = Math.min(1, Math.max(0, inks[ink] as number)) * last;
    const at = Math.min(Math.floor(place), Math.max(0, last - 1));
    shares.push(last === 0 ? 0 : place - at);
    base += at * (steps[ink] as number);
  }
  const [first = 0] = shares;
  const order = [1, 2, 3].sort((a, b) => (shares[b] as number) - (shares[a] as number));
  const found: Three = [0, 0, 0];
  const add = (corner: number, weight: number) => {
    if (weight === 0) return;
    for (let channel = 0; channel < 3; channel += 1) {
      (found[channel] as number) += weight * (figures[3 * corner + channel] as number);
    }
  };
  for (const [from, weight] of [
    [base, 1 - first],
    [base + steps[0], first],
  ] as const) {
    if (weight === 0) continue;
    let corner = from;
    let before = 1;
    for (const ink of order) {
      const share = shares[ink] as number;
      add(corner, weight * (before - share));
      before = share;
      if (share > 0) corner += steps[ink as 1 | 2 | 3];
    }
    add(corner, weight * before);
  }
  return found;
}
