/** Better plans are told no more often than this, in milliseconds. */
const TELL_EVERY = 120;
/** Making the plans that are told takes no more of the time than this, */
const MOST_OF_TIME = 0.03;
/** but whoever looks on, and may end the search, does not wait longer than this for a better one. */
const TELL_WITHIN = 1500;

/**
 * When a search tells of its best plan: making one takes as long as many layouts, so that the longer it takes the less often it is done.
 * Times are milliseconds of any clock.
 */
export class Telling {
  private told = Number.POSITIVE_INFINITY;
  private next = 0;

  /** Whether a plan of such a cost is to be told now. */
  isDue(cost: number, now: number): boolean {
    return cost < this.told && now >= this.next;
  }

  /** A plan was told, whose making began and ended then. */
  wasTold(cost: number, from: number, to: number): void {
    this.told = cost;
    this.next = to + Math.min(TELL_WITHIN, Math.max(TELL_EVERY, (to - from) / MOST_OF_TIME));
  }

  /** A plan of such a cost is known where this one would be told. */
  isKnown(cost: number): void {
    this.told = Math.min(this.told, cost);
  }
}
