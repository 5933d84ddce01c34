export { MOST_COPIES } from './cells';
export { type Column, columnNames, headingKey } from './headings';
export { readNames } from './names';
export type { CellProblem, Doubt, TableRow, TableWays } from './row';
export { readTable, type TableReading } from './table';
