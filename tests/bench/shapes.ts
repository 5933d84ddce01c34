import type { Limits } from '../../src/artwork';
import { startCheck } from '../../src/artwork/check';
import { fromMm } from '../../src/units';
import { printTable } from './table';

const limits: Limits = { stroke: fromMm(0.5), opening: fromMm(0.8), choke: fromMm(0), white: fromMm(0) };
const INCH = 25.4;
/** An image's side in millimetres, and its resolutions. */
const SIDE = 9;
const RESOLUTIONS = [150, 300, 600];
const ANGLES = 36;
/** Shares of the limit: those beyond a tenth of it are to be told apart. */
const SIZES = [0.5, 0.7, 0.8, 0.9, 1.1, 1.2, 1.3, 1.5];

/** A shape by the distance to its edge in millimetres, negative within it, about the middle of the image. */
type Shape = (x: number, y: number, size: number) => number;

const bar: Shape = (x, y, size) => Math.max(Math.abs(y) - size / 2, Math.abs(x) - 3);
const dot: Shape = (x, y, size) => Math.hypot(x, y) - size / 2;
const plate: Shape = (x, y) => Math.max(Math.abs(x), Math.abs(y)) - 4;
const block: Shape = (x, y) => Math.max(Math.abs(x + 2.6), Math.abs(y) - 2) - 1.2;
const box: Shape = (x, y, size) => Math.max(Math.abs(x), Math.abs(y)) - size / 2;

type Kind = 'strokes' | 'specks' | 'openings';

const shapes: readonly { readonly name: string; readonly kind: Kind; readonly at: Shape }[] = [
  { name: 'stroke', kind: 'strokes', at: bar },
  { name: 'stroke on a block', kind: 'strokes', at: (...p) => Math.min(bar(...p), block(...p)) },
  { name: 'round dot', kind: 'specks', at: dot },
  { name: 'square dot', kind: 'specks', at: box },
  { name: 'slit', kind: 'openings', at: (...p) => Math.max(plate(...p), -bar(...p)) },
  { name: 'round hole', kind: 'openings', at: (...p) => Math.max(plate(...p), -dot(...p)) },
];

/** How many of a kind the check finds in a shape, turned and moved by parts of a pixel. */
function found(ppi: number, { kind, at }: (typeof shapes)[number], size: number, turn: number, move: number) {
  const pixels = Math.round((SIDE * ppi) / INCH);
  const pixel = INCH / ppi;
  const rgba = new Uint8ClampedArray(4 * pixels * pixels);
  for (let row = 0; row < pixels; row += 1) {
    for (let column = 0; column < pixels; column += 1) {
      const x = (column + 0.5 + move) * pixel - SIDE / 2;
      const y = (row + 0.5 + 0.6 * move) * pixel - SIDE / 2;
      const [u, v] = [x * Math.cos(turn) + y * Math.sin(turn), y * Math.cos(turn) - x * Math.sin(turn)];
      rgba[4 * (row * pixels + column) + 3] = 255 * Math.min(1, Math.max(0, 0.5 - at(u, v, size) / pixel));
    }
  }
  const printed = { width: fromMm(pixels * pixel), height: fromMm(pixels * pixel) };
  const check = startCheck({ width: pixels, height: pixels }, printed, limits);
  check.add(rgba, 0, pixels);
  return check.finish(() => undefined)[kind].widths.length;
}

/** Strokes, dots, slits and holes around their limits at 36 angles and parts of a pixel: how many are missed, how many told by mistake. */
export function benchShapes(): void {
  const rows: string[][] = [];
  for (const shape of shapes) {
    const limit = (shape.kind === 'openings' ? limits.opening : limits.stroke) / 1000;
    for (const ppi of RESOLUTIONS) {
      const wrong = SIZES.map((share) => {
        let count = 0;
        for (let angle = 0; angle < ANGLES; angle += 1) {
          const is = found(ppi, shape, share * limit, (angle * Math.PI) / ANGLES, (angle * 0.37) % 1);
          if (is > 0 !== share < 1) count += 1;
        }
        return `${Math.round((1000 * count) / ANGLES) / 10}%`;
      });
      rows.push([shape.name, String(ppi), ...wrong]);
    }
  }
  printTable(
    'Shapes around their limits, told wrongly',
    ['shape', 'ppi', ...SIZES.map((share) => `${share} of the limit`)],
    rows,
  );
}
