export { MOST_COPIES } from './cells';
export { type Column, columnNames, headingKey } from './columns';
export { readNames } from './names';
export {
  type CellProblem,
  MOST_COPIES_IN_ALL,
  readTable,
  type TableReading,
  type TableRow,
} from './table';
