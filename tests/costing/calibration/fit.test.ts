import { describe, expect, it } from 'vitest';
import { fitRates } from '../../../src/costing/calibration/fit';
import { misfits } from '../../../src/costing/calibration/misfits';
import { studentT } from '../../../src/costing/calibration/student';
import { cases, coverage } from './coverage';
import { chance } from './random';
import { references } from './strd';

describe('the uncertainty of a fit', () => {
  it.each(references)('follows from the certified deviations of $name (NIST StRD)', (reference) => {
    const { coefficients, deviations, scatter } = reference.certified;
    // Every column turned so that its coefficient is above 0: no bound holds.
    const columns = reference.columns.map((column, at) =>
      column.map((value) => value * Math.sign(coefficients[at] ?? 0)),
    );
    const fit = fitRates(columns, reference.measured);
    expect((fit?.scatter ?? 0) / scatter).toBeCloseTo(1, 10);
    const reach = studentT(0.95, reference.measured.length - columns.length);
    for (const [at, deviation] of deviations.entries()) {
      const value = Math.abs(coefficients[at] ?? 0);
      const own = fit?.estimates[at];
      expect((own?.value ?? 0) / value).toBeCloseTo(1, 8);
      expect((own?.high ?? 0) / (value + reach * deviation)).toBeCloseTo(1, 8);
      const low = Math.max(0, value - reach * deviation);
      expect((own?.low ?? 0) / (low || 1)).toBeCloseTo(low === 0 ? 0 : 1, 8);
    }
  });

  it('gives each row a pull between 0 and 1, and all together one for each column', () => {
    for (const { columns, measured } of references) {
      const pulls = fitRates(columns, measured)?.leverage ?? [];
      expect(pulls.reduce((sum, pull) => sum + pull, 0)).toBeCloseTo(columns.length, 6);
      for (const pull of pulls) {
        expect(pull).toBeGreaterThan(0);
        expect(pull).toBeLessThan(1 + 1e-9);
      }
    }
  });

  it('tells nothing from as many rows as columns, or from columns that say the same', () => {
    expect(fitRates([[1]], [9])).toBeNull();
    expect(
      fitRates(
        [
          [1, 2],
          [1, 1],
        ],
        [9, 17],
      ),
    ).toBeNull();
    expect(
      fitRates(
        [
          [1, 2, 3],
          [2, 4, 6],
        ],
        [9, 17, 30],
      ),
    ).toBeNull();
  });

  it('is as narrow as can be where nothing scatters', () => {
    const [rate] = fitRates([[1, 2, 3, 4]], [9, 18, 27, 36])?.estimates ?? [];
    expect(rate?.value).toBeCloseTo(9, 12);
    expect((rate?.high ?? 0) - (rate?.low ?? 0)).toBeLessThan(1e-12);
  });
});

describe('data made with known rates and normal noise', () => {
  const LOGS = 200;
  /** Three standard errors of a share of so many logs. */
  const chanceOf = (share: number) => 3 * Math.sqrt((share * (1 - share)) / LOGS);

  it.each(cases)(
    'leave the true rate in its interval 95 times of 100 or more: $truth, $rows runs',
    (made) => {
      for (const [at, share] of coverage(made, LOGS).within.entries()) {
        // A rate of 0 is held more often, as the bound is one end of its interval.
        const usual = made.truth[at] === 0 ? 0.975 : 0.95;
        expect(Math.abs(share - usual)).toBeLessThan(
          chanceOf(usual) + (made.truth.includes(0) ? 0.01 : 0.005),
        );
      }
    },
  );

  it('tell a rate of 0 as 0 half of the time', () => {
    const { zero } = coverage({ truth: [9, 0], rows: 12, noise: 1 }, LOGS);
    expect(Math.abs((zero[1] ?? 0) - 0.5)).toBeLessThan(chanceOf(0.5));
    expect(zero[0]).toBe(0);
  });
});

describe('rows that do not fit', () => {
  /** Runs with a rate of 9 and noise, the first ones measured wrong by a factor. */
  const log = (rows: number, wrong: number, factor: number, seed: number) => {
    const { even, normal } = chance(seed);
    const area = Array.from({ length: rows }, () => 0.5 + 1.5 * even());
    const measured = area.map((each, row) => (9 * each + 0.5 * normal()) * (row < wrong ? factor : 1));
    return { columns: [area], measured };
  };

  it.each([
    ['one of 8, a digit too many', 8, 1, 10],
    ['three of 12, all the same way', 12, 3, 2],
    ['five of 14, all the same way', 14, 5, 3],
  ])('are all named: %s', (_, rows, wrong, factor) => {
    for (let seed = 1; seed <= 20; seed += 1) {
      const { columns, measured } = log(rows, wrong, factor, seed);
      expect(misfits(columns, measured)).toEqual(expect.arrayContaining([...Array(wrong).keys()]));
    }
  });

  it('are named, however far they pull the line to themselves', () => {
    const { columns, measured } = log(12, 0, 1, 7);
    expect(misfits([[...(columns[0] ?? []), 30]], [...measured, 27])).toEqual([12]);
  });

  it('are seldom found where all belong together', () => {
    let named = 0;
    for (let seed = 1; seed <= 400; seed += 1) {
      const { columns, measured } = log(20, 0, 1, seed);
      if (misfits(columns, measured).length > 0) named += 1;
    }
    expect(named / 400).toBeLessThan(0.1);
  });

  it('are none in a handful of rows, or where nothing scatters', () => {
    expect(misfits([[1, 2]], [9, 18])).toEqual([]);
    expect(misfits([[1, 2, 3, 4, 5, 6]], [9, 18, 27, 36, 45, 54])).toEqual([]);
  });
});
