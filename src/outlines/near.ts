import { onceFor } from '../units';
import type { Ring } from './ring';

/** An outline where it lies: its rings, and where their origin is. */
export interface Lying {
  readonly rings: readonly Ring[];
  readonly x: number;
  readonly y: number;
}

type Box = readonly [left: number, top: number, right: number, end: number];

/** The box of an outline from its origin on; worked out once an outline. */
const boxOf = onceFor((rings: readonly Ring[]): Box => {
  let [left, top, right, end] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const ring of rings) {
    for (let at = 0; at < ring.length; at += 2) {
      left = Math.min(left, ring[at] as number);
      right = Math.max(right, ring[at] as number);
      top = Math.min(top, ring[at + 1] as number);
      end = Math.max(end, ring[at + 1] as number);
    }
  }
  return [left, top, right, end];
});

/** Ends of edges, four figures each; what is found last is written over what was before. */
class Edges {
  count = 0;
  private ends = new Float64Array(256);

  /** Finds the edges of an outline of which some point may lie in another's box, grown by a distance. */
  find({ rings, x, y }: Lying, other: Lying, distance: number): Float64Array {
    const box = boxOf(other.rings);
    const [left, right] = [box[0] + other.x - distance, box[2] + other.x + distance];
    const [top, end] = [box[1] + other.y - distance, box[3] + other.y + distance];
    this.count = 0;
    for (const ring of rings) {
      let [x0, y0] = [(ring.at(-2) as number) + x, (ring.at(-1) as number) + y];
      for (let at = 0; at < ring.length; at += 2) {
        const [x1, y1] = [(ring[at] as number) + x, (ring[at + 1] as number) + y];
        const isBeside = (x0 < left && x1 < left) || (x0 > right && x1 > right);
        if (!isBeside && !((y0 < top && y1 < top) || (y0 > end && y1 > end))) this.add(x0, y0, x1, y1);
        [x0, y0] = [x1, y1];
      }
    }
    return this.ends;
  }

  private add(x0: number, y0: number, x1: number, y1: number): void {
    if (this.count + 4 > this.ends.length) {
      const longer = new Float64Array(2 * this.ends.length);
      longer.set(this.ends);
      this.ends = longer;
    }
    this.ends[this.count] = x0;
    this.ends[this.count + 1] = y0;
    this.ends[this.count + 2] = x1;
    this.ends[this.count + 3] = y1;
    this.count += 4;
  }
}

const ownEdges = new Edges();
const otherEdges = new Edges();

/** The square of how far a point is from a stretch between two others. */
function fromStretch(x: number, y: number, x0: number, y0: number, x1: number, y1: number): number {
  const [across, along] = [x1 - x0, y1 - y0];
  const whole = across * across + along * along;
  const share = whole === 0 ? 0 : Math.max(0, Math.min(1, ((x - x0) * across + (y - y0) * along) / whole));
  return (x - x0 - share * across) ** 2 + (y - y0 - share * along) ** 2;
}

/** Whether two edges cross, or come nearer than the root of `least`. */
function areClose(
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  u0: number,
  v0: number,
  u1: number,
  v1: number,
  least: number,
): boolean {
  const side = (x: number, y: number) => (x1 - x0) * (y - y0) - (y1 - y0) * (x - x0);
  const other = (x: number, y: number) => (u1 - u0) * (y - v0) - (v1 - v0) * (x - u0);
  return (
    (side(u0, v0) * side(u1, v1) < 0 && other(x0, y0) * other(x1, y1) < 0) ||
    fromStretch(x0, y0, u0, v0, u1, v1) < least ||
    fromStretch(x1, y1, u0, v0, u1, v1) < least ||
    fromStretch(u0, v0, x0, y0, x1, y1) < least ||
    fromStretch(u1, v1, x0, y0, x1, y1) < least
  );
}

/** Whether a point lies inside an outline where it lies, by the edges that a ray from it crosses. */
export function contains({ rings, x: left, y: top }: Lying, x: number, y: number): boolean {
  let isInside = false;
  for (const ring of rings) {
    let [x0, y0] = [(ring.at(-2) as number) + left, (ring.at(-1) as number) + top];
    for (let at = 0; at < ring.length; at += 2) {
      const [x1, y1] = [(ring[at] as number) + left, (ring[at + 1] as number) + top];
      if (y0 <= y !== y1 <= y && x < x0 + ((y - y0) * (x1 - x0)) / (y1 - y0)) isInside = !isInside;
      [x0, y0] = [x1, y1];
    }
  }
  return isInside;
}

/** Whether a ring of one lies in the other's ink, if none of their edges cross. */
function reaches({ rings, x, y }: Lying, into: Lying): boolean {
  const [left, top, right, end] = boxOf(into.rings);
  return rings.some((ring) => {
    const [across, along] = [(ring[0] as number) + x, (ring[1] as number) + y];
    const [fromLeft, fromTop] = [across - into.x, along - into.y];
    const isWithin = fromLeft >= left && fromLeft <= right && fromTop >= top && fromTop <= end;
    return isWithin && contains(into, across, along);
  });
}

/**
 * Whether two outlines come nearer to each other than a distance, borders or ink: exact, from their corners alone.
 * @param distance Euclidean, micrometres; of 0, whether they overlap
 */
export function areNearer(a: Lying, b: Lying, distance: number): boolean {
  const own = ownEdges.find(a, b, distance);
  const other = otherEdges.find(b, a, distance);
  const least = distance * distance;
  for (let at = 0; at < ownEdges.count; at += 4) {
    const [x0, y0] = [own[at] as number, own[at + 1] as number];
    const [x1, y1] = [own[at + 2] as number, own[at + 3] as number];
    const [left, right] = [Math.min(x0, x1) - distance, Math.max(x0, x1) + distance];
    const [top, end] = [Math.min(y0, y1) - distance, Math.max(y0, y1) + distance];
    for (let each = 0; each < otherEdges.count; each += 4) {
      const [u0, v0] = [other[each] as number, other[each + 1] as number];
      const [u1, v1] = [other[each + 2] as number, other[each + 3] as number];
      if ((u0 < left && u1 < left) || (u0 > right && u1 > right)) continue;
      if ((v0 < top && v1 < top) || (v0 > end && v1 > end)) continue;
      if (areClose(x0, y0, x1, y1, u0, v0, u1, v1, least)) return true;
    }
  }
  return reaches(a, b) || reaches(b, a);
}
