import { type Build, type Decoder, emptyBuild, type Limits, type Rule } from './build';
import type { Sequence } from './sequence';
import type { Strip } from './strip';

/** The ways all pieces may lie, to be found by width or by length. */
interface Orientations {
  /** Widths, ascending; with each the piece, whether it is turned, and its length. */
  readonly widths: Float64Array;
  readonly pieces: Int32Array;
  readonly turned: Uint8Array;
  readonly partner: Float64Array;
  /** Lengths, ascending, and where each is among the widths. */
  readonly heights: Float64Array;
  readonly byHeight: Int32Array;
}

function orientationsOf({ across, along, turns, count }: Strip): Orientations {
  const ways = [...count.keys()].flatMap((piece) => {
    const [w, h] = [across[piece] as number, along[piece] as number];
    const lying = { piece, turned: 0, w, h };
    return turns[piece] === 1 ? [lying, { piece, turned: 1, w: h, h: w }] : [lying];
  });
  ways.sort((a, b) => a.w - b.w || a.piece - b.piece || a.turned - b.turned);
  const byHeight = [...ways.keys()].sort((a, b) => (ways[a]?.h ?? 0) - (ways[b]?.h ?? 0) || a - b);
  return {
    widths: Float64Array.from(ways, ({ w }) => w),
    pieces: Int32Array.from(ways, ({ piece }) => piece),
    turned: Uint8Array.from(ways, ({ turned }) => turned),
    partner: Float64Array.from(ways, ({ h }) => h),
    heights: Float64Array.from(byHeight, (entry) => ways[entry]?.h ?? 0),
    byHeight: Int32Array.from(byHeight),
  };
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
export class SkylineDecoder implements Decoder {
  private readonly build: Build;
  private readonly strip: Strip;
  private readonly index: Orientations;
  /** Copies of each piece still to be placed. */
  private readonly remaining: Int32Array;
  /** The first run of each piece that is not used up. */
  private readonly firstRun: Int32Array;
  // The runs of a sequence as lists: the next one not used up, the next of the same piece, copies left.
  private next: Int32Array;
  private nextSame: Int32Array;
  private left: Int32Array;
  // The skyline's stretches from left to right: where each begins, and how far along the film it lies.
  private readonly sx: Float64Array;
  private readonly sy: Float64Array;
  private stretches = 0;

  constructor(strip: Strip) {
    this.strip = strip;
    this.index = orientationsOf(strip);
    const copies = strip.count.reduce((sum, count) => sum + count, 0);
    this.build = emptyBuild(strip);
    this.remaining = new Int32Array(strip.count.length);
    this.firstRun = new Int32Array(strip.count.length);
    this.next = new Int32Array(64);
    this.nextSame = new Int32Array(64);
    this.left = new Int32Array(64);
    this.sx = new Float64Array(copies + 3);
    this.sy = new Float64Array(copies + 3);
  }

  decode(sequence: Sequence, rule: Rule, limits: Limits): Build {
    const { strip, build, sx, sy } = this;
    const { across, along, turns, width } = strip;
    const { widths, pieces, turned: turnedOf, heights, byHeight, partner } = this.index;
    const entries = widths.length;
    const order = sequence.piece;
    const runs = order.length;
    if (runs > this.next.length) {
      this.next = new Int32Array(2 * runs);
      this.nextSame = new Int32Array(2 * runs);
      this.left = new Int32Array(2 * runs);
    }
    const { next, nextSame, left: copiesLeft, remaining, firstRun } = this;
    let copies = 0;
    remaining.fill(0);
    firstRun.fill(NOWHERE);
    for (let run = runs - 1; run >= 0; run -= 1) {
      const piece = order[run] as number;
      const count = sequence.count[run] as number;
      next[run] = run + 1;
      copiesLeft[run] = count;
      nextSame[run] = firstRun[piece] as number;
      firstRun[piece] = run;
      remaining[piece] = (remaining[piece] as number) + count;
      copies += count;
    }
    let head = 0;
    const wasted = rule.waste * width;
    const exact = rule.exact * width;
    let narrow = 0;
    while (narrow < entries && remaining[pieces[narrow] as number] === 0) narrow += 1;
    let narrowest = narrow < entries ? (widths[narrow] as number) : Number.POSITIVE_INFINITY;
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
        if (room < narrowest) {
          if (this.stretches === 1) break;
          this.raise(at);
          continue;
        }
        const leftWall = at > 0 ? (sy[at - 1] as number) - y : Number.POSITIVE_INFINITY;
        const rightWall = at + 1 < this.stretches ? (sy[at + 1] as number) - y : Number.POSITIVE_INFINITY;
        const most = cap - y;
        const usable = room - narrowest;
        const filling = room - wasted;
        let score = NOWHERE;
        let chosen = NOWHERE;
        let chosenTurned = 0;

        // Copies that fill the stretch are found by their width.
        if (exact >= 0) {
          let low = 0;
          let high = entries;
          while (low < high) {
            const middle = (low + high) >> 1;
            if ((widths[middle] as number) > room) high = middle;
            else low = middle + 1;
          }
          for (let entry = low - 1; entry >= 0 && (widths[entry] as number) >= room - exact; entry -= 1) {
            const run = firstRun[pieces[entry] as number] as number;
            const h = partner[entry] as number;
            if (run === NOWHERE || h > most) continue;
            const points = rule.level && (h === leftWall || h === rightWall) ? 2 * LEVEL + 1 : 2 * LEVEL;
            if (points > score || (points === score && run < chosen)) {
              score = points;
              chosen = run;
              chosenTurned = turnedOf[entry] as number;
            }
          }
        }
        // Copies that end level with a neighbour are found by their length.
        if (rule.level && score < LEVEL) {
          for (let side = 0; side < 2; side += 1) {
            const wall = side === 0 ? leftWall : rightWall;
            if (wall > most || (side === 1 && wall === leftWall)) continue;
            let low = 0;
            let high = entries;
            while (low < high) {
              const middle = (low + high) >> 1;
              if ((heights[middle] as number) < wall) low = middle + 1;
              else high = middle;
            }
            for (; low < entries && heights[low] === wall; low += 1) {
              const entry = byHeight[low] as number;
              const w = widths[entry] as number;
              const run = firstRun[pieces[entry] as number] as number;
              if (run === NOWHERE || w > room) continue;
              const points = w <= usable || w >= filling ? LEVEL + 1 : 1;
              if (points > score || (points === score && run < chosen)) {
                score = points;
                chosen = run;
                chosenTurned = turnedOf[entry] as number;
              }
            }
          }
        }
        // Otherwise the first in the sequence that leaves a usable stretch, or else the first that fits.
        if (score < LEVEL) {
          let before = NOWHERE;
          for (let run = head; run < runs; run = next[run] as number) {
            if (copiesLeft[run] === 0) {
              // Passed over for good: the list closes over it.
              if (before !== NOWHERE) next[before] = next[run] as number;
              continue;
            }
            before = run;
            const piece = order[run] as number;
            const prefers = turns[piece] === 1 ? (sequence.turned[run] as number) : 0;
            const w = (prefers === 0 ? across[piece] : along[piece]) as number;
            const h = (prefers === 0 ? along[piece] : across[piece]) as number;
            if (w <= room && h <= most) {
              if (w <= usable || w >= filling) {
                score = LEVEL;
                chosen = run;
                chosenTurned = prefers;
                break;
              }
              if (score < 0) {
                score = 0;
                chosen = run;
                chosenTurned = prefers;
              }
            }
            if (turns[piece] === 1 && h <= room && w <= most) {
              if (h <= usable || h >= filling) {
                score = LEVEL;
                chosen = run;
                chosenTurned = 1 - prefers;
                break;
              }
              if (score < 0) {
                score = 0;
                chosen = run;
                chosenTurned = 1 - prefers;
              }
            }
          }
        }
        if (chosen === NOWHERE) {
          if (this.stretches === 1) break;
          this.raise(at);
          continue;
        }
        const piece = order[chosen] as number;
        const w = (chosenTurned === 0 ? across[piece] : along[piece]) as number;
        const h = (chosenTurned === 0 ? along[piece] : across[piece]) as number;
        const atLeft = rule.left || h === leftWall || (h !== rightWall && leftWall >= rightWall);
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
          firstRun[piece] = nextSame[chosen] as number;
          while (head < runs && copiesLeft[head] === 0) head = next[head] as number;
        }
        const pieceLeft = (remaining[piece] as number) - 1;
        remaining[piece] = pieceLeft;
        if (pieceLeft === 0) {
          while (narrow < entries && remaining[pieces[narrow] as number] === 0) narrow += 1;
          narrowest = narrow < entries ? (widths[narrow] as number) : Number.POSITIVE_INFINITY;
        }
        if (copies === 0) break;
      }
      if (build.length === before && bin > 0) break;
      build.tops[bin] = top;
      build.bins += 1;
      used += top + strip.bins.between;
      if (build.length === before && limits.first >= limits.other) break;
    }
    build.unplacedArea = 0;
    for (let run = head; run < runs; run += 1) {
      const piece = order[run] as number;
      build.unplacedArea +=
        (copiesLeft[run] as number) * (across[piece] as number) * (along[piece] as number);
    }
    return build;
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
