export { MOST_COPIES } from './cells';
export type { Column } from './columns';
export {
  type CellProblem,
  MOST_COPIES_IN_ALL,
  readTable,
  type TableReading,
  type TableRow,
} from './table';
