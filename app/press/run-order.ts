/**
 * A list with some of its items before or behind another one; all others keep their order.
 * @param moved items of the list, in whatever order
 */
export function movedTo<Item>(
  items: readonly Item[],
  moved: ReadonlySet<Item>,
  target: Item,
  position: 'before' | 'after',
): Item[] {
  if (moved.has(target)) return [...items];
  const own = items.filter((item) => moved.has(item));
  return items.flatMap((item) => {
    if (moved.has(item)) return [];
    if (item !== target) return [item];
    return position === 'before' ? [...own, item] : [item, ...own];
  });
}
