/** Children are sorted by one number each: the score in its upper bits, below it which child. */
const CHILD_BITS = 22;
const SCORE_BITS = 30;

/** What layouts may become by a copy more: of each whose child it is, how many hollows are given up before, which copy, how good. */
export class Children {
  size = 0;
  parent = new Int32Array(1024);
  given = new Int32Array(1024);
  entry = new Int32Array(1024);
  hash = new Int32Array(1024);
  private score = new Float64Array(1024);

  add(parent: number, given: number, entry: number, hash: number, score: number): void {
    const at = this.size;
    if (at === this.parent.length) this.grow();
    this.size += 1;
    this.parent[at] = parent;
    this.given[at] = given;
    this.entry[at] = entry;
    this.hash[at] = hash;
    this.score[at] = score;
  }

  /** Which children there are, the best first, of those alike by their hash the best alone, and so many at the most. */
  best(most: number): number[] {
    const sorted = this.sorted();
    const seen = new Set<number>();
    const chosen: number[] = [];
    for (let rank = this.size - 1; rank >= 0 && chosen.length < most; rank -= 1) {
      const child = (sorted[rank] as number) % 2 ** CHILD_BITS;
      const hash = this.hash[child] as number;
      if (seen.has(hash)) continue;
      seen.add(hash);
      chosen.push(child);
    }
    return chosen;
  }

  private sorted(): Float64Array {
    const { size, score } = this;
    let lowest = Number.POSITIVE_INFINITY;
    let highest = Number.NEGATIVE_INFINITY;
    for (let child = 0; child < size; child += 1) {
      lowest = Math.min(lowest, score[child] as number);
      highest = Math.max(highest, score[child] as number);
    }
    const scale = 2 ** SCORE_BITS / (highest - lowest || 1);
    const sorted = new Float64Array(size);
    for (let child = 0; child < size; child += 1)
      sorted[child] = Math.floor(((score[child] as number) - lowest) * scale) * 2 ** CHILD_BITS + child;
    return sorted.sort();
  }

  private grow(): void {
    const longer = (old: Int32Array) => {
      const next = new Int32Array(2 * old.length);
      next.set(old);
      return next;
    };
    this.parent = longer(this.parent);
    this.given = longer(this.given);
    this.entry = longer(this.entry);
    this.hash = longer(this.hash);
    const score = new Float64Array(2 * this.score.length);
    score.set(this.score);
    this.score = score;
  }
}
