import readByOther from 'jsqr';
import { encodeQR } from 'qr';
import { describe, expect, it } from 'vitest';
import { readFrame } from '../../src/hand-over/decode';
import { codeOf, type Density, modulesOf } from './codes';
import { photograph, pixelsOf, type Shot, STILL } from './photograph';

/** What a hand, a lens and a room do to a code on a screen. */
const SHOTS: readonly (readonly [string, Density, Partial<Shot>])[] = [
  ['still, filling most of it', 'usual', {}],
  ['from further away', 'usual', { fill: 0.5 }],
  ['held aslant', 'usual', { yaw: 25, pitch: -15, roll: 12 }],
  ['held aslant, a dense one', 'dense', { yaw: 18, pitch: 10, roll: -8 }],
  ['not sharp', 'usual', { blur: 1.6 }],
  ['with much noise', 'usual', { noise: 25 }],
  ['on a dim screen', 'usual', { light: [0.12, 0.08], glare: [0.03, 0.06], noise: 6 }],
  ['with a lamp in the screen', 'usual', { light: [0.5, 0.4], glare: [0.02, 0.5] }],
  [
    'as it comes',
    'dense',
    {
      fill: 0.75,
      yaw: 14,
      pitch: -10,
      roll: 6,
      blur: 1,
      noise: 8,
      light: [0.8, 0.45],
      glare: [0.02, 0.15],
    },
  ],
];

describe('a frame of a camera', () => {
  it.each(SHOTS)('is read %s (%s)', (_, density, shot) => {
    const text = codeOf(density);
    const frame = photograph(modulesOf(text), { ...STILL, ...shot }, 1);
    expect(readFrame(pixelsOf(frame))).toBe(text);
  });

  it('shows a code that an independent decoder reads, too', () => {
    const text = codeOf('usual');
    const { width, height, data } = pixelsOf(photograph(modulesOf(text), { ...STILL, yaw: 5, roll: 3 }, 2));
    expect(readByOther(data, width, height)?.data).toBe(text);
  });

  it('gives nothing where no code is whole', () => {
    const modules = modulesOf(codeOf('usual'));
    const cut = modules.map((row, y) => row.map((dark, x) => dark && x + y > modules.length / 2));
    expect(readFrame(pixelsOf(photograph(cut, STILL, 3)))).toBeNull();
    expect(readFrame(pixelsOf(photograph([[false]], STILL, 4)))).toBeNull();
  });

  it('gives the text of any other code as it is', () => {
    const modules = encodeQR('https://example.org', 'raw', { border: 4 });
    expect(readFrame(pixelsOf(photograph(modules, STILL, 5)))).toBe('https://example.org');
  });
});
