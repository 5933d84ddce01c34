/** Seeded chance for data made with known rates, the same in every run of the tests. */
export interface Chance {
  /** From 0 up to 1. */
  readonly even: () => number;
  /** With mean 0 and standard deviation 1: G. E. P. Box and M. E. Muller, Annals of Mathematical Statistics 29, 610-611, 1958. */
  readonly normal: () => number;
}

/** A linear congruence modulo 2^32, of D. E. Knuth and H. W. Lewis as Numerical Recipes tells it; the high bits are taken. */
export function chance(seed: number): Chance {
  let state = seed >>> 0;
  const even = () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
  const normal = () => Math.sqrt(-2 * Math.log(1 - even())) * Math.cos(2 * Math.PI * even());
  return { even, normal };
}
