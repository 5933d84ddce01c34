/** A block that flows over pages, as it was measured. */
export interface PageBlock {
  readonly height: number;
  /** A row of the table, whose heading is repeated on every page that begins with one. */
  readonly inTable: boolean;
  /** Stays on the page of the block before it. */
  readonly withBefore: boolean;
}

/** What a page has room for, in the unit of the blocks. */
export interface PageSpace {
  readonly first: number;
  readonly later: number;
  /** Of the table's heading. */
  readonly heading: number;
}

/** Blocks that stay together, by where they begin and how high they are. */
function groupsOf(blocks: readonly PageBlock[], { later, heading }: PageSpace) {
  const groups: { from: number; height: number; inTable: boolean }[] = [];
  for (const [index, { height, inTable, withBefore }] of blocks.entries()) {
    const last = groups.at(-1);
    // What does not fit a page together is parted all the same.
    if (withBefore && last && last.height + height + (last.inTable ? heading : 0) <= later) {
      last.height += height;
    } else groups.push({ from: index, height, inTable });
  }
  return groups;
}

/**
 * Puts blocks on pages in their order, none of them cut in two unless it is higher than a page.
 * @returns where each page begins, as an index of the blocks; at least one page
 */
export function pagesOf(blocks: readonly PageBlock[], room: PageSpace): number[] {
  const starts = [0];
  let left = room.first;
  for (const [index, { from, height, inTable }] of groupsOf(blocks, room).entries()) {
    const isFirst = index === 0;
    if (!isFirst && height > left) {
      starts.push(from);
      left = room.later;
    }
    const beginsPage = isFirst || starts.at(-1) === from;
    left -= height + (beginsPage && inTable ? room.heading : 0);
  }
  return starts;
}
