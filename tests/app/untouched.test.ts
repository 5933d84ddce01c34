import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as alternatives from '../../app/costs/alternative-form';
import * as costs from '../../app/costs/costs-form';
import * as films from '../../app/film/film-form';
import { asShown } from '../../app/parts/as-shown';
import * as stations from '../../app/press/station-form';
import * as prices from '../../app/pricing/prices-form';
import type { FilmFields } from '../../src/editing';
import type { Alternative, Costs, Pricing, Rates, Roll, Station } from '../../src/model';
import { startingStation } from '../../src/pressing';

/** Values of a kind whose fields are whole numbers in units of their own. */
const whole = <Value>(least: number, most: number) =>
  fc.integer({ min: least, max: most }) as unknown as fc.Arbitrary<Value>;

const ways = fc.record({
  unit: fc.constantFrom('mm' as const, 'in' as const),
  currency: fc.constantFrom('USD', 'EUR', 'JPY', 'KWD'),
  locale: fc.constantFrom('en-US', 'en-GB', 'es', 'es-MX'),
});

const rate = fc.option(whole<NonNullable<Costs['energy']>>(1, 3_000_000));
const money = whole<Pricing['minimum']>(0, 9_000_000);
const volume = whole<Rates['colour']>(1, 400_000);
const length = whole<FilmFields['gap']>(1, 3_000_000);
const time = whole<Station['wetLimit']>(1, 20_000);
const share = fc.double({ min: 0, max: 1, noNaN: true });

const labour = fc.record({ artwork: rate, printing: rate, cutting: rate, pressing: rate, packing: rate });
const shopCosts: fc.Arbitrary<Costs> = fc.record({
  filmBy: fc.constantFrom('footprint' as const, 'ink' as const),
  colourInk: rate,
  whiteInk: rate,
  powder: rate,
  maintenance: fc.record({
    day: volume,
    runsADay: whole(1, 50),
    cleaning: volume,
    cleanings: whole(0, 50),
    start: fc.record({ colour: volume, white: volume }),
  }),
  energy: rate,
  watts: fc.record({ printer: whole(0, 9000), oven: whole(0, 9000), press: whole(0, 9000) }),
  labour,
  artworkTime: fc.record({ order: time, design: time }),
  blank: fc.option(money),
  blanks: fc.array(fc.record({ style: fc.constantFrom('Tee', 'Hoodie, navy'), price: money }), {
    maxLength: 2,
  }),
  spoilage: share,
  overhead: fc.oneof(
    fc.record({ kind: fc.constant('hour' as const), rate }),
    fc.record({ kind: fc.constant('share' as const), share }),
  ),
});
const rates: fc.Arbitrary<Rates> = fc.record({
  colour: volume,
  white: volume,
  powder: whole<Rates['powder']>(1, 400_000),
});

const pricing: fc.Arbitrary<Pricing> = fc.record({
  aim: fc.record({ kind: fc.constant('markup' as const), share }),
  by: fc.constantFrom('cost' as const, 'placement' as const),
  placement: whole<Pricing['placement']>(1, 100_000),
  length: fc.record({ amount: money, per: length }),
  artworkFee: money,
  breaks: fc.constant([{ from: 24, off: 1 / 3 }]),
  breaksBy: fc.constant('order' as const),
  rush: share,
  minimum: money,
  deposit: share,
  tax: fc.option(fc.record({ name: fc.constant('VAT'), share, kind: fc.constant('on-top' as const) })),
  validDays: whole(1, 365),
  nextQuote: whole(1, 99),
});

const bought: fc.Arbitrary<Alternative> = fc.record({
  id: fc.constant('x'),
  name: fc.constant('From town'),
  shipping: money,
  days: whole(0, 20),
  kind: fc.constant('length' as const),
  width: length,
  price: fc.record({ amount: money, per: length }),
});

const spanMax: fc.Arbitrary<Roll['spanMax']> = fc.option(whole<FilmFields['gap']>(400_000, 900_000));

