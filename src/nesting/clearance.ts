import type { Shape } from './shape';

/**
 * Where one shape may not lie for another: by how many rows it lies behind the other, the open intervals of how far it lies across from
 * it. The no-fit polygon of the two (E. K. Burke et al., Complete and robust no-fit polygon generation for the irregular stock
 * cutting problem, European Journal of Operational Research 179(1), 27-49, 2007), row by row.
 */
export interface Clearance {
  /** The rows of the shape that moves, less one: the first entry of `starts` is of it lying so many rows before the other. */
  readonly before: number;
  readonly starts: Int32Array;
  readonly from: Int32Array;
  readonly to: Int32Array;
}

/** Open intervals of one step, joined where they overlap. */
class Union {
  from = new Int32Array(64);
  to = new Int32Array(64);
  count = 0;

  add(from: number, to: number): void {
    let low = from;
    let high = to;
    let kept = 0;
    for (let at = 0; at < this.count; at += 1) {
      const own = this.from[at] as number;
      const end = this.to[at] as number;
      if (own <= low && high <= end) return;
      if (own >= high || end <= low) {
        this.from[kept] = own;
        this.to[kept] = end;
        kept += 1;
      } else {
        low = Math.min(low, own);
        high = Math.max(high, end);
      }
    }
    if (kept === this.from.length) this.grow();
    this.from[kept] = low;
    this.to[kept] = high;
    this.count = kept + 1;
  }

  private grow(): void {
    const [from, to] = [new Int32Array(2 * this.from.length), new Int32Array(2 * this.from.length)];
    from.set(this.from);
    to.set(this.to);
    this.from = from;
    this.to = to;
  }
}

/** Of two shapes that are plain, of which each step has one interval. */
function plainClearance(still: Shape, moving: Shape): Clearance {
  const before = moving.rows - 1;
  const steps = still.rows + before;
  const from = new Int32Array(steps);
  const to = new Int32Array(steps);
  const { left, right } = still;
  const { left: ownLeft, right: ownRight } = moving;
  for (let step = 0; step < steps; step += 1) {
    const offset = step - before;
    const last = Math.min(still.rows, offset + moving.rows);
    let low = Number.POSITIVE_INFINITY;
    let high = Number.NEGATIVE_INFINITY;
    for (let row = Math.max(0, offset); row < last; row += 1) {
      const begin = (left[row] as number) - (ownRight[row - offset] as number);
      const end = (right[row] as number) - (ownLeft[row - offset] as number);
      if (begin < low) low = begin;
      if (end > high) high = end;
    }
    from[step] = low;
    to[step] = high;
  }
  return { before, starts: Int32Array.from({ length: steps + 1 }, (_, step) => step), from, to };
}

/** Works out where a shape may not lie for one that is still. */
export function clearance(still: Shape, moving: Shape): Clearance {
  if (still.isPlain && moving.isPlain) return plainClearance(still, moving);
  const before = moving.rows - 1;
  const steps = still.rows + before;
  const starts = new Int32Array(steps + 1);
  const from: number[] = [];
  const to: number[] = [];
  const union = new Union();
  for (let step = 0; step < steps; step += 1) {
    const offset = step - before;
    const last = Math.min(still.rows, offset + moving.rows);
    union.count = 0;
    for (let row = Math.max(0, offset); row < last; row += 1) {
      const first = moving.starts[row - offset] as number;
      const end = moving.starts[row - offset + 1] as number;
      for (let a = still.starts[row] as number; a < (still.starts[row + 1] as number); a += 1) {
        const left = still.left[a] as number;
        const right = still.right[a] as number;
        for (let b = first; b < end; b += 1) {
          const low = left - (moving.right[b] as number);
          const high = right - (moving.left[b] as number);
          if (low < high) union.add(low, high);
        }
      }
    }
    for (let at = 0; at < union.count; at += 1) {
      from.push(union.from[at] as number);
      to.push(union.to[at] as number);
    }
    starts[step + 1] = from.length;
  }
  return { before, starts, from: Int32Array.from(from), to: Int32Array.from(to) };
}

/** Where a shape may not lie for rows that nothing of its box may reach into, whatever of them its outline leaves bare. */
export function clearOfRows(still: Shape, moving: Shape): Clearance {
  const before = moving.rows - 1;
  const steps = still.rows + before;
  return {
    before,
    starts: Int32Array.from({ length: steps + 1 }, (_, step) => step),
    from: new Int32Array(steps).fill((still.left[0] as number) - moving.width),
    to: new Int32Array(steps).fill(still.right[0] as number),
  };
}

/** The same of the two the other way round: where the one that was still may not lie for the one that moved. */
export function mirrored({ before, starts, from, to }: Clearance): Clearance {
  const steps = starts.length - 1;
  const own = new Int32Array(steps + 1);
  const [left, right] = [new Int32Array(from.length), new Int32Array(to.length)];
  let count = 0;
  for (let step = 0; step < steps; step += 1) {
    const of = steps - 1 - step;
    for (let at = starts[of] as number; at < (starts[of + 1] as number); at += 1) {
      left[count] = -(to[at] as number);
      right[count] = -(from[at] as number);
      count += 1;
    }
    own[step + 1] = count;
  }
  return { before: steps - 1 - before, starts: own, from: left, to: right };
}
