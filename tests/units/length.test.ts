import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  fromInches,
  fromMm,
  type LengthUnit,
  nearestSixteenth,
  parseLength,
  toMm,
  um,
  unitNamed,
} from '../../src/units';

describe('conversions', () => {
  // NIST SP 811 (2008), appendix B: 1 in = 25.4 mm and 1 ft = 304.8 mm exactly. ISO 216: A4 is 210 x 297 mm.
  // ANSI/ASME Y14.1: letter (A) is 8.5 x 11 in. 13 in = 330.2 mm: common practice, no source.
  it.each([
    ['1 in', 25_400],
    ['1 ft', 304_800],
    ['8.5 in', 215_900],
    ['11 in', 279_400],
    ['297 mm', 297_000],
    ['13 in', 330_200],
  ])('%s is %d micrometres', (typed, expected) => {
    expect(parseLength(typed, 'mm')).toEqual({ ok: true, value: expected });
  });
});

describe('a length as typed', () => {
  it.each<[string, LengthUnit, number]>([
    ['3 1/2"', 'mm', 88_900],
    ['3.5in', 'mm', 88_900],
    ['3½', 'in', 88_900],
    ['3-1/2 in', 'mm', 88_900],
    ['7/8"', 'mm', 22_225],
    ['89 mm', 'in', 89_000],
    ['8,9 cm', 'in', 89_000],
    ['89 milímetros', 'in', 89_000],
    ['3 1/2 pulg', 'mm', 88_900],
    ['2 Pies', 'mm', 609_600],
    ['8.9cm', 'in', 89_000],
    [' .5 ″', 'mm', 12_700],
    ['1\' 6"', 'mm', 457_200],
    ['60 m', 'mm', 60_000_000],
    ['12', 'in', 304_800],
    ['12', 'mm', 12_000],
    ['10 inches', 'mm', 254_000],
  ])('%s with %s by default', (typed, unit, expected) => {
    expect(parseLength(typed, unit)).toEqual({ ok: true, value: expected });
  });

  it.each([
    ['', 'empty'],
    ['abc', 'unreadable'],
    ['12 apples', 'unreadable'],
    ['1/0 in', 'unreadable'],
    ['1.2.3', 'unreadable'],
    ['0', 'not-positive'],
    ['-5 mm', 'not-positive'],
    ['99999999 m', 'too-long'],
  ])('%j is refused as %s', (typed, problem) => {
    expect(parseLength(typed, 'mm')).toEqual({ ok: false, problem });
  });

  it('may be zero where blank is meant', () => {
    expect(parseLength('0', 'mm', 'zero')).toEqual({ ok: true, value: 0 });
  });

  it('comes back whole for every tenth of a millimetre', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1_000_000 }), (tenths) => {
        const length = fromMm(tenths / 10);
        expect(parseLength(`${toMm(length)} mm`, 'in')).toEqual({ ok: true, value: length });
        expect(Number.isInteger(length)).toBe(true);
      }),
    );
  });

  it('tells its unit, if it names one', () => {
    expect(['3 1/2"', '89 mm', '8,9cm', '12', "2'"].map(unitNamed)).toEqual(['in', 'mm', 'cm', null, 'ft']);
  });
});

describe('sixteenths of an inch', () => {
  it.each([
    [fromInches(24), { whole: 24, over: 0, under: 1 }],
    [fromInches(24.0625), { whole: 24, over: 1, under: 16 }],
    [fromMm(611), { whole: 24, over: 1, under: 16 }],
    [fromInches(3.5), { whole: 3, over: 1, under: 2 }],
    [fromInches(2.999), { whole: 3, over: 0, under: 1 }],
  ])('%d micrometres', (length, tape) => {
    expect(nearestSixteenth(length)).toMatchObject(tape.over === 0 ? { whole: tape.whole, over: 0 } : tape);
  });

  it('are never further off than 1/32 in', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 10_000_000 }), (length) => {
        const { whole, over, under } = nearestSixteenth(um(length));
        expect(Math.abs((whole + over / under) * 25_400 - length)).toBeLessThanOrEqual(25_400 / 32);
      }),
    );
  });
});
