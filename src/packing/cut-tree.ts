import type { Rect } from './rules';

/** How a film is taken apart by straight cuts: a copy, or cuts from edge to edge and what lies between them. */
export type CutTree =
  | { readonly kind: 'copy'; readonly copy: number }
  | {
      readonly kind: 'cut';
      /** `across` the film, or `along` it. */
      readonly axis: 'across' | 'along';
      /** Where each cut lies, ascending; one fewer than there are parts. */
      readonly at: readonly number[];
      readonly parts: readonly CutTree[];
    };

interface Indexed extends Rect {
  readonly index: number;
}

/** Groups of copies that lines of one direction part, and where the lines lie: in the middle of the gaps. */
function parted(copies: readonly Indexed[], axis: 'across' | 'along'): { groups: Indexed[][]; at: number[] } {
  const from = (copy: Rect) => (axis === 'across' ? copy.y : copy.x);
  const to = (copy: Rect) => (axis === 'across' ? copy.y + copy.length : copy.x + copy.width);
  const groups: Indexed[][] = [];
  const at: number[] = [];
  let reached = Number.NEGATIVE_INFINITY;
  for (const copy of copies.toSorted((a, b) => from(a) - from(b))) {
    const group = groups.at(-1);
    if (group && from(copy) < reached) group.push(copy);
    else {
      if (group) at.push((reached + from(copy)) / 2);
      groups.push([copy]);
    }
    reached = Math.max(reached, to(copy));
  }
  return { groups, at };
}

function treeOf(copies: readonly Indexed[], axis: 'across' | 'along', stuck: boolean): CutTree | null {
  const [only] = copies;
  if (!only) return null;
  if (copies.length === 1) return { kind: 'copy', copy: only.index };
  const { groups, at } = parted(copies, axis);
  const other = axis === 'across' ? 'along' : 'across';
  if (groups.length === 1) return stuck ? null : treeOf(copies, other, true);
  const parts: CutTree[] = [];
  for (const group of groups) {
    const part = treeOf(group, other, false);
    if (!part) return null;
    parts.push(part);
  }
  return { kind: 'cut', axis, at, parts };
}

/**
 * Takes a layout apart by cuts from edge to edge (guillotine cuts in the literature), first across the film. Works from where
 * the copies lie alone.
 * @returns `null` if straight cuts alone cannot part the copies, or if there are none
 */
export const cutTree = (copies: readonly Rect[]): CutTree | null =>
  treeOf(
    copies.map((copy, index) => ({ ...copy, index })),
    'across',
    false,
  );

/** How often the direction of the cuts changes on the way to the copy that is parted last, and one for the first direction. */
export const cutStages = (tree: CutTree): number =>
  tree.kind === 'copy' ? 0 : 1 + Math.max(...tree.parts.map(cutStages));

/** How many cuts a tree takes. */
export const cutCount = (tree: CutTree): number =>
  tree.kind === 'copy' ? 0 : tree.at.length + tree.parts.reduce((sum, part) => sum + cutCount(part), 0);
