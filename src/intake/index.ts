export { MOST_COPIES } from './cells';
export { type Column, columnNames, headingKey } from './columns';
export { readNames } from './names';
export {
  type CellProblem,
  readTable,
  type TableReading,
  type TableRow,
  type TableWays,
} from './table';
