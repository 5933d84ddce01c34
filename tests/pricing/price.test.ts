import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Order, Pricing } from '../../src/model';
import {
  factorOf,
  marginOf,
  marginsAround,
  markupOf,
  type Print,
  priceOf,
  startingPricing,
} from '../../src/pricing';
import { asMinor, fromMm, fromUnit } from '../../src/units';

const order: Pick<Order, 'rush' | 'supplied' | 'pricing'> = {
  rush: false,
  supplied: false,
  pricing: { aim: null, newDesigns: null, discount: 0 },
};
const plain: Pricing = {
  ...startingPricing('USD', 'mm'),
  artworkFee: asMinor(0),
  breaks: [],
  minimum: asMinor(0),
};
const print = (fields: Partial<Print> = {}): Print => ({
  transfer: 't',
  name: 'crest',
  design: 'd',
  size: 's',
  count: 10,
  cost: 2000,
  length: fromMm(1000),
  ...fields,
});

const priced = (pricing: Partial<Pricing> = {}, own: Partial<Parameters<typeof priceOf>[0]> = {}) =>
  priceOf({
    pricing: { ...plain, ...pricing },
    order,
    prints: [print()],
    garments: [],
    newDesigns: 0,
    cost: asMinor(2000),
    ...own,
  });

describe('margin and markup', () => {
  // Common practice: markup 25, 50, 100 and 300% are margins of 20, 33 1/3, 50 and 75%; k / (1 + k).
  it.each([
    [0.25, 0.2],
    [0.5, 1 / 3],
    [1, 0.5],
    [3, 0.75],
  ])('a markup of %d is a margin of %d', (markup, margin) => {
    expect(factorOf({ kind: 'markup', share: markup })).toBeCloseTo(
      factorOf({ kind: 'margin', share: margin }),
      12,
    );
    const price = 80 * factorOf({ kind: 'margin', share: margin });
    expect(marginOf(price, 80)).toBeCloseTo(margin, 12);
    expect(markupOf(price, 80)).toBeCloseTo(markup, 12);
  });

  it('is not known of nothing', () => {
    expect(marginOf(0, 10)).toBeNull();
    expect(markupOf(10, 0)).toBeNull();
  });

  it('falls to zero where the price comes down to the cost', () => {
    const around = marginsAround({ net: asMinor(4000), cost: asMinor(2000) }, [-0.5, 0, 1]);
    expect(around.map(({ margin }) => margin)).toEqual([0, 0.5, 0.75]);
  });
});

