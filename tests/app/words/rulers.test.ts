import { describe, expect, it } from 'vitest';
import { cutMap } from '../../../app/words/en/cut-map';
import { cutMap as mapa } from '../../../app/words/es/cut-map';
import { onRulers, type Ways } from '../../../app/words/format';
import { fromMm } from '../../../src/units';

describe('a length to be measured off', () => {
  it.each([
    ['mm', 'en-GB', ['450.5 mm', '17\u00a03/4\u00a0in']],
    ['in', 'en-US', ['17\u00a03/4\u00a0in', '450.5 mm']],
    ['in', 'es-US', ['17\u00a03/4\u00a0in', '450.5 mm']],
  ] as const)('in a shop of %s (%s) is told by its own ruler first', (unit, locale, told) => {
    const ways: Ways = { unit, locale, currency: 'USD' };
    // 450.5 / 25.4 = 17.736, which is 17 and 12 sixteenths to the nearest.
    expect(onRulers(fromMm(450.5), ways)).toEqual(told);
  });
});

describe('the rule at the foot of the cut map', () => {
  it.each([
    ['mm', '100 mm'],
    ['in', '4 in'],
  ] as const)('is asked for in the room as it stands on the page of a shop of %s', (unit, told) => {
    const ways: Ways = { unit, locale: 'en-US', currency: 'USD' };
    for (const words of [cutMap, mapa]) {
      expect(words.onPaper(ways).rule).toContain(told);
      expect(words.actualSize(ways)).toContain(`${told}.`);
    }
  });
});
