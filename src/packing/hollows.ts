const EDGE = Number.POSITIVE_INFINITY;

/** A number of a corner of a skyline; the sum of them all tells two skylines apart (finalizer of A. Appleby's MurmurHash3). */
export function cornerHash(x: number, y: number): number {
  let hash = Math.imul(x, 0x9e3779b1) ^ y;
  hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b);
  hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
  return hash ^ (hash >>> 16);
}

/** A skyline filled hollow by hollow, that tells what stays bare beneath it; segments lie from index 1 on, between the film's edges. */
export class Hollows {
  readonly x: Float64Array;
  readonly y: Float64Array;
  segments = 1;
  /** Area given up. */
  bare = 0;
  hash = 0;

  constructor(copies: number) {
    this.x = new Float64Array(copies + 3);
    this.y = new Float64Array(copies + 3);
  }

  reset(width: number): void {
    this.x[1] = 0;
    this.x[2] = width;
    this.y[0] = EDGE;
    this.y[1] = 0;
    this.y[2] = EDGE;
    this.segments = 1;
    this.bare = 0;
    this.hash = 0;
  }

  /** Takes over another skyline. */
  copy({ x, y, segments, bare, hash }: Hollows): void {
    for (let at = 0; at <= segments + 1; at += 1) {
      this.x[at] = x[at] as number;
      this.y[at] = y[at] as number;
    }
    this.segments = segments;
    this.bare = bare;
    this.hash = hash;
  }

  /** The narrowest segment that lies lower than both its neighbours: the fewest copies fit there. */
  narrowest(): number {
    const { x, y, segments } = this;
    let narrowest = 0;
    let least = EDGE;
    for (let at = 1; at <= segments; at += 1) {
      const own = y[at] as number;
      if (own >= (y[at - 1] as number) || own >= (y[at + 1] as number)) continue;
      const room = (x[at + 1] as number) - (x[at] as number);
      if (room >= least) continue;
      least = room;
      narrowest = at;
    }
    return narrowest;
  }

  /**
   * Gives a hollow up: it is level with its lower neighbour from now on.
   * @returns false if it is the film itself
   */
  giveUp(at: number): boolean {
    if (this.segments === 1) return false;
    const { x, y } = this;
    const left = y[at - 1] as number;
    const right = y[at + 1] as number;
    const far = Math.min(left, right);
    this.bare += ((x[at + 1] as number) - (x[at] as number)) * (far - (y[at] as number));
    this.hash = (this.hash - cornerHash(x[at] as number, y[at] as number)) | 0;
    y[at] = far;
    if (right <= left) {
      this.hash = (this.hash - cornerHash(x[at + 1] as number, right)) | 0;
      this.close(at + 1);
    }
    if (left <= right) this.close(at);
    else this.hash = (this.hash + cornerHash(x[at] as number, far)) | 0;
    return true;
  }

  /** Puts a copy at the left end of a hollow, up to `far`; what that makes of the hash is for the caller to know. */
  cover(at: number, width: number, far: number): void {
    const { x, y } = this;
    const end = (x[at] as number) + width;
    if (end === x[at + 1]) {
      if (y[at + 1] === far) this.close(at + 1);
    } else {
      this.open(at + 1);
      x[at + 1] = end;
      y[at + 1] = y[at] as number;
    }
    y[at] = far;
    if (y[at - 1] === far) this.close(at);
  }

  private open(at: number): void {
    const { x, y } = this;
    for (let segment = this.segments + 2; segment > at; segment -= 1) {
      x[segment] = x[segment - 1] as number;
      y[segment] = y[segment - 1] as number;
    }
    this.segments += 1;
  }

  /** Takes a segment out. */
  private close(at: number): void {
    const { x, y } = this;
    for (let segment = at; segment <= this.segments; segment += 1) {
      x[segment] = x[segment + 1] as number;
      y[segment] = y[segment + 1] as number;
    }
    this.segments -= 1;
  }
}
