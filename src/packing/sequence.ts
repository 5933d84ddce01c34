import type { Strip } from './strip';

/**
 * The order in which copies ask for a place, as runs of identical copies: `piece[i]` is asked for
 * `count[i]` times. Moving a whole run changes far more than moving one copy, and costs the same.
 */
export interface Sequence {
  readonly piece: number[];
  readonly count: number[];
  /** 1 where a run would rather lie turned: either way is tried, this one first. */
  readonly turned: number[];
}

export const copySequence = ({ piece, count, turned }: Sequence): Sequence => ({
  piece: [...piece],
  count: [...count],
  turned: [...turned],
});

/** Joins neighbours of one piece and drops empty runs. */
function tidy({ piece, count, turned }: Sequence): void {
  let kept = 0;
  for (let run = 0; run < piece.length; run += 1) {
    const copies = count[run] ?? 0;
    if (copies === 0) continue;
    if (kept > 0 && piece[kept - 1] === piece[run] && turned[kept - 1] === turned[run])
      count[kept - 1] = (count[kept - 1] ?? 0) + copies;
    else {
      piece[kept] = piece[run] ?? 0;
      count[kept] = copies;
      turned[kept] = turned[run] ?? 0;
      kept += 1;
    }
  }
  piece.length = kept;
  count.length = kept;
  turned.length = kept;
}

/** Copies of a build, from one to another, in the order in which it placed them and lying as they do. */
export function placedOrder(
  { piece, turned }: { readonly piece: Int32Array; readonly turned: Uint8Array },
  from: number,
  until: number,
): Sequence {
  const order = {
    piece: [...piece.subarray(from, until)],
    count: new Array<number>(until - from).fill(1),
    turned: [...turned.subarray(from, until)],
  };
  tidy(order);
  return order;
}

/** Moves some copies of a run to another place in the sequence. */
function moveRun(sequence: Sequence, from: number, copies: number, to: number): void {
  const { piece, count, turned } = sequence;
  const moved = piece[from] ?? 0;
  const way = turned[from] ?? 0;
  count[from] = (count[from] ?? 0) - copies;
  piece.splice(to, 0, moved);
  count.splice(to, 0, copies);
  turned.splice(to, 0, way);
}

/** Opens a run in two, so that something can lie between its copies. */
function split(sequence: Sequence, run: number, random: () => number): void {
  const { piece, count, turned } = sequence;
  const copies = count[run] ?? 0;
  if (copies < 2) return;
  const first = 1 + Math.floor(random() * (copies - 1));
  piece.splice(run + 1, 0, piece[run] ?? 0);
  count[run] = first;
  count.splice(run + 1, 0, copies - first);
  turned.splice(run + 1, 0, turned[run] ?? 0);
}

/** Changes a sequence a little, in place: a run or a part of it moves, or two runs change places. */
export function disturb(sequence: Sequence, random: () => number, turnable: boolean): void {
  const { piece, count, turned } = sequence;
  const any = () => Math.floor(random() * piece.length);
  const from = any();
  const kind = random();
  if (turnable && random() < 0.12) {
    turned[from] = 1 - (turned[from] ?? 0);
  } else if (kind < 0.45) {
    const copies = count[from] ?? 1;
    const part = random() < 0.6 ? copies : 1 + Math.floor(random() * copies);
    // Into the middle of another run as often as between two.
    const target = any();
    if (random() < 0.3 && target !== from && (count[target] ?? 0) > 1) {
      split(sequence, target, random);
      moveRun(sequence, from > target ? from + 1 : from, part, target + 1);
    } else
      moveRun(
        sequence,
        from,
        part,
        random() < 0.5 ? target : Math.min(piece.length, from + 2 + Math.floor(random() * 3)),
      );
  } else {
    const to = kind < 0.8 ? any() : Math.min(piece.length - 1, from + 1);
    const swap = (list: number[]) => {
      const moved = list[from] ?? 0;
      list[from] = list[to] ?? 0;
      list[to] = moved;
    };
    swap(piece);
    swap(count);
    swap(turned);
  }
  tidy(sequence);
}

/** A sequence parted by order: the soonest first where that is asked for or the roll is not cut, otherwise as the sequence has them. */
export function byOrder({ piece, count, turned }: Sequence, { rank, bins, together }: Strip): Sequence[] {
  const parts = new Map<number, Sequence>();
  piece.forEach((own, run) => {
    const order = rank[own] as number;
    let part = parts.get(order);
    if (!part) {
      part = { piece: [], count: [], turned: [] };
      parts.set(order, part);
    }
    part.piece.push(own);
    part.count.push(count[run] as number);
    part.turned.push(turned[run] as number);
  });
  if (bins.kind !== 'strip' && together.kind !== 'by-due') return [...parts.values()];
  return [...parts.entries()].sort(([a], [b]) => a - b).map(([, part]) => part);
}
