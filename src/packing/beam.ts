import { Children } from './beam-children';
import { cornerHash, Hollows } from './hollows';
import type { Layout } from './layout';
import { type Orientations, orientationsOf } from './orientations';
import type { Strip } from './strip';

/** How much chance weighs, in copies of mean area. */
const CHANCE = 0.1;

/** A layout on the way: its skyline, how many copies of each piece it still lacks, and what those that it has weigh. */
interface Growing {
  readonly skyline: Hollows;
  readonly left: Int32Array;
  weight: number;
}

/** Of layouts of equally many copies: whose child each is, and the copy that it has got, with its place. */
interface Step {
  readonly parent: Int32Array;
  readonly entry: Int32Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
}

/**
 * Fits all copies into a given length, or fails: many layouts grow side by side by a copy at a time, in the narrowest hollow of each, where the
 * fewest fit; of all that they may become the best go on. Good is what has large copies placed, and few segments in its skyline. What would leave more
 * bare than the length has to spare is dropped at once, so that a length that the area alone fills leaves little to try.
 *
 * After P. S. Ow and T. E. Morton, Filtered beam search in scheduling, International Journal of Production Research 26(1), 35-62, 1988,
 * and, for what is dropped, N. Lesh, J. Marks, A. McMahon and M. Mitzenmacher, Exhaustive approaches to 2D rectangular perfect packings,
 * Information Processing Letters 90(1), 7-14, 2004.
 */
export class Beam {
  /** Children looked at so far. */
  work = 0;
  /** Whether the present run has left out any that would go on. */
  hasDropped = false;
  private readonly strip: Strip;
  private readonly count: Int32Array;
  private readonly random: () => number;
  private readonly orientations: Orientations;
  private readonly copies: number;
  private readonly area: number;
  private readonly pieceHash: Int32Array;
  private readonly weights: Float64Array;
  private readonly children = new Children();
  private readonly skyline: Hollows;
  private here: Growing[] = [];
  private there: Growing[] = [];
  private steps: Step[] = [];
  // Of the present run.
  private film = 0;
  private mostBare = 0;
  private width = 0;
  private size = 0;
  private ragged = 0;

  constructor(strip: Strip, count: Int32Array, random: () => number) {
    const { across, along } = strip;
    this.strip = strip;
    this.count = count;
    this.random = random;
    this.orientations = orientationsOf(strip);
    this.copies = count.reduce((sum, own) => sum + own, 0);
    this.area = count.reduce(
      (sum, own, piece) => sum + own * (across[piece] as number) * (along[piece] as number),
      0,
    );
    this.pieceHash = Int32Array.from(count, () => Math.floor(random() * 2 ** 32));
    this.weights = new Float64Array(this.orientations.widths.length);
    this.skyline = new Hollows(this.copies);
  }

  /**
   * Begins anew.
   * @param film grown length that copies may reach
   * @param width how many layouts grow side by side
   */
  begin(film: number, width: number): void {
    const { strip, orientations, random } = this;
    this.film = film;
    this.mostBare = film * strip.width - this.area;
    this.width = width;
    this.steps = [];
    this.hasDropped = false;
    const power = 0.4 + 0.7 * random();
    this.ragged = 0.35 * power * 4 ** random();
    const mean = this.area / this.copies;
    for (let entry = 0; entry < this.weights.length; entry += 1) {
      const area = (orientations.widths[entry] as number) * (orientations.lengths[entry] as number);
      this.weights[entry] = (area / mean) ** power;
    }
    const first = this.room(this.here, 0);
    first.skyline.reset(strip.width);
    first.left.set(this.count);
    first.weight = 0;
    this.size = 1;
  }

  /**
   * Adds a copy to all layouts.
   * @returns whether any of them goes on, or has all
   */
  step(): boolean {
    const { children, here, there } = this;
    children.size = 0;
    for (let at = 0; at < this.size; at += 1) this.grow(at);
    this.work += children.size;
    const chosen = children.best(this.width);
    this.hasDropped ||= chosen.length === this.width;
    this.steps.push({
      parent: Int32Array.from(chosen, (child) => children.parent[child] as number),
      entry: Int32Array.from(chosen, (child) => children.entry[child] as number),
      x: new Float64Array(chosen.length),
      y: new Float64Array(chosen.length),
    });
    for (const [to, child] of chosen.entries()) this.make(child, to);
    this.size = chosen.length;
    this.here = there;
    this.there = here;
    return chosen.length > 0;
  }

  /** Whether all copies have a place. */
  get isComplete(): boolean {
    return this.steps.length === this.copies && this.size > 0;
  }

