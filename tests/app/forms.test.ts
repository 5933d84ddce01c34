import { describe, expect, it } from 'vitest';
import { alternativeEntry, alternativeTable, ofKind } from '../../app/costs/alternative-form';
import { type CostField, costsTable, overheadOf, startingEntry } from '../../app/costs/costs-form';
import { type FormTable, readForm, type Typed } from '../../app/parts/fields/form';
import { pricesTable, taxOf } from '../../app/pricing/prices-form';
import { addEntry, addTable } from '../../app/stock/add-form';
import { airEntry, airTable } from '../../app/upkeep/air-form';
import { en } from '../../app/words/en';
import type { Ways } from '../../app/words/format';
import type { Settings } from '../../src/model';
import { startingPricing } from '../../src/pricing';
import { asMinor, fromMm, fromUnit } from '../../src/units';

const metric: Ways = { unit: 'mm', currency: 'USD', locale: 'en-GB' };
const inches: Ways = { unit: 'in', currency: 'USD', locale: 'en-US' };

const reading =
  <Whole, Name extends string>(table: FormTable<Whole, Name>) =>
  (record: Whole, typed: Typed<Name>, ways: Ways = metric) =>
    readForm(table, { record, typed }, { ...ways, words: en });

describe('costs as typed', () => {
  const known = startingEntry({ currency: 'USD', unit: 'mm' }).record;
  const read = reading<typeof known, CostField>(costsTable);

  it('are told by the litre and the kilogram in any shop', () => {
    const found = read(known, { whiteInk: '150', powder: '35' }, inches);
    expect(found.ok && found.value.costs).toMatchObject({ whiteInk: 15_000_000, powder: 3_500_000 });
  });

  it('are read by the fluid ounce and the pound where these are named', () => {
    const found = read(known, { whiteInk: '5 / fl oz', powder: '16 per lb' }, inches);
    // $5 / 29.573 529 562 5 ml and $16 / 453.592 37 g: NIST SP 811, appendix B.
    expect(found.ok && found.value.costs.whiteInk).toBeCloseTo(16_907_011, -2);
    expect(found.ok && found.value.costs.powder).toBe(3_527_396);
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
    const found = read(known, { [field]: typed });
    expect(found.ok ? '' : found.problem[field]).toMatch(sentence);
    expect(found.ok ? [] : Object.keys(found.problem)).toEqual([field]);
  });

  it('leave out what is empty, and list garments by style', () => {
    const typed = { energy: ' ', blank: '', blanks: 'Tee, navy 3.90\nHoodie: 18' };
    const found = read(known, typed);
    expect(found.ok && found.value.costs).toMatchObject({
      energy: null,
      blank: null,
      blanks: [
        { style: 'Tee, navy', price: 390 },
        { style: 'Hoodie', price: 1800 },
      ],
    });
  });

  it('keep what was typed for one way to reckon overhead while another is chosen', () => {
    const { costs } = known;
    const share = { ...known, costs: { ...costs, overhead: overheadOf('share', costs.overhead) } };
    const typed = { overheadShare: '12', overheadRate: '7' };
    const asShare = read(share, typed);
    expect(asShare.ok && asShare.value.costs.overhead).toEqual({ kind: 'share', share: 0.12 });
    const asHour = read(known, typed);
    expect(asHour.ok && asHour.value.costs.overhead).toEqual({ kind: 'hour', rate: 700_000 });
    expect(overheadOf('hour', costs.overhead)).toBe(costs.overhead);
  });
});

describe('prices as typed', () => {
  type Shop = Pick<Settings, 'pricing' | 'letterhead' | 'mark'>;
  const letterhead = { name: 'Barn', address: '2 Mill Lane' };
  const shop = (fields: Partial<Settings['pricing']> = {}): Shop => ({
    pricing: { ...startingPricing('USD', 'mm'), aim: { kind: 'margin', share: 0.5 }, ...fields },
    letterhead,
    mark: null,
  });
  const read = reading(pricesTable);

  it.each([
    ['aimShare', '100', /stays below 100%/],
    ['aimShare', 'much', /not a percentage/],
    ['artworkFee', '15 EUR', /Nothing is converted/],
    ['breaks', '24 pieces', /a quantity and a percentage/],
    ['validDays', '0', /from 1 to 365/],
    ['minimum', '-1', /below zero/],
  ] as const)('%s of %j is answered', (field, typed, sentence) => {
    const found = read(shop(), { [field]: typed });
    expect(found.ok ? '' : found.problem[field]).toMatch(sentence);
  });

  it('are not nothing where prints are sold by them', () => {
    const found = read(shop({ by: 'placement' }), { placement: '0' });
    expect(found.ok ? '' : found.problem.placement).toMatch(/given away/);
    expect(read(shop({ by: 'cost' }), { placement: '0' }).ok).toBe(true);
  });

  it('take a markup of more than all, and breaks in any order', () => {
    const typed = { aimShare: '250', breaks: '48: 10%; 24: 5,5' };
    const found = read(shop({ aim: { kind: 'markup', share: 1 } }), typed);
    expect(found.ok && found.value.pricing.aim).toEqual({ kind: 'markup', share: 2.5 });
    expect(found.ok && found.value.pricing.breaks).toEqual([
      { from: 24, off: 0.055 },
      { from: 48, off: 0.1 },
    ]);
  });

  it('ask again when a markup becomes a margin that cannot be', () => {
    const found = read(shop({ aim: { kind: 'margin', share: 1.5 } }), {});
    expect(found.ok ? '' : found.problem.aimShare).toMatch(/stays below 100%/);
  });

  it('have a tax back that was chosen away', () => {
    const tax = { name: 'VAT', share: 1 / 3, kind: 'included' } as const;
    expect(taxOf('none', tax)).toBeNull();
    expect(taxOf('on-top', tax)).toEqual({ ...tax, kind: 'on-top' });
  });
});

