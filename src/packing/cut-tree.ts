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

/** Across the film, along it, and across again. */
export const STAGES = 3;

/**
 * What cuts from edge to edge do not part, first across the film, then along it, and on in turns.
 * @param stages how many directions of cuts there are
 * @returns groups of two copies or more, by index, that stay together; none, if every copy is parted from all others
 */
export function unparted(copies: readonly Rect[], stages = Number.POSITIVE_INFINITY): number[][] {
  const found: number[][] = [];
  const part = (group: readonly Indexed[], axis: 'across' | 'along', left: number, stuck: boolean): void => {
    if (group.length < 2) return;
    const { groups } = left > 0 ? parted(group, axis) : { groups: [group] };
    if (groups.length === 1 && (stuck || left <= 1)) found.push(group.map(({ index }) => index));
    else {
      for (const each of groups) {
        part(each, axis === 'across' ? 'along' : 'across', left - 1, groups.length === 1);
      }
    }
  };
  part(
    copies.map((copy, index) => ({ ...copy, index })),
    'across',
    stages,
    false,
  );
  return found;
}

/** How many cuts a tree takes. */
export const cutCount = (tree: CutTree): number =>
  tree.kind === 'copy' ? 0 : tree.at.length + tree.parts.reduce((sum, part) => sum + cutCount(part), 0);
