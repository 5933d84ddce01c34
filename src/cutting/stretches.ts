import type { LaidCopy, LaidRun } from '../layout';
import type { Span } from '../packing';
import { type Micrometres, um } from '../units';
import { runSpans } from './cuts';

/** The piece of a run that one page of the map shows. */
export interface Stretch extends Span {
  /** The film from `from` to here is on the page before as well; equal to `from` if none is. */
  readonly repeatedTo: Micrometres;
  /** What it ends at: the end of the run, a knife line, or a strip that the next page repeats. */
  readonly end: 'run' | 'knife' | 'strip';
}

/** What fits on a page. */
interface PageLimits {
  /** Film. */
  readonly most: Micrometres;
  /** Film that two pages share, at the least, where no knife line parts them. */
  readonly strip: Micrometres;
  /** Cuts. */
  readonly cuts: number;
}

/** A page is left shorter than this share of what it holds only when it has to be. */
const WELL_FILLED = { knife: 0.5, clear: 0.6 };
/** However far a strip reaches back, each page brings at least this share of what it holds in new film. */
const LEAST_NEW = 0.4;

/** Far ends of copies at which a line across the film crosses no copy, ascending. */
function clearLines(copies: readonly LaidCopy[]): number[] {
  const lines: number[] = [];
  let end = 0;
  for (const copy of copies.toSorted((a, b) => a.y - b.y)) {
    if (copy.y >= end && end > 0) lines.push(end);
    end = Math.max(end, copy.y + copy.length);
  }
  return lines;
}

/**
 * Parts a run into the stretches that pages show: at knife lines, or between sheets, where they come late enough on a page,
 * else below a row of copies, else anywhere. Away from knife lines the next page repeats a strip, long
 * enough to show whole every copy that the end of the page has cut.
 */
export function stretches(
  run: Pick<LaidRun, 'copies' | 'lengthUsed' | 'spans'>,
  limits: PageLimits,
): Stretch[] {
  const knives = runSpans(run).map(({ to }) => to);
  const clear = clearLines(run.copies);
  const pages: Stretch[] = [];
  let from = um(0);
  let repeatedTo = um(0);
  for (;;) {
    const start = from;
    const shared = repeatedTo;
    const ahead = knives.filter((at) => at > shared);
    const limit = Math.min(start + limits.most, ahead[limits.cuts - 1] ?? run.lengthUsed);
    if (limit >= run.lengthUsed) {
      pages.push({ from, to: run.lengthUsed, repeatedTo, end: 'run' });
      return pages;
    }
    const last = (lines: readonly number[], share: number) =>
      lines.findLast((at) => at <= limit && at > start + share * (limit - start));
    const knife = last(ahead, WELL_FILLED.knife);
    if (knife !== undefined) {
      pages.push({ from, to: um(knife), repeatedTo, end: 'knife' });
      from = repeatedTo = um(knife);
    } else {
      const to = um(last(clear, WELL_FILLED.clear) ?? limit);
      pages.push({ from, to, repeatedTo, end: 'strip' });
      const crossing = run.copies.filter(({ y, length }) => y < to && y + length > to);
      const whole = Math.min(to - limits.strip, ...crossing.map(({ y }) => y - limits.strip / 4));
      from = um(Math.max(whole, Math.min(start + LEAST_NEW * limits.most, to - limits.strip)));
      repeatedTo = to;
    }
  }
}

/**
 * For each stretch the copies that are counted and ticked there: on the first that shows a copy whole,
 * or, if it is longer than any, on the first that shows some of it. Every copy is in one list.
 */
export function copiesByStretch(copies: readonly LaidCopy[], pages: readonly Stretch[]): LaidCopy[][] {
  const lists: LaidCopy[][] = pages.map(() => []);
  for (const copy of copies) {
    const end = copy.y + copy.length;
    const whole = pages.findIndex(({ from, to }) => copy.y >= from && end <= to);
    const some = pages.findIndex(({ from, to }) => copy.y < to && end > from);
    lists[whole >= 0 ? whole : some]?.push(copy);
  }
  return lists;
}
