import { describe, expect, it } from 'vitest';
import { studentT, withinT } from '../../../src/costing/calibration/student';

describe("Student's t", () => {
  // NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2, upper critical values at 0.025 and 0.005.
  it.each([
    [1, 12.706, 63.657],
    [2, 4.303, 9.925],
    [3, 3.182, 5.841],
    [4, 2.776, 4.604],
    [5, 2.571, 4.032],
    [6, 2.447, 3.707],
    [7, 2.365, 3.499],
    [8, 2.306, 3.355],
    [9, 2.262, 3.25],
    [10, 2.228, 3.169],
    [15, 2.131, 2.947],
    [20, 2.086, 2.845],
    [30, 2.042, 2.75],
    [60, 2.0, 2.66],
    [100, 1.984, 2.626],
  ])('has the tabulated values with %i degrees of freedom', (freedom, ninetyFive, ninetyNine) => {
    expect(studentT(0.95, freedom)).toBeCloseTo(ninetyFive, 3);
    expect(studentT(0.99, freedom)).toBeCloseTo(ninetyNine, 3);
  });

  it('is what follows by hand with one and two degrees of freedom', () => {
    // One: Cauchy, t = tan(pi P / 2). Two: P = t / sqrt(2 + t^2).
    for (const probability of [0.1, 0.5, 0.9, 0.95, 0.999]) {
      expect(studentT(probability, 1)).toBeCloseTo(Math.tan((Math.PI * probability) / 2), 9);
      expect(studentT(probability, 2)).toBeCloseTo(probability * Math.sqrt(2 / (1 - probability ** 2)), 10);
    }
  });

  it('goes over into the normal distribution', () => {
    expect(studentT(0.95, 100_000)).toBeCloseTo(1.959964, 4);
  });

  it('is the area under its density', () => {
    // By Simpson's rule over (1 + t^2/n)^(-(n + 1)/2), whose whole area is its own norm.
    const area = (to: number, freedom: number) => {
      const steps = 20_000;
      const height = (t: number) => (1 + (t * t) / freedom) ** (-(freedom + 1) / 2);
      let sum = height(0) + height(to);
      for (let step = 1; step < steps; step += 1)
        sum += (step % 2 === 1 ? 4 : 2) * height((to * step) / steps);
      return (sum * to) / steps / 3;
    };
    for (const freedom of [5, 8, 13]) {
      expect(withinT(2, freedom)).toBeCloseTo(area(2, freedom) / area(2000, freedom), 6);
    }
  });
});
