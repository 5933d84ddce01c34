/** The pixels along the four edges of an image, four bytes each. */
export interface EdgeLines {
  readonly top: readonly number[];
  readonly bottom: readonly number[];
  readonly left: readonly number[];
  readonly right: readonly number[];
}

/** Takes the edges of an image that comes in strips. */
export function edgeTaker({ width, height }: { readonly width: number; readonly height: number }) {
  const lines = { top: [] as number[], bottom: [] as number[], left: [] as number[], right: [] as number[] };
  const take = (rgba: Uint8ClampedArray, from: number, to: number, into: number[]) => {
    for (let at = from; at < to; at += 1) into.push(rgba[at] as number);
  };
  return {
    lines: lines as EdgeLines,
    add(rgba: Uint8ClampedArray, top: number, rows: number): void {
      const row = 4 * width;
      if (top === 0) take(rgba, 0, row, lines.top);
      if (top + rows === height) take(rgba, (rows - 1) * row, rows * row, lines.bottom);
      for (let y = 0; y < rows; y += 1) {
        take(rgba, y * row, y * row + 4, lines.left);
        take(rgba, (y + 1) * row - 4, (y + 1) * row, lines.right);
      }
    },
  };
}
