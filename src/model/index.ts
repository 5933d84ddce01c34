export {
  type Aside,
  type Curer,
  type CureValues,
  covers,
  curers,
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
export { type Beyond, copiesBeyond } from './beyond';
export {
  type AnyRecord,
  type Book,
  type Collection,
  collectionNames,
  emptyBook,
  type RecordKey,
  readRecord,
} from './book';
export {
  type Calibration,
  type Driver,
  type LeftOut,
  type Quantity,
  quantities,
  type Tunable,
} from './calibration';
export type { Closing, Rates } from './closing';
export type { Copy, Place, Whereabouts } from './copy';
export { isCutByOutline, isCutStraight } from './cutting';
export { linesFor, takenBefore, takes } from './dealing';
export {
  commonFabric,
  type FabricLine,
  type FabricLineId,
  fabricOn,
  tellsFabric,
  untoldLines,
} from './fabric-on';
export { asId, asInstant, type Id, type Instant, id, instant } from './fields';
export { ordersOnFilm } from './film-codes';
export { filmCost, runCost } from './film-cost';
export { isSameSize, type RollSize, rollSizes, rollWidth, type SheetSize, sheetSizes } from './film-sizes';
export { type GarmentPlace, garmentPlaceOf, type PlaceName, placeNamed } from './garment-place';
export {
  bySize,
  type DesignSize,
  designWidths,
  groupOf,
  type SizeGroup,
  sizeGroups,
  sizeKey,
  startingWidths,
  widestFor,
  widthFor,
} from './garments';
export type { Hours, Stretch, Week } from './hours';
export { openKept, readKept, readWritten, recordsOf, writeKept } from './kept';
export {
  artworkInUse,
  asEntered,
  benchRunOf,
  benchRuns,
  copiesByTransfer,
  copiesOfOrder,
  filmOf,
  filmsAhead,
  garmentsByOrder,
  isFixed,
  isPrinted,
  openRuns,
  ordersByDue,
  placementsByOrder,
  printedRuns,
  quotesOf,
  runOf,
  runsAtWork,
  settingsOf,
  transfersByOrder,
  turnsOf,
} from './lookup';
export {
  daysAlone,
  firstOf,
  MOST_MACHINES,
  type Oven,
  type Person,
  type Press,
  type Printer,
  printerOf,
  type Sending,
  sendings,
  withPrinter,
} from './machines';
export {
  type BringUp,
  bringUpFrom,
  MODEL_VERSION,
  type NotBroughtUp,
  type StoredRecords,
} from './migrations';
export { type OrderState, orderState } from './order-state';
export {
  type Aim,
  type Alternative,
  type Costs,
  type Heater,
  heaters,
  type LabourRoom,
  labourRooms,
  type OrderPricing,
  type Pricing,
} from './prices';
export { type PriceLine, type Quote, quoteContent, quoteNumber } from './quote';
export { ranges } from './ranges';
export { bookOf, holds, type Opened, openBook, type SetAside } from './reading';
export {
  type Artwork,
  type ArtworkOutline,
  cuttings,
  type Film,
  type Garment,
  type Language,
  languages,
  type Meant,
  type Mend,
  type Order,
  OUTLINE_STEPS,
  type Placement,
  type Roll,
  type Settings,
  type Sheets,
  type StoredStep,
  TINTS,
  type Transfer,
} from './records';
export { spoiledOn, waitingReprints } from './reprints';
export { type Rest, restBeside } from './rest';
export {
  type DraftRun,
  draftRun,
  embeddedIn,
  type LockedRun,
  type Progress,
  progressOf,
  type Run,
  runStates,
  type Snapshot,
} from './run';
export {
  chosenFeed,
  isByOutlines,
  type OnRun,
  type OrderOnRun,
  ordersOfRun,
  ordersPrinted,
  outlineOf,
  printerOfRun,
  type RunView,
  runView,
  runViewOf,
} from './run-view';
export { type SettingsField, settingsFields } from './settings';
export type {
  Blank,
  EntryKind,
  LedgerEntry,
  StockItem,
  StockUnit,
  Supply,
  SupplyKind,
} from './stock';
export { type Tuned, tune, tunedTo } from './tunable';
export { readUnversioned } from './unversioned';
export {
  type Check,
  type Hazard,
  hazards,
  type Interval,
  type Reading,
  type Subject,
  subjects,
  type UpkeepEntry,
} from './upkeep';
export type { CostBasis, RunUse } from './use';
export { waysToCut } from './ways-to-cut';
