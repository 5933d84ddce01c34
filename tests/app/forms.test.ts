import { describe, expect, it } from 'vitest';
import * as alternatives from '../../app/costs/alternative-form';
import * as costs from '../../app/costs/costs-form';
import * as prices from '../../app/pricing/prices-form';
import { startingCosts, startingRates } from '../../src/costing';
import type { Settings } from '../../src/model';
import { startingPricing } from '../../src/pricing';
import { asMinor, fromMm, fromUnit } from '../../src/units';

const metric = { unit: 'mm', currency: 'USD', locale: 'en-GB' } as const;
const inches = { unit: 'in', currency: 'USD', locale: 'en-US' } as const;
const spanish = { unit: 'mm', currency: 'EUR', locale: 'es' } as const;
const shop: Pick<Settings, 'pricing' | 'letterhead'> = {
  pricing: startingPricing('USD'),
  letterhead: { name: 'Barn', address: '2 Mill Lane' },
};

describe('costs as typed', () => {
  const form = costs.startingForm(metric);
  const known = { costs: startingCosts('USD'), rates: startingRates };

  it.each([metric, spanish])('are read as they were shown: %j', (ways) => {
    const own = startingCosts(ways.currency);
    expect(
      costs.readForm(costs.formOf(own, startingRates, ways), { costs: own, rates: startingRates }, ways),
    ).toEqual({
      ok: true,
      value: { costs: own, rates: startingRates },
    });
  });

  it('are told by the fluid ounce and the pound where lengths are in inches', () => {
    const read = costs.readForm(
      { ...costs.startingForm(inches), whiteInk: '5', powder: '16' },
      known,
      inches,
    );
    // $5 / 29.573 529 562 5 ml and $16 / 453.592 37 g: NIST SP 811, appendix B.
    expect(read.ok && read.value.costs.whiteInk).toBeCloseTo(16_907_011, -2);
    expect(read.ok && read.value.costs.powder).toBe(3_527_396);
  });

  it.each([
    ['whiteInk', '-3', /below zero/],
    ['whiteInk', '0', /vanish from every cost/],
    ['whiteInk', '12 EUR', /Nothing is converted/],
    ['labour-cutting', '0,00', /vanish from every cost/],
    ['colourRate', '0', /print without ink/],
    ['spoilage', '-2', /below zero/],
    ['spoilage', '120', /too high/],
    ['watts-press', 'many', /watts as a whole number/],
    ['runsADay', '0', /from 1 to 50/],
    ['orderTime', 'soon', /not a length of time/],
    ['day', '-1 ml', /below zero/],
    ['blanks', 'Tee', /no price at its end/],
  ] as const)('%s of %j is answered', (field, typed, sentence) => {
    const read = costs.readForm({ ...form, [field]: typed }, known, metric);
    expect(read.ok ? '' : read.problem[field]).toMatch(sentence);
    expect(read.ok ? [] : Object.keys(read.problem)).toEqual([field]);
  });

  it('leave out what is empty, and list garments by style', () => {
    const read = costs.readForm(
      { ...form, energy: ' ', blank: '', blanks: 'Tee, navy 3.90\nHoodie: 18' },
      known,
      metric,
    );
    expect(read.ok && read.value.costs).toMatchObject({
      energy: null,
      blank: null,
      blanks: [
        { style: 'Tee, navy', price: 390 },
        { style: 'Hoodie', price: 1800 },
      ],
    });
  });
});

describe('prices as typed', () => {
  const form = prices.formOf(shop, metric);

  it('are read as they were shown', () => {
    expect(prices.readForm(form, shop, metric)).toEqual({ ok: true, value: shop });
  });

  it.each([
    ['aimShare', '100', /stays below 100%/],
    ['aimShare', 'much', /not a percentage/],
    ['artworkFee', '15 EUR', /Nothing is converted/],
    ['breaks', '24 pieces', /a count and a percentage/],
    ['validDays', '0', /from 1 to 365/],
    ['minimum', '-1', /below zero/],
  ] as const)('%s of %j is answered', (field, typed, sentence) => {
    const read = prices.readForm({ ...form, [field]: typed }, shop, metric);
    expect(read.ok ? '' : read.problem[field]).toMatch(sentence);
  });

  it('are not nothing where prints are sold by them', () => {
    const read = prices.readForm({ ...form, by: 'placement', placement: '0' }, shop, metric);
    expect(read.ok ? '' : read.problem.placement).toMatch(/given away/);
  });

  it('take a markup of more than all, and breaks in any order', () => {
    const typed = { ...form, aim: 'markup' as const, aimShare: '250', breaks: '48: 10%; 24: 5,5' };
    const read = prices.readForm(typed, shop, metric);
    expect(read.ok && read.value.pricing.aim).toEqual({ kind: 'markup', share: 2.5 });
    expect(read.ok && read.value.pricing.breaks).toEqual([
      { from: 24, off: 0.055 },
      { from: 48, off: 0.1 },
    ]);
  });
});

describe('a way to buy as typed', () => {
  const form = alternatives.emptyForm(metric);

  it('is read by its kind', () => {
    const named = { ...form, name: 'Town', price: '22', shipping: '12' };
    expect(alternatives.readForm(named, null, 'x', metric)).toEqual({
      ok: true,
      value: {
        id: 'x',
        kind: 'length',
        name: 'Town',
        price: { amount: asMinor(2200), per: fromUnit(1, 'm') },
        width: fromMm(560),
        shipping: 1200,
        days: 3,
      },
    });
    const decorated = { ...named, kind: 'decorated' as const, setUp: '20', colours: '2' };
    const read = alternatives.readForm(decorated, null, 'x', metric);
    expect(read.ok && read.value).toMatchObject({ kind: 'decorated', setUp: 2000, colours: 2, price: 2200 });
    expect(read.ok && alternatives.formOf(read.value, metric)).toMatchObject({ setUp: '20', colours: '2' });
  });

  it.each([
    ['price', '-9', /below zero/],
    ['price', '9 EUR', /Nothing is converted/],
    ['price', '', /./],
    ['shipping', '5 €', /Nothing is converted/],
    ['shipping', '-1', /below zero/],
    ['width', '0', /above zero/],
    ['per', 'a roll', /not a length/],
    ['days', '-2', /whole number of days/],
    ['name', ' ', /Give it a name/],
  ] as const)('%s of %j is answered, and nothing else is', (field, typed, sentence) => {
    const good = { ...form, name: 'Town', price: '22', shipping: '12' };
    const read = alternatives.readForm({ ...good, [field]: typed }, null, 'x', metric);
    expect(read.ok ? '' : read.problem[field]).toMatch(sentence);
    expect(read.ok ? [] : Object.keys(read.problem)).toEqual([field]);
  });

  it('needs a name, a price and days', () => {
    const read = alternatives.readForm({ ...form, days: 'soon' }, null, 'x', metric);
    expect(read.ok ? [] : Object.keys(read.problem).sort()).toEqual(['days', 'name', 'price']);
  });
});
