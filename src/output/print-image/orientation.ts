/**
 * How an upright picture lies in the image: turned clockwise by quarters, then half round, then mirrored from side to
 * side. All are permutations of pixels, so no colour changes by them.
 */
export interface Orientation {
  readonly quarters: 0 | 1 | 2 | 3;
  readonly half: boolean;
  readonly mirrored: boolean;
}

export interface PixelSize {
  readonly width: number;
  readonly height: number;
}

export const laidSize = (
  { width, height }: PixelSize,
  { quarters }: Pick<Orientation, 'quarters'>,
): PixelSize => (quarters % 2 === 1 ? { width: height, height: width } : { width, height });

/** Which pixel of the upright picture lies at a place of the laid one, as `first + x * across + y * down`. */
function walk({ width, height }: PixelSize, { quarters, half, mirrored }: Orientation) {
  const laid = laidSize({ width, height }, { quarters });
  // Two quarter turns are half a turn, and two of these none.
  const isRound = half !== quarters >= 2;
  const isTurned = quarters % 2 === 1;
  const indexAt = (x: number, y: number): number => {
    const flipped = mirrored !== isRound;
    const across = flipped ? laid.width - 1 - x : x;
    const down = isRound ? laid.height - 1 - y : y;
    return isTurned ? (laid.width - 1 - across) * width + down : down * width + across;
  };
  const first = indexAt(0, 0);
  return { laid, first, across: indexAt(1, 0) - first, down: indexAt(0, 1) - first };
}

/**
 * The pixels of an upright picture as they lie in the image.
 * @param pixels one number a pixel, row by row; handed back as they are where nothing moves
 */
export function orient(
  pixels: Uint32Array<ArrayBuffer>,
  size: PixelSize,
  orientation: Orientation,
): Uint32Array<ArrayBuffer> {
  if (orientation.quarters === 0 && !orientation.half && !orientation.mirrored) return pixels;
  const { laid, first, across, down } = walk(size, orientation);
  const moved = new Uint32Array(pixels.length);
  let to = 0;
  for (let y = 0; y < laid.height; y += 1) {
    let from = first + y * down;
    for (let x = 0; x < laid.width; x += 1) {
      moved[to] = pixels[from] as number;
      to += 1;
      from += across;
    }
  }
  return moved;
}
