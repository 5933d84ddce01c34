import { describe, expect, it } from 'vitest';
import { fringeFinder } from '../../src/artwork/fringe';
import { mended } from '../../src/artwork/mend';
import { paint, smoothEdge } from './pixels';

const N = 120;
/** The mean of what is alike is taken for the design's colour. */
const ROUNDED = 4;
const INK = [30, 60, 90] as const;
const disc = smoothEdge((x, y) => Math.hypot(x - 60, y - 60) - 45);

/** A smoothed disc whose edge was mixed with a ground before that was cut away. */
const cut = (ground: number) =>
  paint(N, N, (x, y) => {
    const share = disc(x, y)[3] / 255;
    const [r, g, b] = INK.map((channel) => Math.round(channel * share + ground * (1 - share)));
    return [r ?? 0, g ?? 0, b ?? 0, share > 0.1 ? 255 : 0];
  }) as Uint8ClampedArray<ArrayBuffer>;

const clean = () => paint(N, N, (x, y) => [...INK, disc(x, y)[3]]) as Uint8ClampedArray<ArrayBuffer>;

function found(rgba: Uint8ClampedArray) {
  const finder = fringeFinder(N);
  for (let top = 0; top < N; top += 40) finder.add(rgba.subarray(4 * N * top, 4 * N * (top + 40)), 40);
  return finder.find();
}

const defringed = (rgba: Uint8ClampedArray<ArrayBuffer>, ground: '#ffffff' | '#000000') =>
  mended(
    { rgba, width: N, height: N },
    { kind: 'defringe', ground },
    { x: 0, y: 0, width: N, height: N },
    { x: 85, y: 85 },
  ).rgba;

describe('a fringe', () => {
  it('is found where edges were mixed with white or black, and not on clean ones', () => {
    expect(found(cut(255))).toMatchObject({ ground: '#ffffff' });
    expect(found(clean())).toBeNull();
    const light = paint(N, N, (x, y) => {
      const share = disc(x, y)[3] / 255;
      return [
        Math.round(220 * share),
        Math.round(210 * share),
        Math.round(60 * share),
        share > 0.1 ? 255 : 0,
      ];
    });
    expect(found(light)).toMatchObject({ ground: '#000000' });
  });

  it('is found along the upper and lower edges of what reaches from side to side', () => {
    const stripes = (of: number) =>
      paint(N, N, (_, y) => {
        const within = y % 40;
        if (within > 24) return [0, 0, 0, 0];
        return within < 1 || within > 23 ? [of, of, of, 255] : [...INK, 255];
      });
    expect(found(stripes(255))).toMatchObject({ ground: '#ffffff' });
    expect(found(stripes(INK[2]))).toBeNull();
  });

  it('is no outline that is wider, as stickers have', () => {
    const sticker = paint(N, N, (x, y) => {
      const r = Math.hypot(x - 60, y - 60);
      return r < 35 ? [...INK, 255] : r < 45 ? [255, 255, 255, 255] : [0, 0, 0, 0];
    });
    expect(found(sticker)).toBeNull();
  });

  it('is taken off: edges have the colour behind them, their share as alpha, and none is found any more', () => {
    const rgba = defringed(cut(255), '#ffffff');
    expect(found(rgba)).toBeNull();
    const original = clean();
    const most = { red: 0, alpha: 0 };
    for (let at = 0; at < rgba.length; at += 4) {
      const alpha = rgba[at + 3] as number;
      if (alpha > 0) most.red = Math.max(most.red, Math.abs((rgba[at] as number) - INK[0]));
      most.alpha = Math.max(most.alpha, Math.abs(alpha - (original[at + 3] as number)));
    }
    expect(most.red).toBeLessThanOrEqual(ROUNDED);
    // The cut lost what was fainter than a tenth, and a share above nine tenths counts as whole.
    expect(most.alpha).toBeLessThanOrEqual(28);
  });

  it('leaves a clean image as it was', () => {
    const opaque = (rgba: Uint8ClampedArray) => rgba.filter((_, at) => (rgba[at - (at % 4) + 3] ?? 0) > 0);
    expect(opaque(defringed(clean(), '#ffffff'))).toEqual(opaque(clean()));
  });
});
