import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromMass, fromVolume, parseMass, parseVolume, toMass, toVolume } from '../../src/units';

describe('volumes and masses', () => {
  // 1 US fl oz = 29.573 529 562 5 ml, 1 lb = 453.592 37 g, 1 oz = 28.349 523 125 g: NIST SP 811, appendix B.
  it.each([
    ['120 ml', 120_000],
    ['1,5 l', 1_500_000],
    ['4 fl oz', 118_294],
    ['33.814 fl oz', 999_999],
    ['80', 80_000],
    ['.5 ml', 500],
    ['2 litros', 2_000_000],
  ])('reads the volume %s', (text, expected) => {
    expect(parseVolume(text, 'ml')).toEqual({ ok: true, value: expected });
  });

  it.each([
    ['350 g', 350_000],
    ['1,2 kg', 1_200_000],
    ['2 1/2 lb', 1_133_981],
    ['16 oz', 453_592],
    ['7', 7_000],
  ])('reads the mass %s', (text, expected) => {
    expect(parseMass(text, 'g')).toEqual({ ok: true, value: expected });
  });

  it.each([
    ['', 'empty'],
    ['much', 'unreadable'],
    ['12 mm', 'unreadable'],
    ['-3 ml', 'negative'],
    ['10001 l', 'too-much'],
  ])('says why "%s" is no volume', (text, problem) => {
    expect(parseVolume(text, 'ml')).toEqual({ ok: false, problem });
  });

  it('keeps what was typed to the last whole unit', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 9_999_999 }), (amount) => {
        const [volume, mass] = [parseVolume(`${amount / 1000}`, 'ml'), parseMass(`${amount / 1000} g`, 'kg')];
        expect(volume).toEqual({ ok: true, value: amount });
        expect(mass).toEqual({ ok: true, value: amount });
        expect(fromVolume(toVolume(fromVolume(amount, 'ml'), 'fl oz'), 'fl oz')).toBe(amount * 1000);
        expect(fromMass(toMass(fromMass(amount, 'g'), 'lb'), 'lb')).toBe(amount * 1000);
      }),
    );
  });
});