const film: fc.Arbitrary<FilmFields> = fc.record({
  kind: fc.constant('roll' as const),
  name: fc.constant('Roll'),
  width: whole<FilmFields['width']>(200_000, 900_000),
  margins: fc.record({
    left: whole<FilmFields['gap']>(0, 20_000),
    right: whole<FilmFields['gap']>(0, 20_000),
    lead: whole<FilmFields['gap']>(0, 20_000),
    tail: whole<FilmFields['gap']>(0, 20_000),
  }),
  gap: whole<FilmFields['gap']>(0, 6_000).map((half) => (2 * half) as FilmFields['gap']),
  cutting: fc.constant('free' as const),
  together: fc.record({ kind: fc.constant('near' as const), share }),
  peel: fc.constant('hot' as const),
  curl: whole<FilmFields['gap']>(0, 20_000),
  archived: fc.boolean(),
  lengthLeft: whole<FilmFields['gap']>(2_000_000, 99_000_000),
  price: fc.record({ amount: money, per: length }),
  spanMax,
  jobBlank: whole<FilmFields['gap']>(0, 20_000),
  cutBlank: whole<FilmFields['gap']>(0, 20_000),
  unreached: whole<FilmFields['gap']>(0, 400_000),
  noPrint: fc.constantFrom<Roll['noPrint'][]>(
    [],
    [{ from: 100_001 as FilmFields['gap'], to: 200_002 as FilmFields['gap'] }],
  ),
});

const station: fc.Arbitrary<Station> = fc
  .record({ perHour: length, width: length, bed: length, time })
  .map(({ perHour, width, bed, time: seconds }) => {
    const starting = startingStation('F');
    return {
      ...starting,
      printer: { ...starting.printer, perHour, warmUp: seconds },
      press: { ...starting.press, platen: { width, length: bed } },
      oven: { width: bed, length: width },
    };
  });

describe('a field that is saved as it was shown', () => {
  it('keeps its value, whatever its text would be read as', () => {
    const read = () => 'read';
    const keep = asShown({ a: '1.23', b: 'typed' }, { a: '1.23', b: '4' });
    expect([keep('a', 'known', read), keep('b', 'known', read)]).toEqual(['known', 'read']);
    // Nothing is known of a new one, nor of a field that the kind before did not have.
    expect(asShown({ a: '1' }, null)('a', 'known', read)).toBe('read');
    expect(asShown({ a: '1' }, { a: '1' })('a', undefined, read)).toBe('read');
    expect(asShown({ a: '' }, { a: '' })('a', null, () => 'read')).toBeNull();
  });
});

describe('a form that is saved untouched changes nothing', () => {
  it('costs', () => {
    fc.assert(
      fc.property(shopCosts, rates, ways, (own, ownRates, how) => {
        const known = { costs: own, rates: ownRates };
        expect(costs.readForm(costs.formOf(own, ownRates, how), known, how)).toEqual({
          ok: true,
          value: known,
        });
      }),
    );
  });

  it('costs, but for the field that was typed over', () => {
    fc.assert(
      fc.property(shopCosts, rates, ways, (own, ownRates, how) => {
        const form = { ...costs.formOf(own, ownRates, how), runsADay: '7' };
        const { maintenance } = own;
        expect(costs.readForm(form, { costs: own, rates: ownRates }, how)).toEqual({
          ok: true,
          value: { costs: { ...own, maintenance: { ...maintenance, runsADay: 7 } }, rates: ownRates },
        });
      }),
    );
  });

  it('prices', () => {
    fc.assert(
      fc.property(pricing, ways, (own, how) => {
        const known = { pricing: own, letterhead: { name: 'Barn', address: '2 Mill Lane' } };
        expect(prices.readForm(prices.formOf(known, how), known, how)).toEqual({ ok: true, value: known });
      }),
    );
  });

  it('a way to buy', () => {
    fc.assert(
      fc.property(bought, ways, (own, how) => {
        expect(alternatives.readForm(alternatives.formOf(own, how), own, own.id, how)).toEqual({
          ok: true,
          value: own,
        });
      }),
    );
  });

  it('film', () => {
    fc.assert(
      fc.property(film, ways, (own, how) => {
        expect(films.readForm(films.formOf(own, how), own, how)).toEqual({ ok: true, value: own });
      }),
    );
  });

  it('equipment', () => {
    fc.assert(
      fc.property(station, ways, (own, how) => {
        expect(stations.readForm(stations.formOf(own, how), own, how)).toEqual({ ok: true, value: own });
      }),
    );
  });
});
