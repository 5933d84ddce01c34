export { MOST_COPIES } from './cells';
export { type Column, columnNames, headingKey } from './headings';
export { sharedFaults } from './mends';
export { readNames } from './names';
export type { CellProblem, Doubt, Mend, TableRow, TableWays } from './row';
export { readTable, type TableReading } from './table';
