import type { Laid } from './laid';
import type { Shape } from './shape';

/** How wide the widest stretch of film is in each row that no copy takes: what tells at once that a shape has no room there. */
export class FreeRows {
  /** By row where each interval that is taken begins and ends, in order. */
  private readonly taken: number[][] = [];
  private widest = new Int32Array(0);
  private readonly left: number;
  private readonly right: number;

  constructor(left: number, right: number) {
    this.left = left;
    this.right = right;
  }

  take({ starts, left, right }: Shape, { x, row: first }: Laid): void {
    const end = first + starts.length;
    if (end > this.widest.length) {
      const more = new Int32Array(2 * end).fill(this.right - this.left);
      more.set(this.widest);
      this.widest = more;
    }
    for (let row = 0; row < starts.length - 1; row += 1) {
      const number = first + row;
      if (number < 0) continue;
      this.taken[number] ??= [];
      const taken = this.taken[number] as number[];
      for (let at = starts[row] as number; at < (starts[row + 1] as number); at += 1) {
        const from = x + (left[at] as number);
        let place = taken.length;
        while (place > 0 && (taken[place - 2] as number) > from) place -= 2;
        taken.splice(place, 0, from, x + (right[at] as number));
      }
      this.widest[number] = this.widestIn(taken);
    }
  }

  private widestIn(taken: readonly number[]): number {
    let from = this.left;
    let widest = 0;
    for (let at = 0; at < taken.length; at += 2) {
      widest = Math.max(widest, (taken[at] as number) - from);
      from = Math.max(from, taken[at + 1] as number);
    }
    return Math.max(widest, this.right - from);
  }

  /** Whether a shape has no room anywhere in a row. */
  isTooNarrow({ probes }: Shape, row: number): boolean {
    for (let at = 0; at < probes.length; at += 2) {
      const number = row + (probes[at] as number);
      if (number < this.widest.length && (this.widest[number] as number) < (probes[at + 1] as number))
        return true;
    }
    return false;
  }
}