describe('the price of an order', () => {
  it.each<[string, Partial<Pricing>, number]>([
    ['by cost and margin', { aim: { kind: 'margin', share: 0.5 } }, 4000],
    ['by cost and markup', { aim: { kind: 'markup', share: 0.25 } }, 2500],
    ['by placement', { by: 'placement', placement: asMinor(350) }, 3500],
    ['by running length', { by: 'length', length: { amount: asMinor(3000), per: fromUnit(1, 'm') } }, 3000],
    ['with tax on top', { tax: { name: 'VAT', share: 0.19, kind: 'on-top' } }, 4760],
    ['with tax in it', { tax: { name: 'VAT', share: 0.19, kind: 'included' } }, 4000],
    ['at a minimum', { minimum: asMinor(5000) }, 5000],
    [
      'with a break that is reached',
      {
        breaks: [
          { from: 5, off: 0.1 },
          { from: 11, off: 0.5 },
        ],
      },
      3600,
    ],
  ])('%s', (_, pricing, total) => {
    expect(priced(pricing).total).toBe(total);
  });

  it('is whole for one print, rounded up, and the line is count times that', () => {
    const { lines } = priced({}, { prints: [print({ count: 3, cost: 1000 })] });
    expect(lines).toEqual([{ kind: 'print', id: 't', name: 'crest', count: 3, each: 667, amount: 2001 }]);
  });

  it('is the same for every print of one size, and the lines sum to it', () => {
    const any = fc.record({
      size: fc.constantFrom('small', 'large'),
      count: fc.integer({ min: 1, max: 60 }),
      cost: fc.double({ min: 1, max: 90_000, noNaN: true }),
      length: fc.integer({ min: 1, max: 4000 }).map(fromMm),
    });
    const way = fc.constantFrom('cost' as const, 'placement' as const, 'length' as const);
    fc.assert(
      fc.property(fc.array(any, { minLength: 1, maxLength: 6 }), way, (all, by) => {
        const prints = all.map((each, at) => print({ ...each, transfer: `t${at}`, design: `d${at}` }));
        const price = priced({ by }, { prints });
        const lines = price.lines.flatMap((line) => (line.kind === 'print' ? [line] : []));
        const sizeOf = new Map(prints.map(({ transfer, size }) => [transfer, size]));
        for (const size of ['small', 'large']) {
          const own = lines.filter(({ id }) => sizeOf.get(id) === size);
          expect(new Set(own.map(({ each }) => each)).size).toBeLessThanOrEqual(1);
        }
        expect(lines.map(({ count, each }) => count * each)).toEqual(lines.map(({ amount }) => amount));
        expect(price.subtotal).toBe(lines.reduce((sum, { amount }) => sum + amount, 0));
        // Nobody pays less than the share: what the shop aims at is kept.
        if (by === 'cost') {
          const cost = prints.reduce((sum, each) => sum + each.cost, 0);
          expect(price.subtotal).toBeGreaterThanOrEqual(Math.floor(cost * factorOf(plain.aim)));
        }
      }),
    );
  });

  it('rounds tax once, and what is included in it leaves the rest', () => {
    const { net, tax, total } = priced({ tax: { name: 'VAT', share: 0.19, kind: 'included' } });
    expect([net, tax?.amount, total]).toEqual([3361, 639, 4000]);
  });

  it('asks a fee for new designs, garments by the same margin, more in a rush, a deposit', () => {
    const price = priced(
      { artworkFee: asMinor(1500), rush: 0.25, deposit: 0.5 },
      {
        newDesigns: 2,
        order: { ...order, rush: true },
        garments: [{ name: 'tee, navy', count: 10, cost: asMinor(450) }],
      },
    );
    expect(price.lines.map(({ kind, amount }) => [kind, amount])).toEqual([
      ['print', 4000],
      ['garments', 9000],
      ['artwork-fee', 3000],
      ['rush', 4000],
    ]);
    expect([price.total, price.deposit]).toEqual([20_000, 10_000]);
  });

  it('charges nothing for garments that the customer brings', () => {
    const { lines } = priced(
      {},
      { order: { ...order, supplied: true }, garments: [{ name: 'tee', count: 10, cost: asMinor(450) }] },
    );
    expect(lines.at(-1)).toEqual({ kind: 'supplied', count: 10, amount: 0 });
  });

  it('counts a break by design where the shop does', () => {
    const prints = [
      print({ transfer: 'a', design: 'x', name: 'crest', count: 8 }),
      print({ transfer: 'b', design: 'x', name: 'crest, small', count: 8 }),
      print({ transfer: 'c', design: 'y', name: 'tag', count: 8 }),
    ];
    const breaks = [{ from: 16, off: 0.1 }];
    const discounts = (breaksBy: Pricing['breaksBy']) =>
      priced({ breaks, breaksBy }, { prints }).lines.filter(({ kind }) => kind === 'break');
    expect(discounts('order').map(({ amount }) => amount)).toEqual([-1200]);
    expect(discounts('design')).toEqual([
      { kind: 'break', from: 16, share: 0.1, name: 'crest', amount: -800 },
    ]);
  });

  it('warns below cost, below the aim, and where a garment has no price', () => {
    expect(priced().problem).toBeNull();
    expect(priced({ by: 'placement', placement: asMinor(100) }).problem).toBe('below-cost');
    expect(priced({ by: 'placement', placement: asMinor(300) }).problem).toBe('below-aim');
    expect(priced({}, { garments: [{ name: 'tee', count: 1, cost: null }] }).problem).toBe(
      'no-garment-price',
    );
    const own = { ...order, pricing: { ...order.pricing, aim: { kind: 'margin' as const, share: 0.3 } } };
    expect(priced({ by: 'placement', placement: asMinor(300) }, { order: own }).problem).toBeNull();
  });

  it('reaches what is aimed at, and its lines sum to it', () => {
    const prints = fc.array(
      fc.record({
        count: fc.integer({ min: 1, max: 300 }),
        cost: fc.double({ min: 1, max: 1e6, noNaN: true }),
      }),
      { minLength: 1, maxLength: 6 },
    );
    fc.assert(
      fc.property(
        prints,
        fc.double({ min: 0, max: 0.95, noNaN: true }),
        fc.double({ min: 0, max: 0.3, noNaN: true }),
        fc.constantFrom('on-top' as const, 'included' as const),
        (found, share, taxed, kind) => {
          const cost = asMinor(found.reduce((sum, own) => sum + own.cost, 0));
          const price = priced(
            { aim: { kind: 'margin', share }, tax: { name: 'tax', share: taxed, kind } },
            { prints: found.map(print), cost },
          );
          expect(price.lines.reduce((sum, { amount }) => sum + amount, 0)).toBe(price.subtotal);
          expect(price.net + (price.tax?.amount ?? 0)).toBe(price.total);
          if (kind === 'on-top') expect(price.margin ?? 0).toBeGreaterThan(share - 0.002);
        },
      ),
    );
  });
});
