import type { Sequence } from './sequence';
import type { Strip } from './strip';

/** How a place is chosen for the lowest stretch of the skyline. */
export interface Rule {
  /** Strip a copy may leave unusable beside itself and still count as fitting, as a share of the width. */
  readonly waste: number;
  /** A copy that fills the stretch, within this share of the width, is taken before all others. */
  readonly exact: number;
  /** A copy whose far end is level with a neighbour's is preferred. */
  readonly level: boolean;
}

/** Where copies lie after a build, in grown coordinates. One build's result is overwritten by the next. */
export interface Build {
  length: number;
  readonly piece: Int32Array;
  readonly bin: Int32Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly turned: Uint8Array;
  bins: number;
  /** Far end of the copies in each bin. */
  readonly tops: Float64Array;
  /** Grown area of the copies that found no place. */
  unplacedArea: number;
}

/** Limits of one build: how long each bin may get, and all of them together. */
export interface Limits {
  readonly first: number;
  readonly other: number;
  readonly total: number;
  readonly most: number;
}

const LEVEL = 2;
const NOWHERE = -1;

/**
 * Builds layouts from sequences: always on the lowest stretch of the skyline, the leftmost of them, with
 * the copy that scores best there, the first in the sequence among equals; where none fits, the stretch
 * is raised to its lower neighbour.
 *
 * After L. Wei, W.-C. Oon, W. Zhu and A. Lim, A skyline heuristic for the 2D rectangular packing and strip
 * packing problems, European Journal of Operational Research 215(2), 337-346, 2011, and S. C. H. Leung,
 * D. Zhang and K. M. Sim, A two-stage intelligent search algorithm for the two-dimensional strip packing
 * problem, European Journal of Operational Research 215(1), 57-69, 2011. Their scores for exact fits are
 * banded here by the strip left beside a copy, since sizes in micrometres hardly ever fit exactly.
 */
export class Decoder {
  readonly build: Build;
  private readonly strip: Strip;
  private readonly remaining: Int32Array;
  private next: Int32Array;
  private left: Int32Array;
  // The skyline's stretches from left to right: where each begins, and how far along the film it lies.
  private readonly sx: Float64Array;
  private readonly sy: Float64Array;
  private stretches = 0;

  constructor(strip: Strip) {
    this.strip = strip;
    const copies = strip.count.reduce((sum, count) => sum + count, 0);
    this.build = {
      length: 0,
      piece: new Int32Array(copies),
      bin: new Int32Array(copies),
      x: new Float64Array(copies),
      y: new Float64Array(copies),
      turned: new Uint8Array(copies),
      bins: 0,
      tops: new Float64Array(copies + 1),
      unplacedArea: 0,
    };
    this.remaining = new Int32Array(strip.count.length);
    this.next = new Int32Array(64);
    this.left = new Int32Array(64);
    this.sx = new Float64Array(copies + 3);
    this.sy = new Float64Array(copies + 3);
  }

