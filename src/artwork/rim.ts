import { colourAt, differenceAt, luma, type Rgb } from './colour';

/** A walk inwards ends where colours come nearer to the ground again by so much. */
const TURNS = 12;
/** Pixels beside the design's own colour that differ from it by no more are of it, noise of compression and all. */
const ALIKE = 24;
/** Ground and design must differ by so much in luma for shares to be told by it. */
const CLEAR = 40;
/** A pixel whose share is above this is the design itself, one below that is noise in the ground. */
const WHOLE = 0.9;
const NOTHING = 0.06;
const OPAQUE = 250;

interface Image {
  readonly rgba: Uint8ClampedArray;
  readonly width: number;
  readonly height: number;
}

/** The pixels beside one, at corners too. */
function around(at: number, { width, height }: Image): number[] {
  const x = at % width;
  const y = (at - x) / width;
  if (x > 0 && y > 0 && x < width - 1 && y < height - 1) {
    const [up, down] = [at - width, at + width];
    return [up - 1, up, up + 1, at - 1, at + 1, down - 1, down, down + 1];
  }
  const found: number[] = [];
  for (let down = Math.max(0, y - 1); down <= Math.min(height - 1, y + 1); down += 1) {
    for (let over = Math.max(0, x - 1); over <= Math.min(width - 1, x + 1); over += 1) {
      const other = down * width + over;
      if (other !== at) found.push(other);
    }
  }
  return found;
}

/** Whether any pixel beside one is marked; asked of every pixel, and so without a list of them. */
function touches(marked: Uint8Array, at: number, { width, height }: Image): boolean {
  const [x, y] = [at % width, Math.floor(at / width)];
  const [first, last] = [Math.max(0, x - 1), Math.min(width - 1, x + 1)];
  for (let row = Math.max(0, y - 1); row <= Math.min(height - 1, y + 1); row += 1) {
    for (let other = row * width + first; other <= row * width + last; other += 1) {
      if (marked[other] === 1) return true;
    }
  }
  return false;
}

/** How much of a pixel is the design: its place between the colours of ground and design. */
function shareOf(own: Rgb, ground: Rgb, design: Rgb): number {
  const span = luma(design) - luma(ground);
  if (Math.abs(span) >= CLEAR) return (luma(own) - luma(ground)) / span;
  const way = design.map((channel, index) => channel - (ground[index] as number));
  const along = way.reduce(
    (sum, step, index) => sum + step * ((own[index] as number) - (ground[index] as number)),
    0,
  );
  return (
    along /
    Math.max(
      1,
      way.reduce((sum, step) => sum + step * step, 0),
    )
  );
}

/**
 * Unmixes a ground from the pixels beside it, in place. Smoothing left mixtures of ground and design there, and compression with
 * halved chroma (4:2:0) washed colours out further in. A pixel's design is what a walk inwards meets before colours come nearer to
 * the ground again; its share becomes alpha, and no channel stays nearer to the ground than in the design (compositing solved
 * for the foreground: T. Porter and T. Duff, "Compositing digital images", 1984; A. R. Smith and J. F. Blinn, "Blue screen
 * matting", 1996).
 * @param out 1 where a pixel was taken out, or is clear
 * @param reach how many pixels inwards
 */
export function unmixRim(image: Image, out: Uint8Array, ground: Rgb, reach: number): void {
  const { rgba } = image;
  /** How far each pixel of the rim lies from what is out; 0 for what is out, and for all that lies deeper. */
  const depths = new Uint8Array(out.length);
  const rim: number[] = [];
  let front: number[] = [];
  const put = (at: number, depth: number, into: number[]) => {
    depths[at] = depth;
    into.push(at);
    rim.push(at);
  };
  for (let at = 0; at < out.length; at += 1) {
    if (out[at] === 0 && touches(out, at, image)) put(at, 1, front);
  }
  for (let depth = 2; depth <= reach; depth += 1) {
    const next: number[] = [];
    for (const at of front) {
      for (const other of around(at, image)) {
        if (out[other] === 0 && depths[other] === 0) put(other, depth, next);
      }
    }
    front = next;
  }

  const isDeeper = (other: number, than: number) =>
    out[other] === 0 && (depths[other] === 0 || (depths[other] as number) > than);
  const apart = (at: number) => differenceAt(rgba, at, ground);

  /** The design beside a pixel: the mean of what is like the place that differs most from the ground on the way inwards. */
  const designAt = (start: number): Rgb => {
    let [at, best, most] = [start, start, apart(start)];
    for (let depth = depths[start] as number; depth > 0; depth = depths[at] as number) {
      let [next, farthest] = [-1, -1];
      for (const other of around(at, image)) {
        if (!isDeeper(other, depth)) continue;
        const far = apart(other);
        if (far > farthest) [next, farthest] = [other, far];
      }
      if (next < 0 || farthest < most - TURNS) break;
      if (farthest > most) [best, most] = [next, farthest];
      at = next;
    }
    const own = colourAt(rgba, best);
    const alike = [best, ...around(best, image)].filter(
      (other) => out[other] === 0 && differenceAt(rgba, other, own) <= ALIKE,
    );
    const mean = (channel: 0 | 1 | 2) =>
      alike.reduce((sum, other) => sum + (rgba[4 * other + channel] as number), 0) / alike.length;
    return [mean(0), mean(1), mean(2)];
  };

  // All are told before any is changed: each looks at those beside it.
  const clean = new Uint8ClampedArray(4 * rim.length);
  for (const [index, at] of rim.entries()) {
    const own = colourAt(rgba, at);
    const design = designAt(at);
    const share = shareOf(own, ground, design);
    const alpha = rgba[4 * at + 3] as number;
    for (let channel = 0; channel < 3; channel += 1) {
      const [told, pure] = [own[channel] as number, design[channel] as number];
      const held = (ground[channel] as number) >= pure ? Math.min(told, pure) : Math.max(told, pure);
      clean[4 * index + channel] = share < WHOLE ? pure : held;
    }
    // One that is see-through has its share as alpha already.
    const left = share >= WHOLE ? 1 : share < NOTHING ? 0 : share;
    clean[4 * index + 3] = alpha < OPAQUE && left > 0 ? alpha : Math.round(alpha * left);
  }
  for (const [index, at] of rim.entries()) {
    const isLeft = clean[4 * index + 3] !== 0;
    for (let channel = 0; channel < 4; channel += 1)
      rgba[4 * at + channel] = isLeft ? (clean[4 * index + channel] as number) : 0;
  }
}
