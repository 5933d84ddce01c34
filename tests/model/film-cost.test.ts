import { describe, expect, it } from 'vitest';
import { filmCost } from '../../src/model';
import { asMinor, fromMm, fromUnit } from '../../src/units';

describe('the cost of film', () => {
  it.each([
    ['by the metre', { amount: asMinor(840), per: fromUnit(1, 'm') }, fromMm(4870), 4091],
    ['by the foot', { amount: asMinor(256), per: fromUnit(1, 'ft') }, fromUnit(10, 'ft'), 2560],
    ['by the roll', { amount: asMinor(15_000), per: fromUnit(100, 'm') }, fromUnit(1, 'm'), 150],
    ['of nothing', { amount: asMinor(840), per: fromUnit(1, 'm') }, fromMm(0), 0],
  ])('%s', (_, price, length, cost) => {
    expect(filmCost(length, { price })).toBe(cost);
  });
});
