import { Beam } from './beam';
import type { Layout } from './layout';
import { isEmpty, type Strip } from './strip';

/** With more copies the time is better spent on the search alone. */
const MOST_COPIES = 32;
/** How far the best layout may be from the bound. */
const NEAR = 0.1;
/** Layouts side by side in every second run; every fourth has twice as many, every eighth four times. */
const WIDTH = 200;
const WIDEST = 6400;
/** What a child of a beam takes, in copies placed by the search. */
const CHILD = 0.7;

/**
 * Looks for a layout no longer than the bound, beside a search that has come near it, for about half of the time: such a
 * layout is too rare to be met by changing others step by step. Once a run has looked at all there is, no more time is spent. On an
 * uncut roll with nothing on it.
 *
 * The runs' widths follow M. Luby, A. Sinclair and D. Zuckerman, Optimal speedup of Las Vegas algorithms, Information Processing Letters
 * 47(4), 173-180, 1993.
 */
export class AtBound {
  private readonly beam: Beam;
  private readonly copies: number;
  private readonly least: () => number;
  private runs = 0;
  private isRunning = false;
  /** A run has looked at all that there is, in vain. */
  private isHopeless = false;
  /** Work that the search is ahead by, in copies. */
  private ahead = 0;

  private constructor(strip: Strip, count: Int32Array, random: () => number, least: () => number) {
    this.beam = new Beam(strip, count, random);
    this.copies = count.reduce((sum, own) => sum + own, 0);
    this.least = least;
  }

  /**
   * @param least grown length that no layout goes below
   * @returns `null` for a strip or copies that it is not for
   */
  static of(strip: Strip, count: Int32Array, random: () => number, least: () => number): AtBound | null {
    const copies = count.reduce((sum, own) => sum + own, 0);
    const { bins, cutting, together } = strip;
    const isFor = bins.kind === 'strip' && cutting === 'free' && together.kind === 'any' && isEmpty(strip);
    return isFor && copies > 0 && copies <= MOST_COPIES ? new AtBound(strip, count, random, least) : null;
  }

  /** Whether it is its turn, after a step of the search that has come to a layout. */
  isDue({ complete, cost }: Layout): boolean {
    const least = this.least();
    if (this.isHopeless || !complete || cost <= least || cost > least * (1 + NEAR)) return false;
    this.ahead += this.copies;
    return this.ahead > 0;
  }

  /** @returns a layout, when one is found */
  step(): Layout | null {
    const { beam } = this;
    if (!this.isRunning) {
      this.runs += 1;
      const twos = this.runs & -this.runs;
      beam.begin(this.least(), Math.min(WIDTH * twos, WIDEST));
      this.isRunning = true;
    }
    const before = beam.work;
    this.isRunning = beam.step() && !beam.isComplete;
    this.ahead -= CHILD * (beam.work - before) + 1;
    if (beam.isComplete) return beam.layout();
    this.isHopeless = !this.isRunning && !beam.hasDropped;
    return null;
  }
}