describe('a way to buy as typed', () => {
  const { record, typed } = alternativeEntry(null, () => 'x', metric);
  const read = reading(alternativeTable);
  const good = { ...typed, name: 'Town', price: '22', shipping: '12' };

  it('is read by its kind', () => {
    const bought = read(record, good);
    expect(bought).toEqual({
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
    const decorated = read(ofKind('decorated', record, metric), { ...good, setUp: '20', colours: '2' });
    expect(decorated.ok && decorated.value).toMatchObject({ setUp: 2000, colours: 2, price: 2200 });
  });

  it('keeps its figure when it becomes of another kind, and asks for what that has besides', () => {
    const bought = read(record, good);
    if (!bought.ok) throw new Error('not read');
    const entry = alternativeEntry(bought.value, () => 'y', metric);
    const other = read(ofKind('decorated', entry.record, metric), entry.typed);
    expect(other.ok ? [] : Object.keys(other.problem)).toEqual(['setUp']);
    expect(ofKind('piece', entry.record, metric)).toMatchObject({ id: 'x', name: 'Town', price: 2200 });
    expect(ofKind('length', entry.record, metric)).toBe(entry.record);
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
  ] as const)('%s of %j is answered, and nothing else is', (field, text, sentence) => {
    const found = read(record, { ...good, [field]: text });
    expect(found.ok ? '' : found.problem[field]).toMatch(sentence);
    expect(found.ok ? [] : Object.keys(found.problem)).toEqual([field]);
  });

  it('needs a name, a price and days', () => {
    const found = read(record, { ...typed, days: 'soon' });
    expect(found.ok ? [] : Object.keys(found.problem).sort()).toEqual(['days', 'name', 'price']);
  });
});

describe('what is added to stock as typed', () => {
  const read = (from: ReturnType<typeof addEntry>, typed: Typed<keyof (typeof from)['typed']>) =>
    readForm(
      addTable('mass', new Set(['Fine powder'])),
      { ...from, typed: { ...from.typed, ...typed } },
      {
        ...metric,
        words: en,
      },
    );
  const things = addEntry(null);
  const garments = addEntry({ style: 'Tee', colour: 'navy', size: 'XL' });

  it('is a name, an amount and a box of which nothing need be known', () => {
    expect(read(things, { name: ' Coarse  ', amount: '2.5 kg' })).toMatchObject({
      ok: true,
      value: { of: 'things', name: 'Coarse', amount: 2_500_000, box: { lot: '', reorder: null } },
    });
  });

  it.each([
    [{ name: '  ', amount: '5' }, { name: en.stock.nameEmpty }],
    [{ name: 'Fine powder ', amount: '5' }, { name: en.stock.nameTaken }],
    [{ name: 'Coarse', amount: '0' }, { amount: en.stock.aboveZero }],
    [{ name: 'Coarse', amount: '' }, { amount: expect.any(String) }],
    [{ name: 'Coarse', amount: '5', reorder: 'some' }, { reorder: expect.any(String) }],
  ])('%j is answered', (typed, problem) => {
    expect(read(things, typed)).toEqual({ ok: false, problem });
  });

  it.each([
    ['S 10, M 20', { S: 10, M: 20 }],
    ['S: 10; 2XL x 3', { S: 10, '2XL': 3 }],
    ['5-6 years 4\nXL=0,', { '5-6 years': 4, XL: 0 }],
    ['Box 4, Lx5, M×6', { Box: 4, L: 5, M: 6 }],
  ])('is garments by size: %j', (sizes, counts) => {
    const found = read(garments, { sizes });
    expect(found).toMatchObject({ ok: true, value: { of: 'garments', style: 'Tee', colour: 'navy' } });
    const all = found.ok && found.value.of === 'garments' ? found.value.sizes : [];
    expect(Object.fromEntries(all.map(({ size, count }) => [size, count]))).toEqual(counts);
  });

  it('wants a count of each size, and a style', () => {
    const problem = { style: en.stock.styleEmpty, sizes: en.stock.sizesProblem };
    for (const sizes of ['', 'XL ', 'S 10, M'])
      expect(read(garments, { style: ' ', sizes })).toEqual({ ok: false, problem });
  });
});

describe('the air of the room as typed', () => {
  const read = (typed: Typed<'temperature' | 'humidity'>) =>
    readForm(airTable('F'), { ...airEntry, typed }, { ...inches, words: en });

  it('is either figure or both, in the unit of the shop', () => {
    expect(read({ temperature: '68', humidity: '' })).toEqual({
      ok: true,
      value: { temperature: 20, humidity: null },
    });
    expect(read({ humidity: '52 %' })).toEqual({ ok: true, value: { temperature: null, humidity: 0.52 } });
  });

  it.each([
    [{}, { temperature: en.upkeep.airNeeded }],
    [{ temperature: '400' }, { temperature: en.upkeep.noRoom }],
    [{ temperature: '68', humidity: 'damp' }, { humidity: en.upkeep.humidityProblems.unreadable }],
  ])('%j is answered', (typed, problem) => {
    expect(read(typed)).toEqual({ ok: false, problem });
  });
});
