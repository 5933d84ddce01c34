import { describe, expect, it } from 'vitest';
import { consumptionOf, startingRates } from '../../src/costing';
import type { Rates } from '../../src/model';

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
    expect(consumptionOf({ colour: 0, white: 0 }, startingRates)).toEqual({ colour: 0, white: 0, powder: 0 });
  });
});
