import { describe, expect, it } from 'vitest';
import { consumptionOf, runConsumption, startingCosts, startingRates } from '../../src/costing';
import type { Rates } from '../../src/model';
import type { Microlitres } from '../../src/units';

describe('ink and powder by area', () => {
  it('takes the rate for a square metre printed in full, white and powder by the same area', () => {
    const rates = { colour: 10_000, white: 20_000, powder: 90_000 } as Rates;
    expect(consumptionOf({ colour: 1_000_000, white: 1_000_000 }, rates)).toEqual(rates);
    // 200 x 150 mm, white all over, colour on a quarter.
    expect(consumptionOf({ colour: 7_500, white: 30_000 }, rates)).toEqual({
      colour: 75,
      white: 600,
      powder: 2_700,
    });
  });

  it('takes nothing for nothing', () => {
    expect(consumptionOf({ colour: 0, white: 0 }, startingRates.mm)).toEqual({
      colour: 0,
      white: 0,
      powder: 0,
    });
  });
});

describe('ink and powder of a run', () => {
  it('is what it prints, what a start takes, and half of its cleanings of each ink', () => {
    const costs = startingCosts('USD');
    const ul = (value: number) => value as Microlitres;
    const maintenance = {
      ...costs.maintenance,
      cleanings: 2,
      cleaning: ul(3000),
      start: { colour: ul(400), white: ul(900) },
    };
    const rates = { colour: 10_000, white: 20_000, powder: 90_000 } as Rates;
    expect(
      runConsumption({ colour: 7_500, white: 30_000 }, { rates, costs: { ...costs, maintenance } }),
    ).toEqual({ colour: 75 + 400 + 3000, white: 600 + 900 + 3000, powder: 2_700 });
  });
});
