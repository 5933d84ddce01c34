/** Prints rows under headings, figures to the right, as plain text. */
export function printTable(
  title: string,
  headings: readonly string[],
  rows: readonly (readonly (string | number)[])[],
): void {
  const cells = rows.map((row) => row.map(String));
  const widths = headings.map((heading, column) =>
    Math.max(heading.length, ...cells.map((row) => row[column]?.length ?? 0)),
  );
  const line = (row: readonly string[]) =>
    row
      .map((cell, column) =>
        column === 0 ? cell.padEnd(widths[column] ?? 0) : cell.padStart(widths[column] ?? 0),
      )
      .join('  ');
  console.log(`\n${title}\n${line(headings)}\n${widths.map((width) => '-'.repeat(width)).join('  ')}`);
  for (const row of cells) console.log(line(row));
}

export const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);

/** The value that a share of all values does not exceed. */
export function percentile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN;
}
