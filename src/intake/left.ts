/** Rows of a table that are left once the others are taken, as a table again. */
export interface Left {
  readonly text: string;
  /** The number that each of its rows has in the whole table, its heading among them. */
  readonly lines: readonly number[];
}

/**
 * The number of each record of a table, counted from 1. Of one that is left of another, and may have been typed over since, each
 * record keeps the number it had there: those before and behind the changes surely, those between in their order. A record that
 * came to it is numbered behind all.
 * @param was the records of what was left, as it was handed back
 */
export function lineNumbers(
  records: readonly (readonly string[])[],
  was: readonly (readonly string[])[],
  lines: readonly number[],
): number[] {
  const same = (a: readonly string[] | undefined, b: readonly string[] | undefined): boolean =>
    a?.length === b?.length && (a ?? []).every((cell, at) => cell === b?.[at]);
  const shorter = Math.min(records.length, was.length);
  let before = 0;
  while (before < shorter && same(records[before], was[before])) before += 1;
  let behind = 0;
  while (behind < shorter - before && same(records.at(-1 - behind), was.at(-1 - behind))) behind += 1;
  let next = lines.reduce((most, line) => Math.max(most, line), 0);
  return records.map((_, at) => {
    const fromEnd = records.length - at;
    const had =
      fromEnd <= behind ? lines[was.length - fromEnd] : at < was.length - behind ? lines[at] : undefined;
    if (had !== undefined) return had;
    next += 1;
    return next;
  });
}
