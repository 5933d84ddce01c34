export {
  type AnyRecord,
  type Book,
  type Collection,
  collectionNames,
  emptyBook,
  type RecordKey,
  readRecord,
} from './book';
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
  copiesByTransfer,
  filmOf,
  garmentsByOrder,
  isFixed,
  openRuns,
  ordersByDue,
  placementsByOrder,
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
  type Order,
  type Place,
  type Placement,
  type Roll,
  type Run,
  type Settings,
  type Sheets,
  type Snapshot,
  type StoredStep,
  TINTS,
  type Transfer,
} from './records';
