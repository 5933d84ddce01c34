/** A segment of a skyline, and what it is like. */
export interface Segment {
  /** Which one of the skyline's segments, from the left. */
  readonly at: number;
  /** Where it begins across the film, and how far along it lies. */
  readonly x: number;
  readonly y: number;
  /** How wide it is. */
  readonly room: number;
  /** How much further along its neighbours lie; infinite at the film's edges. */
  readonly leftWall: number;
  readonly rightWall: number;
}

/** A skyline as it was: where its segments begin, and how far along they lie, the film's edges included. */
export interface SkylineState {
  readonly x: Float64Array;
  readonly y: Float64Array;
}

const EDGE = Number.POSITIVE_INFINITY;

/** How far along the film it is taken: segments side by side, each of another height than its neighbours. */
export class Skyline {
  // Where each segment begins and how far along it lies, from index 1 on, between the film's edges, which have no end.
  private readonly x: Float64Array;
  private readonly y: Float64Array;
  private segments = 0;
  private readonly found = { at: 0, x: 0, y: 0, room: 0, leftWall: EDGE, rightWall: EDGE };

  /** @param copies that may come to lie under it at the most */
  constructor(copies: number) {
    this.x = new Float64Array(copies + 3);
    this.y = new Float64Array(copies + 3);
    this.y[0] = EDGE;
  }

  /** Begins anew on empty film. */
  reset(width: number): void {
    this.x[1] = 0;
    this.y[1] = 0;
    this.x[2] = width;
    this.y[2] = EDGE;
    this.segments = 1;
  }

  /** What has been taken so far, to go back to. */
  state(): SkylineState {
    const until = this.segments + 2;
    return { x: this.x.slice(0, until), y: this.y.slice(0, until) };
  }

  /** Goes back to what had been taken. */
  restore({ x, y }: SkylineState): void {
    this.x.set(x);
    this.y.set(y);
    this.segments = x.length - 2;
  }

  /**
   * The lowest segment, the leftmost of equals, once those that are too narrow are given up. One answer overwrites the one
   * before it.
   * @param narrowest how wide it must be
   * @returns `null` if the film itself is narrower
   */
  lowest(narrowest: number): Segment | null {
    const { x: xs, y: ys, found } = this;
    for (;;) {
      const last = this.segments;
      let at = 1;
      let y = ys[1] as number;
      for (let segment = 2; segment <= last; segment += 1) {
        if ((ys[segment] as number) < y) {
          y = ys[segment] as number;
          at = segment;
        }
      }
      const x = xs[at] as number;
      const room = (xs[at + 1] as number) - x;
      if (room >= narrowest) {
        found.at = at;
        found.x = x;
        found.y = y;
        found.room = room;
        found.leftWall = (ys[at - 1] as number) - y;
        found.rightWall = (ys[at + 1] as number) - y;
        return found;
      }
      if (!this.raise(at)) return null;
    }
  }

  /** Puts a copy at the left or right end of a segment, up to `far`, and joins it to a neighbour as high. */
  cover(at: number, width: number, far: number, atLeft: boolean): void {
    const { x: xs, y: ys } = this;
    const x = xs[at] as number;
    const end = xs[at + 1] as number;
    if (x + width === end) {
      ys[at] = far;
      if (ys[at + 1] === far) this.remove(at + 1);
      if (ys[at - 1] === far) this.remove(at);
    } else if (atLeft) {
      if (ys[at - 1] === far) xs[at] = x + width;
      else {
        this.insert(at + 1, x + width, ys[at] as number);
        ys[at] = far;
      }
    } else if (ys[at + 1] === far) xs[at + 1] = end - width;
    else this.insert(at + 1, end - width, far);
  }

  /**
   * Gives a segment up: it is level with its lower neighbour from now on.
   * @returns false if it is the only one
   */
  raise(at: number): boolean {
    if (this.segments === 1) return false;
    const left = this.y[at - 1] as number;
    const right = this.y[at + 1] as number;
    this.y[at] = Math.min(left, right);
    if (right <= left) this.remove(at + 1);
    if (left <= right) this.remove(at);
    return true;
  }

  private insert(at: number, x: number, y: number): void {
    const { x: xs, y: ys } = this;
    for (let segment = this.segments + 2; segment > at; segment -= 1) {
      xs[segment] = xs[segment - 1] as number;
      ys[segment] = ys[segment - 1] as number;
    }
    xs[at] = x;
    ys[at] = y;
    this.segments += 1;
  }

  private remove(at: number): void {
    const { x: xs, y: ys } = this;
    for (let segment = at; segment <= this.segments; segment += 1) {
      xs[segment] = xs[segment + 1] as number;
      ys[segment] = ys[segment + 1] as number;
    }
    this.segments -= 1;
  }
}