  /** Builds the layout of a sequence into {@link build}. */
  decode(sequence: Sequence, rule: Rule, limits: Limits): Build {
    const { strip, build, sx, sy } = this;
    const { across, along, turns, width } = strip;
    const runs = sequence.piece.length;
    if (runs > this.next.length) {
      this.next = new Int32Array(2 * runs);
      this.left = new Int32Array(2 * runs);
    }
    const { next, left: copiesLeft, remaining } = this;
    let copies = 0;
    remaining.fill(0);
    for (let run = 0; run < runs; run += 1) {
      next[run] = run + 1;
      const count = sequence.count[run] ?? 0;
      copiesLeft[run] = count;
      const piece = sequence.piece[run] as number;
      remaining[piece] = (remaining[piece] as number) + count;
      copies += count;
    }
    let head = 0;
    const wasted = rule.waste * width;
    const exact = rule.exact * width;
    const best = rule.level ? 5 : 4;
    let narrowest = this.narrowest();
    build.length = 0;
    build.bins = 0;
    let used = 0;

    while (copies > 0 && build.bins < Math.min(limits.most, build.tops.length)) {
      const bin = build.bins;
      const cap = Math.min(bin === 0 ? limits.first : limits.other, limits.total - used);
      sx[0] = 0;
      sy[0] = 0;
      sx[1] = width;
      sy[1] = Number.POSITIVE_INFINITY;
      this.stretches = 1;
      let top = 0;
      const before = build.length;
      for (;;) {
        let at = 0;
        let y = sy[0] as number;
        for (let stretch = 1; stretch < this.stretches; stretch += 1) {
          if ((sy[stretch] as number) < y) {
            y = sy[stretch] as number;
            at = stretch;
          }
        }
        const x = sx[at] as number;
        const room = (sx[at + 1] as number) - x;
        const leftWall = at > 0 ? (sy[at - 1] as number) - y : Number.POSITIVE_INFINITY;
        const rightWall = at + 1 < this.stretches ? (sy[at + 1] as number) - y : Number.POSITIVE_INFINITY;
        let score = NOWHERE;
        let chosen = NOWHERE;
        let chosenTurned = 0;
        let chosenBefore = NOWHERE;
        if (room >= narrowest) {
          let previous = NOWHERE;
          for (let run = head; run < runs; run = next[run] as number) {
            const piece = sequence.piece[run] as number;
            const orientations = turns[piece] as number;
            for (let turned = 0; turned <= orientations; turned += 1) {
              const w = (turned === 0 ? across[piece] : along[piece]) as number;
              const h = (turned === 0 ? along[piece] : across[piece]) as number;
              if (w > room || y + h > cap) continue;
              const rest = room - w;
              const fit = rest <= exact ? LEVEL * 2 : rest >= narrowest || rest <= wasted ? LEVEL : 0;
              const points = rule.level && (h === leftWall || h === rightWall) ? fit + 1 : fit;
              if (points > score) {
                score = points;
                chosen = run;
                chosenTurned = turned;
                chosenBefore = previous;
              }
            }
            if (score >= best || (score >= LEVEL && rule.exact < 0)) break;
            previous = run;
          }
        }
        if (chosen === NOWHERE) {
          if (this.stretches === 1) break;
          this.raise(at);
          continue;
        }
        const piece = sequence.piece[chosen] as number;
        const w = (chosenTurned === 0 ? across[piece] : along[piece]) as number;
        const h = (chosenTurned === 0 ? along[piece] : across[piece]) as number;
        const atLeft = h === leftWall || (h !== rightWall && leftWall >= rightWall);
        const index = build.length;
        build.piece[index] = piece;
        build.turned[index] = chosenTurned;
        build.bin[index] = bin;
        build.x[index] = atLeft ? x : x + room - w;
        build.y[index] = y;
        build.length += 1;
        if (y + h > top) top = y + h;
        this.settle(at, w, y + h, atLeft);
        copies -= 1;
        const runLeft = (copiesLeft[chosen] as number) - 1;
        copiesLeft[chosen] = runLeft;
        if (runLeft === 0) {
          if (chosenBefore === NOWHERE) head = next[chosen] as number;
          else next[chosenBefore] = next[chosen] as number;
        }
        const pieceLeft = (remaining[piece] as number) - 1;
        remaining[piece] = pieceLeft;
        if (pieceLeft === 0) narrowest = this.narrowest();
        if (copies === 0) break;
      }
      if (build.length === before && bin > 0) break;
      build.tops[bin] = top;
      build.bins += 1;
      used += top + strip.bins.between;
      if (build.length === before && limits.first >= limits.other) break;
    }
    build.unplacedArea = 0;
    for (let run = head; run < runs; run = next[run] as number) {
      const piece = sequence.piece[run] as number;
      build.unplacedArea +=
        (copiesLeft[run] as number) * (across[piece] as number) * (along[piece] as number);
    }
    return build;
  }

  /** The least width any copy still to be placed can take. */
  private narrowest(): number {
    const { across, along, turns } = this.strip;
    let least = Number.POSITIVE_INFINITY;
    for (let piece = 0; piece < across.length; piece += 1) {
      if (this.remaining[piece] === 0) continue;
      const w = across[piece] as number;
      const turned = turns[piece] === 1 ? (along[piece] as number) : w;
      least = Math.min(least, w, turned);
    }
    return least;
  }

  /** Puts a copy of width `w` at the left or right end of a stretch and joins it to a neighbour as high. */
  private settle(at: number, w: number, far: number, atLeft: boolean): void {
    const { sx, sy } = this;
    const x = sx[at] as number;
    const end = sx[at + 1] as number;
    if (x + w === end) {
      sy[at] = far;
      if (at + 1 < this.stretches && sy[at + 1] === far) this.remove(at + 1);
      if (at > 0 && sy[at - 1] === far) this.remove(at);
    } else if (atLeft) {
      if (at > 0 && sy[at - 1] === far) sx[at] = x + w;
      else {
        this.insert(at + 1, x + w, sy[at] as number);
        sy[at] = far;
      }
    } else if (at + 1 < this.stretches && sy[at + 1] === far) sx[at + 1] = end - w;
    else this.insert(at + 1, end - w, far);
  }

  /** Gives a stretch up: it is level with its lower neighbour from now on. */
  private raise(at: number): void {
    const { sy } = this;
    const leftY = at > 0 ? (sy[at - 1] as number) : Number.POSITIVE_INFINITY;
    const rightY = at + 1 < this.stretches ? (sy[at + 1] as number) : Number.POSITIVE_INFINITY;
    sy[at] = Math.min(leftY, rightY);
    if (rightY <= leftY) this.remove(at + 1);
    if (leftY <= rightY) this.remove(at);
  }

  private insert(at: number, x: number, y: number): void {
    const { sx, sy } = this;
    for (let stretch = this.stretches + 1; stretch > at; stretch -= 1) {
      sx[stretch] = sx[stretch - 1] as number;
      sy[stretch] = sy[stretch - 1] as number;
    }
    sx[at] = x;
    sy[at] = y;
    this.stretches += 1;
  }

  private remove(at: number): void {
    const { sx, sy } = this;
    for (let stretch = at; stretch <= this.stretches; stretch += 1) {
      sx[stretch] = sx[stretch + 1] as number;
      sy[stretch] = sy[stretch + 1] as number;
    }
    this.stretches -= 1;
  }
}
