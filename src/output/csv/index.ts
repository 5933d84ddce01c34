export {
  type LedgerColumn,
  type LogColumn,
  ledgerTable,
  logTable,
  type UpkeepColumn,
  upkeepTable,
} from './tables';
export { type CsvDialect, dialectOf, writeCsv } from './write';
