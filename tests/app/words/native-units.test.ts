import { describe, expect, it } from 'vitest';
import { filmTable } from '../../../app/film/film-form';
import { shortLength as shortField } from '../../../app/parts/fields/lengths';
import { en } from '../../../app/words/en';
import * as told from '../../../app/words/format';
import { firstFilm } from '../../../src/editing';
import { asMinor, fromInches, fromMm, fromUnit, fromVolume, um } from '../../../src/units';

const inch: told.Ways = { unit: 'in', locale: 'en-US', currency: 'USD' };
const metric: told.Ways = { unit: 'mm', locale: 'en-GB', currency: 'GBP' };

// 1 in = 25.4 mm, 1 ft = 12 in and 1 ft² = 0.092 903 04 m², all exactly: NIST SP 811, appendix B.
describe('a length on the bench', () => {
  it.each([
    [fromInches(13), '13\u00a0in', '330.2 mm'],
    [fromInches(3 / 16), '3/16\u00a0in', '4.8 mm'],
    [um(4764), '3/16\u00a0in', '4.8 mm'],
    [fromInches(18.5), '18\u00a01/2\u00a0in', '469.9 mm'],
    [fromInches(11 + 15 / 16), '11\u00a015/16\u00a0in', '303.2 mm'],
    [fromMm(5), '0.2 in', '5 mm'],
    [fromMm(480), '18.9 in', '480 mm'],
    [fromInches(0.02), '0.02 in', '0.5 mm'],
    [um(0), '0\u00a0in', '0 mm'],
  ])('%d um is told as %s where it is whole sixteenths', (length, own, other) => {
    expect(told.shortLength(length, inch)).toBe(own);
    expect(told.shortLength(length, metric)).toBe(other);
  });

  it.each([
    [fromMm(450.5), '17\u00a03/4\u00a0in', '450.5 mm'],
    [fromMm(5), '3/16\u00a0in', '5 mm'],
    [fromMm(8), '5/16\u00a0in', '8 mm'],
    [um(0), '0\u00a0in', '0 mm'],
  ])('%d um along a ruler is %s to the nearest sixteenth', (length, own, other) => {
    expect(told.rulerLength(length, inch)).toBe(own);
    expect(told.rulerLength(length, metric)).toBe(other);
  });

  it.each([
    [fromInches(11), fromInches(9), '11 × 9\u00a0in'],
    [fromInches(3.5), fromInches(3 + 3 / 16), '3\u00a01/2 × 3\u00a03/16\u00a0in'],
    [fromInches(3.94), fromInches(4), '3.94 × 4 in'],
  ])('a size of %d by %d um is %s', (width, height, size) =>
    expect(told.area(width, height, inch)).toBe(size),
  );

  it.each([
    [fromInches(0.02), '0.020 in', '0.51 mm'],
    [fromMm(0.35), '0.014 in', '0.35 mm'],
    [fromMm(0.2), '0.008 in', '0.2 mm'],
  ])('a stroke of %d um is told in thousandths: %s', (length, own, other) => {
    expect(told.fineLength(length, inch)).toBe(own);
    expect(told.fineLength(length, metric)).toBe(other);
  });
});

describe('a field of an inch shop', () => {
  const reader = { ...inch, words: en };
  const field = shortField('zero');
  it.each(['3/16 in', '1/2 in', '18 1/2 in', '13 in', '0.2 in', '0.394 in'])(
    'shows %s again as it was typed',
    (typed) => {
      const read = field.read(typed, reader);
      expect(read.ok && field.show(read.value, reader)).toBe(typed);
    },
  );
});

describe('ink and powder', () => {
  it('have one unit each, in any shop', () => {
    for (const ways of [inch, { ...metric, locale: 'en-US' }]) {
      expect(told.inkVolume(fromVolume(43.5, 'ml'), ways)).toBe('43.5 ml');
      expect(told.bulkVolume(fromVolume(43.5, 'ml'), ways)).toBe('43.5 ml');
      expect(told.bulkUnits(ways)).toMatchObject({ volume: 'ml', ink: 'l', mass: 'g', powder: 'kg' });
    }
  });

  it('are counted for a square foot there', () => {
    // 9.149 ml for 1 m² is 9.149 x 0.092 903 04 = 0.850 ml for 1 ft².
    expect(told.volumeRate(fromVolume(9.149, 'ml'), inch)).toBe('0.85 ml/ft²');
    expect(told.lengthPrice({ amount: asMinor(250), per: fromUnit(1, 'ft') }, inch)).toBe('$2.50/ft');
  });
});

describe('hints of an inch shop', () => {
  const film = filmTable.fields;
  const hint = (name: 'gap' | 'spanMax', ways: told.Ways) =>
    film[name].hint?.(en, ways, firstFilm('Roll', 'USD', ways.unit));
  it('speak of its own ruler', () => {
    expect(hint('gap', inch)).toBe('3/16\u00a0in for scissors, 5/16\u00a0in for a trimmer (common practice)');
    expect(hint('spanMax', inch)).toContain('less 3/4\u00a0in.');
    expect(hint('gap', metric)).toBe('5 mm for scissors, 8 mm for a trimmer (common practice)');
    expect(hint('spanMax', metric)).toContain('less 20 mm.');
  });
});
