/** How many items there are of each key; those without one are not counted. */
export function countBy<Item, Key>(
  items: Iterable<Item>,
  keyOf: (item: Item) => Key | null | undefined,
): Map<Key, number> {
  const counts = new Map<Key, number>();
  for (const item of items) {
    const key = keyOf(item);
    if (key !== null && key !== undefined) counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  return counts;
}