  /** The best complete layout. */
  layout(): Layout {
    const { copies, steps, orientations } = this;
    const piece = new Int32Array(copies);
    const turned = new Uint8Array(copies);
    const x = new Float64Array(copies);
    const y = new Float64Array(copies);
    let top = 0;
    let at = 0;
    for (let copy = copies - 1; copy >= 0; copy -= 1) {
      const step = steps[copy] as Step;
      const entry = step.entry[at] as number;
      piece[copy] = orientations.pieces[entry] as number;
      turned[copy] = orientations.turned[entry] as number;
      x[copy] = step.x[at] as number;
      y[copy] = step.y[at] as number;
      top = Math.max(top, (step.y[at] as number) + (orientations.lengths[entry] as number));
      at = step.parent[at] as number;
    }
    const bin = new Int32Array(copies);
    return { piece, bin, x, y, turned, tops: Float64Array.of(top), cost: top, complete: true };
  }

  private room(level: Growing[], at: number): Growing {
    level[at] ??= { skyline: new Hollows(this.copies), left: new Int32Array(this.count.length), weight: 0 };
    return level[at];
  }

  /** The least width and length of the copies that a layout lacks, lying any way they may. */
  private least(left: Int32Array): { narrowest: number; shortest: number } {
    const { widths, lengths, pieces } = this.orientations;
    let narrowest = Number.POSITIVE_INFINITY;
    let shortest = Number.POSITIVE_INFINITY;
    for (let entry = 0; entry < widths.length; entry += 1) {
      if (left[pieces[entry] as number] === 0) continue;
      narrowest = Math.min(narrowest, widths[entry] as number);
      shortest = Math.min(shortest, lengths[entry] as number);
    }
    return { narrowest, shortest };
  }

  /** Lists all that a layout may become: by a copy in the left corner of its narrowest hollow, or of the next once that is given up. */
  private grow(parent: number): void {
    const { skyline, film, mostBare, children, random, ragged, weights, pieceHash } = this;
    const { widths, lengths, pieces } = this.orientations;
    const { skyline: own, left, weight } = this.here[parent] as Growing;
    const { narrowest, shortest } = this.least(left);
    skyline.copy(own);
    for (let given = 0; ; given += 1) {
      const at = skyline.narrowest();
      const x = skyline.x[at] as number;
      const y = skyline.y[at] as number;
      const end = skyline.x[at + 1] as number;
      const leftEnd = skyline.y[at - 1] as number;
      const rightEnd = skyline.y[at + 1] as number;
      for (let entry = 0; entry < widths.length; entry += 1) {
        const width = widths[entry] as number;
        const rest = end - x - width;
        if (rest < 0) break;
        const piece = pieces[entry] as number;
        const far = y + (lengths[entry] as number);
        if (left[piece] === 0 || far > film) continue;
        let bare = skyline.bare;
        if (rest > 0 && rest < narrowest) bare += rest * (Math.min(rightEnd, far) - y);
        if (far < film && film - far < shortest) bare += width * (film - far);
        if (bare > mostBare) continue;
        let { segments } = skyline;
        let hash = (skyline.hash + (pieceHash[piece] as number) - cornerHash(x, y)) | 0;
        if (far === leftEnd) segments -= 1;
        else hash = (hash + cornerHash(x, far)) | 0;
        if (rest > 0) {
          segments += 1;
          hash = (hash + cornerHash(x + width, y)) | 0;
        } else if (far === rightEnd) {
          segments -= 1;
          hash = (hash - cornerHash(end, far)) | 0;
        }
        const score = weight + (weights[entry] as number) - ragged * segments + CHANCE * random();
        children.add(parent, given, entry, hash, score - (bare * this.copies) / this.area);
      }
      if (!skyline.giveUp(at) || skyline.bare > mostBare) return;
    }
  }

  /** Makes a layout of a child. */
  private make(child: number, to: number): void {
    const { children, orientations } = this;
    const parent = this.here[children.parent[child] as number] as Growing;
    const own = this.room(this.there, to);
    const { skyline } = own;
    skyline.copy(parent.skyline);
    for (let given = children.given[child] as number; given > 0; given -= 1)
      skyline.giveUp(skyline.narrowest());
    const at = skyline.narrowest();
    const entry = children.entry[child] as number;
    const piece = orientations.pieces[entry] as number;
    const step = this.steps.at(-1) as Step;
    step.x[to] = skyline.x[at] as number;
    step.y[to] = skyline.y[at] as number;
    skyline.cover(
      at,
      orientations.widths[entry] as number,
      (skyline.y[at] as number) + (orientations.lengths[entry] as number),
    );
    skyline.hash = children.hash[child] as number;
    own.left.set(parent.left);
    own.left[piece] = (own.left[piece] as number) - 1;
    own.weight = parent.weight + (this.weights[entry] as number);
  }
}
