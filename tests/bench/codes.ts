import readByOther from 'jsqr';
import { readFrame } from '../../src/hand-over/decode';
import { codeOf, type Density, modulesOf } from '../hand-over/codes';
import { photograph, pixelsOf, type Shot, STILL } from '../hand-over/photograph';
import { printTable } from './table';

/** The square that is read of a camera of 1920 by 1080 pixels. */
const SIDE = 1080;
const SEEDS = 3;

const SHOTS: readonly (readonly [string, Partial<Shot>])[] = [
  ['still, 80% of the square', {}],
  ['45% of it', { fill: 0.45 }],
  ['35% of it', { fill: 0.35 }],
  ['aslant by 30 and 15 degrees', { fill: 0.6, yaw: 30, pitch: 15 }],
  ['aslant by 40 and 15 degrees', { fill: 0.6, yaw: 40, pitch: 15 }],
  ['turned by 30 degrees', { fill: 0.6, roll: 30 }],
  ['turned by 45 degrees', { fill: 0.6, roll: 45 }],
  ['blur of 2 px', { fill: 0.6, blur: 2 }],
  ['blur of 3 px', { fill: 0.6, blur: 3 }],
  ['noise of 25 levels', { fill: 0.6, noise: 25 }],
  ['noise of 40 levels', { fill: 0.6, noise: 40 }],
  ['dim', { fill: 0.6, light: [0.12, 0.08], glare: [0.03, 0.06], noise: 8 }],
  ['lamp in the screen', { fill: 0.6, light: [0.5, 0.4], glare: [0.02, 0.5] }],
  [
    'in a hand',
    {
      fill: 0.6,
      yaw: 18,
      pitch: -12,
      roll: 8,
      blur: 1.4,
      noise: 8,
      light: [0.8, 0.5],
      glare: [0.02, 0.15],
    },
  ],
];

/** Reads codes as a camera sees them, each shot a little otherwise each time, and prints how many were read in what time. */
export function benchCodes(): void {
  const readers = {
    own: (pixels: ReturnType<typeof pixelsOf>) => readFrame(pixels),
    other: ({ data, width, height }: ReturnType<typeof pixelsOf>) =>
      readByOther(data, width, height, { inversionAttempts: 'dontInvert' })?.data ?? null,
  };
  const rows = SHOTS.flatMap(([name, shot]) =>
    (['usual', 'dense'] satisfies Density[]).map((density) => {
      const text = codeOf(density);
      const frames = Array.from({ length: SEEDS }, (_, seed) => {
        const by = seed - (SEEDS - 1) / 2;
        const base = { ...STILL, width: SIDE, height: SIDE, ...shot };
        const held = {
          yaw: base.yaw + by,
          roll: base.roll + 1.7 * by,
          off: [0.013 * by, 0.011 * by],
        } as const;
        return pixelsOf(photograph(modulesOf(text), { ...base, ...held }, seed));
      });
      const told = Object.values(readers).flatMap((read) => {
        const from = performance.now();
        const count = frames.filter((pixels) => read(pixels) === text).length;
        return [`${count} of ${SEEDS}`, `${((performance.now() - from) / SEEDS).toFixed(0)} ms`];
      });
      return [name, modulesOf(text).length - 8, ...told];
    }),
  );
  printTable(
    `Codes in a camera's square of ${SIDE} px, ${SEEDS} frames each`,
    ['shot', 'modules', 'read', 'a frame', 'read by jsqr', 'a frame'],
    rows,
  );
}
