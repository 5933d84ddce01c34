import type { Away } from './problem';

/** When something ends that takes so long from a time on, and is left while its unit is away. */
export function endOver(away: readonly Away[], from: number, length: number): number {
  let end = from + length;
  for (const gap of away) {
    if (gap.to <= from) continue;
    if (gap.from >= end) break;
    end += gap.to - Math.max(gap.from, from);
  }
  return end;
}

/** When all of several are away together. */
export const allAway = (units: readonly (readonly Away[])[]): readonly Away[] =>
  units.reduce((all, own) =>
    all.flatMap((gap) =>
      own.flatMap((other) => {
        const [from, to] = [Math.max(gap.from, other.from), Math.min(gap.to, other.to)];
        return from < to ? [{ from, to, cold: gap.cold && other.cold }] : [];
      }),
    ),
  );

/** When a unit is switched off. */
export const switchedOff = (away: readonly Away[]): readonly Away[] => away.filter(({ cold }) => cold);

/** Whether a unit is switched off between two times. */
export function isColdBetween(away: readonly Away[], from: number, to: number): boolean {
  for (const gap of away) {
    if (gap.to > to) return false;
    if (gap.cold && gap.to > from) return true;
  }
  return false;
}

/** How long a unit is away between two times. */
export const awayBetween = (away: readonly Away[], from: number, to: number): number =>
  away.reduce((sum, gap) => sum + Math.max(0, Math.min(to, gap.to) - Math.max(from, gap.from)), 0);

/**
 * When so much work is done at the soonest by several units that each are away at times, all at it from a time on.
 * @param units when each is away
 */
export function endOfWork(units: readonly (readonly Away[])[]): (from: number, work: number) => number {
  const times = [...new Set(units.flatMap((away) => away.flatMap(({ from, to }) => [from, to])))].sort(
    (a, b) => a - b,
  );
  /** How many are there behind each of these times. */
  const there = times.map(
    (time) => units.filter((away) => !away.some(({ from, to }) => from <= time && time < to)).length,
  );
  return (from, work) => {
    let at = times.findIndex((time) => time > from);
    if (at < 0) at = times.length;
    let time = from;
    for (let left = work; ; at += 1) {
      const own = at === 0 ? units.length : (there[at - 1] ?? units.length);
      const until = times[at] ?? Number.POSITIVE_INFINITY;
      if (own > 0 && time + left / own <= until) return Math.ceil(time + left / own);
      left -= own * (until - time);
      time = until;
    }
  };
}
