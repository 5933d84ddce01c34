import type { PixelSize } from './orientation';

/** For each place along one side of the target: where its part of the source begins, and the share of each pixel there. */
interface Taps {
  readonly first: Int32Array;
  readonly counts: Int32Array;
  readonly weights: Float32Array;
  /** Weights kept for one place. */
  readonly most: number;
}

/**
 * The cubic convolution kernel with a = -1/2: R. G. Keys, IEEE Transactions on Acoustics, Speech and Signal Processing
 * 29(6), 1153-1160, 1981. Its negative lobe sharpens; having one only, it leaves no faint ring outside of an edge,
 * which would take powder.
 */
export function cubic(distance: number): number {
  const x = Math.abs(distance);
  if (x < 1) return (1.5 * x - 2.5) * x * x + 1;
  if (x < 2) return ((-0.5 * x + 2.5) * x - 4) * x + 2;
  return 0;
}

const REACH = 2;

/** Where an image is made smaller, the kernel is as wide as the target's pixels; beyond the edges there is nothing. */
function tapsOf(from: number, to: number): Taps {
  const ratio = from / to;
  const stretch = Math.max(1, ratio);
  const most = Math.ceil(2 * REACH * stretch) + 1;
  const taps = {
    first: new Int32Array(to),
    counts: new Int32Array(to),
    weights: new Float32Array(to * most),
    most,
  };
  for (let place = 0; place < to; place += 1) {
    const centre = (place + 0.5) * ratio - 0.5;
    const first = Math.max(0, Math.ceil(centre - REACH * stretch));
    const last = Math.min(from - 1, Math.floor(centre + REACH * stretch));
    let sum = 0;
    for (let at = first; at <= last; at += 1) {
      const weight = cubic((at - centre) / stretch);
      taps.weights[place * most + at - first] = weight;
      sum += weight;
    }
    for (let index = 0; index <= last - first; index += 1) {
      (taps.weights[place * most + index] as number) /= sum;
    }
    taps.first[place] = first;
    taps.counts[place] = last - first + 1;
  }
  return taps;
}

/** One row of the source at the target's width, premultiplied: four numbers a pixel. */
function acrossRow(row: Uint8ClampedArray, scratch: Float32Array, taps: Taps, out: Float32Array): void {
  for (let at = 0; at < scratch.length; at += 4) {
    const alpha = row[at + 3] as number;
    const share = alpha / 255;
    scratch[at] = (row[at] as number) * share;
    scratch[at + 1] = (row[at + 1] as number) * share;
    scratch[at + 2] = (row[at + 2] as number) * share;
    scratch[at + 3] = alpha;
  }
  const { first, counts, weights, most } = taps;
  for (let x = 0; x < first.length; x += 1) {
    let [red, green, blue, alpha] = [0, 0, 0, 0];
    let from = 4 * (first[x] as number);
    const begin = x * most;
    const end = begin + (counts[x] as number);
    for (let index = begin; index < end; index += 1) {
      const weight = weights[index] as number;
      red += weight * (scratch[from] as number);
      green += weight * (scratch[from + 1] as number);
      blue += weight * (scratch[from + 2] as number);
      alpha += weight * (scratch[from + 3] as number);
      from += 4;
    }
    const to = 4 * x;
    out[to] = red;
    out[to + 1] = green;
    out[to + 2] = blue;
    out[to + 3] = alpha;
  }
}

/** A picture that is made from rows, handed in from the top. */
export interface Resampler {
  /** Takes the next row of the source, four bytes a pixel. */
  push(row: Uint8ClampedArray): void;
  /** The picture, RGBA as one number a pixel in the machine's order, once all rows are in. */
  finish(): Uint32Array<ArrayBuffer>;
}

/**
 * Brings a picture with straight alpha to another size, row by row, so that a large source is never held whole. Colours are
 * weighed by their alpha; where nothing is left of it, a pixel is all zeros. At its own size a picture is handed on as it is.
 */
export function createResampler(from: PixelSize, to: PixelSize): Resampler {
  const bytes = new Uint8ClampedArray(4 * to.width * to.height);
  const finish = () => new Uint32Array(bytes.buffer);
  let taken = 0;
  if (from.width === to.width && from.height === to.height) {
    return {
      push(row) {
        bytes.set(row, 4 * to.width * taken);
        const [begin, end] = [4 * to.width * taken, 4 * to.width * (taken + 1)];
        for (let at = begin; at < end; at += 4) if (bytes[at + 3] === 0) bytes.fill(0, at, at + 3);
        taken += 1;
      },
      finish,
    };
  }
  const across = tapsOf(from.width, to.width);
  const down = tapsOf(from.height, to.height);
  const scratch = new Float32Array(4 * from.width);
  const kept = Array.from({ length: down.most }, () => new Float32Array(4 * to.width));
  const sums = new Float32Array(4 * to.width);
  let made = 0;

  const makeRow = (): void => {
    const first = down.first[made] as number;
    const count = down.counts[made] as number;
    const rowAt = (index: number) => kept[(first + Math.min(index, count - 1)) % down.most] as Float32Array;
    const weightAt = (index: number) =>
      index < count ? (down.weights[made * down.most + index] as number) : 0;
    sums.fill(0);
    // Four rows at a time: most of the work of an image that is enlarged is done here.
    for (let index = 0; index < count; index += 4) {
      const [a, b, c, d] = [rowAt(index), rowAt(index + 1), rowAt(index + 2), rowAt(index + 3)];
      const [p, q] = [weightAt(index), weightAt(index + 1)];
      const [r, t] = [weightAt(index + 2), weightAt(index + 3)];
      for (let at = 0; at < sums.length; at += 1) {
        (sums[at] as number) +=
          p * (a[at] as number) + q * (b[at] as number) + r * (c[at] as number) + t * (d[at] as number);
      }
    }
    let out = 4 * to.width * made;
    for (let at = 0; at < sums.length; at += 4) {
      const alpha = sums[at + 3] as number;
      if (alpha >= 0.5) {
        const share = 255 / alpha;
        bytes[out] = (sums[at] as number) * share;
        bytes[out + 1] = (sums[at + 1] as number) * share;
        bytes[out + 2] = (sums[at + 2] as number) * share;
        bytes[out + 3] = alpha;
      }
      out += 4;
    }
    made += 1;
  };

  return {
    push(row) {
      acrossRow(row, scratch, across, kept[taken % down.most] as Float32Array);
      taken += 1;
      while (made < to.height && (down.first[made] as number) + (down.counts[made] as number) <= taken)
        makeRow();
    },
    finish,
  };
}
