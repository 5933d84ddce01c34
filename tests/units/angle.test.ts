import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { angleOf, degreesOf, mayLieAt, parseAngle, quartersIn, TURNINGS, turnedBy } from '../../src/units';

describe('an angle', () => {
  it.each([
    [0, 0],
    [-90, 270],
    [360, 0],
    [359.96, 0],
    [22.5, 22.5],
    [-0.04, 0],
    [725.25, 5.3],
  ])('of %f degrees is kept as %f', (degrees, kept) => {
    expect(degreesOf(angleOf(degrees))).toBe(kept);
  });

  it.each([
    ['30', 30],
    ['22,5°', 22.5],
    ['-15 deg', 345],
    ['−90', 270],
    ['7 1/2 degrees', 7.5],
    ['450', 90],
    ['45 grados', 45],
  ])('is read from “%s”', (text, degrees) => {
    expect(parseAngle(text)).toEqual({ ok: true, value: angleOf(degrees) });
  });

  it.each(['', '  ', 'a quarter', '30 mm', '1/0'])('is not read from “%s”', (text) => {
    expect(parseAngle(text).ok).toBe(false);
  });

  it('is in whole tenths within a whole turn, whatever it is turned by', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e4, max: 1e4, noNaN: true }),
        fc.double({ min: -1e4, max: 1e4, noNaN: true }),
        (degrees, more) => {
          const angle = turnedBy(angleOf(degrees), more);
          expect(Number.isInteger(angle) && !Object.is(angle, -0)).toBe(true);
          expect(angle).toBeGreaterThanOrEqual(0);
          expect(angle).toBeLessThan(3600);
        },
      ),
    );
  });

  it('tells its quarters', () => {
    expect([0, 90, 180, 270, 90.1].map((degrees) => quartersIn(angleOf(degrees)))).toEqual([
      0,
      1,
      2,
      3,
      null,
    ]);
  });

  it('is one that something may lie at by how far it may be turned', () => {
    const angles = [0, 45, 90, 180, 270];
    const allowed = TURNINGS.map((turning) =>
      angles.filter((degrees) => mayLieAt(turning, angleOf(degrees))),
    );
    expect(allowed).toEqual([[0], [0, 180], [0, 90, 180, 270], angles]);
  });
});
