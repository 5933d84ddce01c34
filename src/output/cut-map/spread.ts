/** Where something would like to begin, and how much room it takes. */
interface Wanted {
  readonly at: number;
  readonly height: number;
}

/**
 * Where labels begin so that none covers another: each where it wants to be, or the least further down,
 * or up where the end of the room is near. Their order is kept.
 * @param wanted by `at`, ascending; together no higher than the room
 */
export function spread(wanted: readonly Wanted[], from: number, to: number): number[] {
  const begins: number[] = [];
  let free = from;
  for (const { at, height } of wanted) {
    const begin = Math.max(at, free);
    begins.push(begin);
    free = begin + height;
  }
  let end = to;
  return begins
    .toReversed()
    .map((begin, index) => {
      end = Math.min(begin, end - (wanted[wanted.length - 1 - index]?.height ?? 0));
      return end;
    })
    .toReversed();
}
