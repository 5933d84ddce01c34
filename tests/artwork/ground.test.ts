import { describe, expect, it } from 'vitest';
import { knockOut, solidGround } from '../../src/artwork/ground';
import { allRound } from './edges';
import { paint } from './pixels';

const WHITE = [255, 255, 255, 255] as const;
const INK = [30, 60, 90, 255] as const;

describe('a solid ground', () => {
  const edge = allRound;

  it('is one opaque colour all around, with the noise that compression leaves', () => {
    const noisy = Array.from({ length: 400 }, (_, index) => [250 + (index % 6), 252, 249 + (index % 7), 255]);
    expect(solidGround(edge(noisy))).toEqual([252, 252, 252]);
  });

  it('is none where the edge is clear somewhere, or of many colours', () => {
    expect(solidGround(edge([...Array(99).fill(WHITE), [255, 255, 255, 0]]))).toBeNull();
    const ramp = Array.from({ length: 256 }, (_, index) => [index, index, index, 255]);
    expect(solidGround(edge(ramp))).toBeNull();
    expect(solidGround(edge([]))).toBeNull();
  });

  it('is one still where the design touches the edge here and there', () => {
    expect(solidGround(edge([...Array(95).fill(WHITE), ...Array(5).fill(INK)]))).toEqual([255, 255, 255]);
  });
});

describe('knocking out', () => {
  const n = 40;
  const white = { colour: '#ffffff', tolerance: 20 } as const;
  /** A smoothed ring of ink on white, with white inside. */
  const ring = () =>
    paint(n, n, (x, y) => {
      const r = Math.hypot(x - n / 2, y - n / 2);
      const share = Math.min(1, Math.max(0, Math.min(15.5 - r, r - 8.5)));
      return [0, 1, 2]
        .map((c) => Math.round(255 + ((INK[c] as number) - 255) * share))
        .concat(255) as unknown as typeof INK;
    });
  const alphaAt = (rgba: Uint8ClampedArray, x: number, y: number) => rgba[4 * (y * n + x) + 3];
  const out = (knock: Parameters<typeof knockOut>[3]) => {
    const rgba = ring();
    const count = knockOut(rgba, n, n, knock);
    return { rgba, count };
  };

  it('from the edge leaves what is enclosed', () => {
    const { rgba } = out({ ...white, reach: 'from-edge' });
    expect(alphaAt(rgba, 0, 0)).toBe(0);
    expect(alphaAt(rgba, 20, 20)).toBe(255);
    expect(alphaAt(rgba, 20, 8)).toBe(255);
  });

  it('everywhere takes the inside too, and more of it', () => {
    const { rgba, count } = out({ ...white, reach: 'everywhere' });
    expect(alphaAt(rgba, 20, 20)).toBe(0);
    expect(count).toBeGreaterThan(out({ ...white, reach: 'from-edge' }).count);
  });

  it('gives smoothed edges their share of ink, so that no pale rim is left', () => {
    const { rgba } = out({ ...white, reach: 'everywhere' });
    let partial = 0;
    for (let at = 0; at < rgba.length; at += 4) {
      const alpha = rgba[at + 3] as number;
      if (alpha === 0) continue;
      if (alpha < 255) partial += 1;
      // Everything that is left is the ink's colour, within the share that counts as whole.
      expect(rgba[at] as number).toBeLessThan(30 + 0.12 * 225);
    }
    expect(partial).toBeGreaterThan(20);
  });

  it('keeps cream in a clean image, also where it touches the ground, at the tolerance that is offered', () => {
    const rgba = paint(n, n, (x, y) => (x > 10 && x < 30 && y > 10 && y < 30 ? [255, 248, 236, 255] : WHITE));
    const count = knockOut(rgba, n, n, { ...white, tolerance: 8, reach: 'from-edge' });
    expect(count).toBe(n * n - 20 * 20);
    for (let y = 10; y < 30; y += 1) for (let x = 10; x < 30; x += 1) expect(alphaAt(rgba, x, y)).toBe(255);
  });

  it('takes more the more may differ, and nothing of another colour', () => {
    const counts = [0, 20, 80].map((tolerance) => out({ ...white, tolerance, reach: 'everywhere' }).count);
    expect(counts).toEqual([...counts].sort((a, b) => a - b));
    expect(new Set(counts).size).toBe(3);
    expect(out({ colour: '#00ff00', tolerance: 20, reach: 'everywhere' }).count).toBe(0);
  });
});
