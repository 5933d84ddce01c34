export { MOST_COPIES } from './cells';
export type { Heading, Mapped } from './columns';
export { tableKey } from './heading-key';
export { type Column, columnNames, headingOf } from './headings';
export type { Left } from './left';
export { sharedFaults } from './mends';
export { readNames } from './names';
export type { CellProblem, Doubt, Mend, TableRow, TableWays } from './row';
export { readTable, type TableReading } from './table';
