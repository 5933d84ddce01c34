/** A label along a line: where its middle would best be, and how much of the line it takes. */
export interface Label {
  readonly at: number;
  readonly size: number;
}

/**
 * Sets labels along a line so that none overlaps another, each as near to its place as the others let it, in the order of their places.
 * Where there is no room for all of them the last of the list are left out.
 * @param gap between two labels
 * @returns the middle of each label, in the order given; `null` for one that is left out
 */
export function spread(
  labels: readonly Label[],
  { from, to }: { readonly from: number; readonly to: number },
  gap: number,
): (number | null)[] {
  let room = to - from + gap;
  const shown = labels
    .map((label, index) => ({ ...label, index }))
    .filter(({ size }) => {
      const fits = size + gap <= room;
      if (fits) room -= size + gap;
      return fits;
    })
    .toSorted((a, b) => a.at - b.at || a.index - b.index);
  // Forward each label is kept off the one before it, backward off the end of the line.
  const starts: number[] = [];
  let free = from;
  for (const { at, size } of shown) {
    starts.push(Math.max(free, at - size / 2));
    free = (starts.at(-1) ?? free) + size + gap;
  }
  let end = to;
  for (const [position, { size }] of [...shown.entries()].toReversed()) {
    starts[position] = Math.min(starts[position] ?? from, end - size);
    end = (starts[position] ?? from) - gap;
  }
  const middles: (number | null)[] = labels.map(() => null);
  for (const [position, { index, size }] of shown.entries())
    middles[index] = (starts[position] ?? from) + size / 2;
  return middles;
}
