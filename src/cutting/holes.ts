import type { LaidCopy } from '../layout';
import { boxRing, contains, isOuter, type Ring } from '../outlines';

type Placed = Pick<LaidCopy, 'x' | 'y' | 'width' | 'length' | 'outline'>;

/** Whether a copy lies within a line, which it does not cross. */
export function liesWithin(
  copy: Placed,
  line: Ring,
  { x, y }: { readonly x: number; readonly y: number },
): boolean {
  const [ring = boxRing(copy)] = copy.outline ?? [];
  return contains({ rings: [line], x, y }, copy.x + (ring[0] as number), copy.y + (ring[1] as number));
}

/** The holes of a copy that others lie in. */
const bearing = (copy: Placed, copies: readonly Placed[]): Ring[] =>
  (copy.outline ?? []).filter(
    (line) => !isOuter(line) && copies.some((other) => other !== copy && liesWithin(other, line, copy)),
  );

/**
 * The lines along which a copy is cut out, from its corner on: around it, and around those of its holes that others lie in. A hole that bears
 * nothing stays as it is.
 */
export const cutAround = (copy: Placed, copies: readonly Placed[]): readonly Ring[] =>
  copy.outline ? [...copy.outline.filter(isOuter), ...bearing(copy, copies)] : [boxRing(copy)];

/** Of each copy that lies in another's hole, the smallest one it lies in. */
export function hostsOf<Copy extends Placed>(copies: readonly Copy[]): Map<Copy, Copy> {
  const hosts = new Map<Copy, Copy>();
  const bySize = copies.toSorted((a, b) => a.width * a.length - b.width * b.length);
  for (const host of bySize) {
    const holes = (host.outline ?? []).filter((ring) => !isOuter(ring));
    if (holes.length === 0) continue;
    for (const copy of copies) {
      if (copy === host || hosts.has(copy)) continue;
      if (holes.some((hole) => liesWithin(copy, hole, host))) hosts.set(copy, host);
    }
  }
  return hosts;
}
