import { type Minor, sum } from '../units';

/** What sums of floats may be off by, in minor units: far more than they are, far less than is seen. */
const NOISE = 1e-6;

const floorOf = (exact: number): number => Math.max(0, Math.floor(exact - NOISE));

/**
 * Gives whole units to parts by the largest remainder, so that they sum to the total exactly (A. Hamilton 1792; M. L. Balinski and
 * H. P. Young, Fair Representation, 1982). A part that is nothing gets nothing, unless all are.
 * @param total at least the sum of the parts' floors
 * @param exact what each part is before rounding
 * @param owed what each part is short of from before: it goes first where it is much. Updated.
 */
export function apportion(
  total: number,
  exact: readonly number[],
  owed: number[] = exact.map(() => 0),
): Minor[] {
  const parts = exact.map(floorOf);
  // What each part asks for beyond its floor.
  const claims = parts.map((part, at) => (exact[at] ?? 0) - part + (owed[at] ?? 0));
  let left = total - sum(parts);
  // Most often there is nothing to give, as where a line is nothing.
  if (left > 0) {
    const all = [...exact.keys()];
    const some = all.filter((at) => (exact[at] ?? 0) > 0);
    const claimants = (some.length > 0 ? some : all).sort(
      (a, b) => (claims[b] ?? 0) - (claims[a] ?? 0) || a - b,
    );
    while (left > 0 && claimants.length > 0) {
      for (const at of claimants.slice(0, left)) parts[at] = (parts[at] ?? 0) + 1;
      left -= Math.min(left, claimants.length);
    }
  }
  for (let at = 0; at < parts.length; at += 1) {
    owed[at] = (owed[at] ?? 0) + (exact[at] ?? 0) - (parts[at] ?? 0);
  }
  return parts as Minor[];
}

/**
 * Shares the whole units of several lines among rows: every line's cells sum to the line, and what a row is short of in one line it
 * gets first in the next, so that its sum stays within a unit or two of what it is before rounding.
 * @param lines the units of each line
 * @param exact a row's part of each line before rounding, `[row][line]`
 * @returns `[row][line]`
 */
export function apportionLines(lines: readonly Minor[], exact: readonly (readonly number[])[]): Minor[][] {
  const owed = exact.map(() => 0);
  const columns = lines.map((units, line) =>
    apportion(
      units,
      exact.map((row) => row[line] ?? 0),
      owed,
    ),
  );
  return exact.map((_, row) => columns.map((column) => column[row] as Minor));
}
