/** An image with straight alpha, four bytes a pixel. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array;
}

export function paint(
  width: number,
  height: number,
  colour: (x: number, y: number) => readonly [number, number, number, number],
): Picture {
  const data = new Uint8Array(4 * width * height);
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) data.set(colour(x, y), 4 * (y * width + x));
  }
  return { width, height, data };
}

/** A copy on film, in micrometres. */
export interface FilmCopy {
  readonly transfer: string;
  readonly number: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly length: number;
  /** Quarter turns clockwise. */
  readonly quarters: number;
}

/** Keys' cubic convolution with a = -1/2 (IEEE Transactions on Acoustics, Speech and Signal Processing 29(6), 1981). */
function keys(distance: number): number {
  const x = Math.abs(distance);
  if (x <= 1) return 1.5 * x ** 3 - 2.5 * x ** 2 + 1;
  return x < 2 ? -0.5 * x ** 3 + 2.5 * x ** 2 - 4 * x + 2 : 0;
}

type Weight = readonly [at: number, weight: number];

/** The weights of the pixels along one side for one place, of a kernel as wide as the larger of the two pixels. */
function weightsFor(place: number, from: number, to: number): Weight[] {
  const ratio = from / to;
  const wide = Math.max(1, ratio);
  const raw = Array.from(
    { length: from },
    (_, at): Weight => [at, keys((at + 0.5 - (place + 0.5) * ratio) / wide)],
  );
  const sum = raw.reduce((total, [, weight]) => total + weight, 0);
  return raw.filter(([, weight]) => weight !== 0).map(([at, weight]) => [at, weight / sum]);
}

/** A picture at another size, by the definition: every pixel of the target from all pixels of the source. */
export function scaled(picture: Picture, width: number, height: number): Picture {
  if (picture.width === width && picture.height === height) return picture;
  const across = Array.from({ length: width }, (_, x) => weightsFor(x, picture.width, width));
  const down = Array.from({ length: height }, (_, y) => weightsFor(y, picture.height, height));
  const byte = (value: number) => Math.min(255, Math.max(0, Math.round(value)));
  return paint(width, height, (x, y) => {
    const sums = [0, 0, 0];
    let alpha = 0;
    for (const [row, vertical] of down[y] ?? []) {
      for (const [column, horizontal] of across[x] ?? []) {
        const at = 4 * (row * picture.width + column);
        const share = (picture.data[at + 3] ?? 0) * vertical * horizontal;
        alpha += share;
        for (let sample = 0; sample < 3; sample += 1) {
          sums[sample] = (sums[sample] ?? 0) + (picture.data[at + sample] ?? 0) * share;
        }
      }
    }
    const [red = 0, green = 0, blue = 0] = sums.map((sum) => byte(sum / alpha));
    return alpha < 0.5 ? [0, 0, 0, 0] : [red, green, blue, byte(alpha)];
  });
}

/** A picture turned by a quarter clockwise. */
export const quarter = ({ width, height, data }: Picture): Picture =>
  paint(height, width, (x, y) => {
    const at = 4 * ((height - 1 - x) * width + y);
    return [data[at] ?? 0, data[at + 1] ?? 0, data[at + 2] ?? 0, data[at + 3] ?? 0];
  });

const MICROMETRES_PER_INCH = 25_400;

/** Film with copies on it, put together pixel by pixel: what an image must show. */
export function composed(
  copies: readonly FilmCopy[],
  pictures: Readonly<Record<string, Picture>>,
  film: { readonly width: number; readonly length: number; readonly ppi: number },
): Picture {
  const pixels = (length: number) => Math.round((length * film.ppi) / MICROMETRES_PER_INCH);
  const [width, height] = [pixels(film.width), pixels(film.length)];
  const data = new Uint8Array(4 * width * height);
  for (const copy of copies) {
    const picture = pictures[copy.transfer];
    if (!picture) continue;
    const [wide, long] = [pixels(copy.width), pixels(copy.length)];
    const isAcross = copy.quarters % 2 === 1;
    const upright = isAcross ? scaled(picture, long, wide) : scaled(picture, wide, long);
    const lying = Array.from({ length: copy.quarters }).reduce<Picture>((turned) => quarter(turned), upright);
    for (let row = 0; row < long; row += 1) {
      const line = lying.data.subarray(4 * wide * row, 4 * wide * (row + 1));
      data.set(line, 4 * ((pixels(copy.y) + row) * width + pixels(copy.x)));
    }
  }
  return { width, height, data };
}

/** How far two images are apart: over pixels that are opaque in the first, and, weighed by alpha, over all. */
export function difference(a: Picture, b: Picture): { opaque: number; alpha: number; colour: number } {
  const most = { opaque: 0, alpha: 0, colour: 0 };
  for (let at = 0; at < a.data.length; at += 4) {
    const [alphaA, alphaB] = [a.data[at + 3] ?? 0, b.data[at + 3] ?? 0];
    most.alpha = Math.max(most.alpha, Math.abs(alphaA - alphaB));
    for (let sample = 0; sample < 3; sample += 1) {
      const [one, other] = [a.data[at + sample] ?? 0, b.data[at + sample] ?? 0];
      if (alphaA === 255) most.opaque = Math.max(most.opaque, Math.abs(one - other));
      most.colour = Math.max(most.colour, Math.abs(one * alphaA - other * alphaB) / 255);
    }
  }
  return most;
}
