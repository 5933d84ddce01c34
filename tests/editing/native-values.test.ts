import { describe, expect, it } from 'vitest';
import { startingRates } from '../../src/costing';
import { firstFilm } from '../../src/editing';
import { firstSettings } from '../../src/editing/first-settings';
import { costOf, type Micrometres, toUnit, toVolume, um } from '../../src/units';

const roll = (unit: 'mm' | 'in') => {
  const film = firstFilm('Roll', 'USD', unit);
  if (film.kind !== 'roll') throw new Error('A first film is a roll.');
  return film;
};

/** A length in inches, to a thousandth. */
const inches = (length: Micrometres | null) => Number(toUnit(length ?? um(0), 'in').toFixed(3));

// 1 in = 25.4 mm, 1 ft = 12 in and 1 ft² = 0.092 903 04 m², all exactly: NIST SP 811, appendix B.
describe('a book begun in inches', () => {
  it.each([
    ['width', roll('in').width, 13],
    ['gap', roll('in').gap, 0.188],
    ['near side', roll('in').margins.left, 0.188],
    ['far side', roll('in').margins.right, 0.188],
    ['front', roll('in').margins.lead, 0.5],
    ['end', roll('in').margins.tail, 0.5],
    ['longest span', roll('in').spanMax, 18.5],
    ['not reached', roll('in').unreached, 16],
    ['stroke', firstSettings('en-US', 'en').limits.stroke, 0.02],
    ['opening', firstSettings('en-US', 'en').limits.opening, 0.032],
    ['choke', firstSettings('en-US', 'en').limits.choke, 0.008],
  ])('has a %s that its own rulers show', (_, length, shown) => expect(inches(length)).toBe(shown));

  it('buys and prints film by the foot', () => {
    const { lengthLeft, price } = roll('in');
    const { pricing, station } = firstSettings('en-US', 'en');
    expect(toUnit(lengthLeft, 'ft')).toBe(200);
    expect([toUnit(price.per, 'ft'), price.amount]).toEqual([1, 250]);
    expect([toUnit(pricing.length.per, 'ft'), pricing.length.amount]).toEqual([1, 900]);
    expect(toUnit(station.printers[0].perHour, 'ft')).toBe(8);
  });

  it('counts ink and powder for a square foot in round figures', () => {
    const squareFoot = 0.3048 ** 2;
    const { colour, white, powder } = firstSettings('en-US', 'en').rates;
    const a = (perMetre: number) => Number(((perMetre * squareFoot) / 1000).toFixed(3));
    expect([a(colour), a(white), a(powder)]).toEqual([0.85, 1.3, 9.3]);
  });

  it('has half a gap in whole micrometres', () => expect(roll('in').gap % 2).toBe(0));
});

describe('a book begun in millimetres', () => {
  it('begins as before', () => {
    const film = roll('mm');
    expect([film.width, film.gap, film.margins.lead, film.spanMax, film.lengthLeft]).toEqual([
      330_000, 5000, 10_000, 480_000, 60_000_000,
    ]);
    expect(film.price).toEqual({ amount: 840, per: 1_000_000 });
    expect(costOf(um(1_000_000), film.price)).toBe(840);
    const { limits, rates } = firstSettings('de-DE', 'en');
    expect(limits).toEqual({ stroke: 500, opening: 800, choke: 200, white: 200 });
    expect(rates).toEqual(startingRates.mm);
    expect(toVolume(rates.colour, 'ml')).toBe(9);
  });
});
