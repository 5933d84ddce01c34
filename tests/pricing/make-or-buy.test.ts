import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { costSheet } from '../../src/costing';
import type { Alternative } from '../../src/model';
import { at, breakEven, makeOrBuy } from '../../src/pricing';
import { asMinor, fromMm, fromUnit } from '../../src/units';
import { anyUse, costs, rates } from '../costing/uses';

describe('the count at which making pays', () => {
  it('is fixed costs over what one contributes', () => {
    // Fixed costs 18,000, variable costs 20, price 100: 225 units. OpenStax, Principles of Accounting 2, section 3.2 (from memory).
    expect(breakEven({ fixed: 18_000, each: 20 }, { fixed: 0, each: 100 })).toEqual({
      kind: 'from',
      count: 225,
    });
  });

  it.each([
    [{ fixed: 0, each: 50 }, { fixed: 0, each: 60 }, { kind: 'always' }],
    [{ fixed: 100, each: 60 }, { fixed: 0, each: 60 }, { kind: 'never' }],
    [{ fixed: 100, each: 70 }, { fixed: 0, each: 60 }, { kind: 'never' }],
    [
      { fixed: 0, each: 70 },
      { fixed: 100, each: 60 },
      { kind: 'up-to', count: 10 },
    ],
    [
      { fixed: 101, each: 50 },
      { fixed: 0, each: 60 },
      { kind: 'from', count: 11 },
    ],
  ])('%j against %j', (make, buy, expected) => {
    expect(breakEven(make, buy)).toEqual(expected);
  });

  it('is the very count at which it turns', () => {
    const cents = fc.integer({ min: 0, max: 100_000 });
    const linear = fc.record({ fixed: cents, each: cents.map((value) => value / 7) });
    fc.assert(
      fc.property(linear, linear, fc.integer({ min: 1, max: 5000 }), (make, buy, count) => {
        const found = breakEven(make, buy);
        const pays = (many: number) => at(make, many) <= at(buy, many);
        if (found.kind === 'from') expect([pays(found.count - 1), pays(found.count)]).toEqual([false, true]);
        else if (found.kind === 'up-to')
          expect([pays(found.count), pays(found.count + 1)]).toEqual([true, false]);
        else expect(pays(count)).toBe(found.kind === 'always');
      }),
    );
  });
});

describe('a run against what could be bought', () => {
  const offer = { id: 'x', name: 'x', shipping: asMinor(1200), days: 3 };
  const film = { width: fromMm(330), length: fromUnit(4, 'm') };

  it('compares what the alternative spares, at the run’s own count', () => {
    fc.assert(
      fc.property(anyUse, (use) => {
        const sheet = costSheet(use, costs, rates);
        const count = use.transfers.reduce((sum, { copies }) => sum + copies, 0);
        const piece: Alternative = { ...offer, kind: 'piece', price: asMinor(250) };
        const bought = makeOrBuy(sheet, use, film, piece);
        expect(bought.bought).toBe(1200 + 250 * count);
        expect(bought.made).toBeLessThanOrEqual(sheet.amount + 1);
        const decorated = makeOrBuy(sheet, use, film, {
          ...offer,
          kind: 'decorated',
          setUp: asMinor(2000),
          colours: 2,
          price: asMinor(300),
        });
        expect(decorated.bought).toBe(1200 + 2 * 2000 * use.transfers.length + 300 * count);
        expect(decorated.made).toBeGreaterThanOrEqual(bought.made);
      }),
    );
  });

  it('buys by the length what covers as much film, on the other’s width', () => {
    fc.assert(
      fc.property(anyUse, (use) => {
        const price = { amount: asMinor(2000), per: fromUnit(1, 'm') };
        const found = makeOrBuy(costSheet(use, costs, rates), use, film, {
          ...offer,
          kind: 'length',
          width: fromMm(660),
          price,
        });
        // 4 m of 330 mm are 2 m of 660 mm.
        expect(found.bought).toBe(1200 + 4000);
      }),
    );
  });
});
