export {
  type Curer,
  type CureValues,
  covers,
  curers,
  type Fabric,
  fabrics,
  type Origin,
  origins,
  type Peel,
  type PressValues,
  peels,
  pressures,
  type Spoilage,
  type Stage,
  type Station,
  stages,
  type Tick,
} from './bench';
export {
  type AnyRecord,
  type Book,
  type Collection,
  collectionNames,
  emptyBook,
  type RecordKey,
  readRecord,
} from './book';
export type { Closing, Rates } from './closing';
export type { Id, Instant } from './fields';
export { type RollSize, rollWidths, type SheetSize, sheetSizes } from './film-sizes';
export {
  type DesignSize,
  designWidths,
  groupOfSize,
  type PlaceName,
  type SizeGroup,
  sizeGroups,
  startingWidths,
  widestFor,
} from './garments';
export {
  artworkInUse,
  benchRunOf,
  copiesByTransfer,
  filmOf,
  garmentsByOrder,
  isFixed,
  isPrinted,
  openRuns,
  ordersByDue,
  placementsByOrder,
  printedRuns,
  runOf,
  settingsOf,
  transfersByOrder,
} from './lookup';
export { MODEL_VERSION, migrate } from './migrations';
export { type OrderState, orderStates } from './order-state';
export {
  type Artwork,
  type Copy,
  type Film,
  type Garment,
  type Language,
  languages,
  type Meant,
  type Order,
  type Place,
  type Placement,
  type Roll,
  type Run,
  runStates,
  type Settings,
  type Sheets,
  type Snapshot,
  type StoredStep,
  TINTS,
  type Transfer,
} from './records';
export type {
  Blank,
  EntryKind,
  LedgerEntry,
  StockItem,
  StockUnit,
  Supply,
  SupplyKind,
} from './stock';
