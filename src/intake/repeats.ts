import type { TableRow } from './row';

/** A text by which names are the same: letters' case and blanks aside. */
export const sameName = (name: string): string => name.trim().replace(/\s+/g, ' ').toLocaleLowerCase();

/** A number of an order by which numbers are the same, with or without the sign before it. */
export const sameNumber = (number: string): string => sameName(number).replace(/^#\s*/, '');

/** What makes lines the same: the transfer and its size. */
export const sameTransfer = ({
  name,
  width,
  height,
}: {
  name: string;
  width: number;
  height: number;
}): string => JSON.stringify([sameName(name), width, height]);

/** Finds rows that repeat one above, as they come: each row is looked at once. */
export function repeatedAbove(): (
  row: Omit<TableRow, 'repeats'>,
  record: readonly string[],
) => TableRow['repeats'] {
  const above = new Map<string, { readonly line: number; readonly record: readonly string[] }>();
  return (row, record) => {
    const order = row.number === '' ? `name ${sameName(row.order)}` : `number ${sameNumber(row.number)}`;
    // The same print on another fabric is another line.
    const key = `${sameTransfer({ ...row, name: row.transfer })} ${row.fabric} ${order}`;
    const had = above.get(key);
    above.set(key, { line: row.line, record });
    if (!had) return null;
    const isWhole =
      record.length === had.record.length && record.every((cell, at) => cell === had.record[at]);
    return { line: had.line, isWhole };
  };
}
