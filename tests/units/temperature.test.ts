import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromDegrees, parseDuration, parseTemperature, toDegrees } from '../../src/units';

describe('temperatures', () => {
  it.each([
    // Fixed points of the scales: NIST SP 811, appendix B.
    [32, 0],
    [212, 100],
    [-40, -40],
    // Common practice, no source: what presses are set to.
    [330, 165.6],
    [300, 148.9],
  ])('%f F is %f C', (degreesF, degreesC) => {
    expect(fromDegrees(degreesF, 'F')).toBe(Math.round(10 * degreesC));
  });

  it('come back as typed in whole degrees of either scale', () => {
    fc.assert(
      fc.property(fc.integer({ min: -400, max: 1000 }), (degrees) => {
        for (const unit of ['C', 'F'] as const) {
          expect(Math.abs(toDegrees(fromDegrees(degrees, unit), unit) - degrees)).toBeLessThan(0.5);
        }
      }),
    );
  });

  it.each([
    ['330 F', 'C', 1656],
    ['330°F', 'C', 1656],
    ['165,6 °C', 'F', 1656],
    ['165,6 grados C', 'F', 1656],
    ['165.6', 'C', 1656],
    ['330', 'F', 1656],
    ['150 deg c', 'F', 1500],
    ['150 degrees Celsius', 'F', 1500],
  ] as const)('%s is read', (text, unit, value) => {
    expect(parseTemperature(text, unit)).toEqual({ ok: true, value });
  });

  it.each([
    ['', 'empty'],
    ['hot', 'unreadable'],
    ['330 K', 'unreadable'],
    ['330 mm', 'unreadable'],
    ['-300 C', 'impossible'],
    ['3300 C', 'impossible'],
  ])('%j is refused as %s', (text, problem) => {
    expect(parseTemperature(text, 'C')).toEqual({ ok: false, problem });
  });
});

describe('lengths of time', () => {
  it.each([
    ['15', 's', 15],
    ['15', 'min', 900],
    ['15 s', 'min', 15],
    ['2.5 min', 's', 150],
    ['2,5 minutos', 's', 150],
    ['2,5min', 's', 150],
    ['2:30', 's', 150],
    ['2 h 15 min', 'min', 8100],
    ['2h15m', 'min', 8100],
    ['1 hora 30 min. 5 s', 'min', 5405],
    ['0', 's', 0],
  ] as const)('%s in %s is %d s', (text, unit, value) => {
    expect(parseDuration(text, unit)).toEqual({ ok: true, value });
  });

  it.each([
    ['', 'empty'],
    ['soon', 'unreadable'],
    ['-5', 'unreadable'],
    ['2:75', 'unreadable'],
    ['3 days', 'unreadable'],
    ['15 min 2 h', 'unreadable'],
    ['2 h 15', 'unreadable'],
    ['2 h 3 h', 'unreadable'],
    ['1 2', 'unreadable'],
    ['23 h 90 min', 'too-long'],
    ['25 h', 'too-long'],
  ])('%j is refused as %s', (text, problem) => {
    expect(parseDuration(text, 's')).toEqual({ ok: false, problem });
  });
});
