import type { Rule } from './build';
import { RowDecoder } from './decode-rows';
import type { Strip } from './strip';

/** How what a copy leaves of a part is cut in two: the shorter rest first, the longer one, or always beside or behind it. */
type Split = 'shorter' | 'longer' | 'beside' | 'behind';

/** The way of cutting that goes with a rule: each lane of the search has one of its own. */
function splitOf({ waste, level }: Rule): Split {
  if (waste === Number.POSITIVE_INFINITY) return 'behind';
  if (!level) return 'longer';
  return waste >= 0.1 ? 'beside' : 'shorter';
}

const NONE = -1;

/**
 * Builds layouts that edge-to-edge cuts separate in any number of stages. The film is parted into rows, each as long as
 * the copy that opens it. A copy lies in the near corner of a part; a cut along one of its edges leaves two smaller parts,
 * which are filled the same way.
 *
 * The parts and the ways to split them are those of J. Jylänki, A thousand ways to pack the bin, 2010 (guillotine algorithms);
 * the copy for a part is the one that fits an edge of it best, the first in the sequence among the near equal.
 */
export class GuillotineDecoder extends RowDecoder {
  private split: Split = 'shorter';
  /** What a copy may leave beside itself and count as filling the part. */
  private near = 0;
  /** The shortest side of any piece: nothing fits a part that is narrower or shorter. */
  private readonly leastSide: number;
  // What was chosen last: fields, since a part is looked at a thousand times a millisecond.
  private run = NONE;
  private turned = 0;

  constructor(strip: Strip) {
    super(strip);
    const side = (least: number, length: number) => Math.min(least, length);
    this.leastSide = strip.along.reduce(side, strip.across.reduce(side, Number.POSITIVE_INFINITY));
  }

  protected follow(rule: Rule): void {
    this.split = splitOf(rule);
    this.near = Math.max(0, rule.exact) * this.strip.width;
  }

  /** The first copy in the sequence that fits opens the row and makes it as long as it is. */
  protected fillRow(y: number, most: number): number {
    const { width } = this.strip;
    this.choose(width, most, Number.POSITIVE_INFINITY);
    if (this.run === NONE) return 0;
    const [w, h] = this.placeChosen(0, y);
    this.fill(w, y, width - w, h);
    return h;
  }

  /**
   * Looks for the copy that leaves least beside or behind itself in a part, the way that its run prefers first.
   * @param enough what a copy may leave for the search to end with it
   */
  private choose(room: number, most: number, enough: number): void {
    const { across, along, turns } = this.strip;
    const { order, left, prefers, near } = this;
    this.run = NONE;
    if (room < this.leastSide || most < this.leastSide) return;
    let least = Number.POSITIVE_INFINITY;
    for (let run = this.firstLeft(); run < order.length && (this.run === NONE || least > enough); run += 1) {
      if (left[run] === 0) continue;
      const piece = order[run] as number;
      const turnable = turns[piece] === 1;
      const preferred = turnable ? (prefers[run] as number) : 0;
      for (let way = 0; way <= (turnable ? 1 : 0); way += 1) {
        const turned = way === 0 ? preferred : 1 - preferred;
        const w = (turned === 0 ? across[piece] : along[piece]) as number;
        const h = (turned === 0 ? along[piece] : across[piece]) as number;
        if (w > room || h > most) continue;
        const rest = Math.min(room - w, most - h);
        if (rest < least - near) {
          least = rest;
          this.run = run;
          this.turned = turned;
          if (least <= enough) break;
        }
      }
    }
  }

  /** Places what was chosen, and tells how far it reaches across and along. */
  private placeChosen(x: number, y: number): readonly [w: number, h: number] {
    const { across, along } = this.strip;
    const { run, turned } = this;
    const piece = this.order[run] as number;
    this.place(run, turned, x, y);
    const [w, h] = [across[piece] as number, along[piece] as number];
    return turned === 0 ? [w, h] : [h, w];
  }

  private fill(x: number, y: number, room: number, most: number): void {
    this.choose(room, most, this.near);
    if (this.run === NONE) return;
    const [w, h] = this.placeChosen(x, y);
    const beside = room - w;
    const behind = most - h;
    // A cut across leaves what lies beside the copy as long as the copy; a cut along, as long as the part.
    if (this.cutsAcross(beside, behind)) {
      this.fill(x + w, y, beside, h);
      this.fill(x, y + h, room, behind);
    } else {
      this.fill(x, y + h, w, behind);
      this.fill(x + w, y, beside, most);
    }
  }

  private cutsAcross(beside: number, behind: number): boolean {
    switch (this.split) {
      case 'shorter':
        return beside < behind;
      case 'longer':
        return beside >= behind;
      default:
        return this.split === 'behind';
    }
  }
}
