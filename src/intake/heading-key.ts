/** No name of a column is longer. */
export const LONGEST_NAME = 100;

/** How a heading is remembered. */
export const headingKey = (cell: string): string =>
  cell.slice(0, LONGEST_NAME).trim().toLowerCase().replace(/\s+/g, ' ');

/** How the headings of a table are remembered, whatever their order. */
export const tableKey = (headings: readonly string[]): string =>
  [...new Set(headings.map(headingKey).filter((key) => key !== ''))].sort().join('\n');
