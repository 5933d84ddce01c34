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
export { type RollSize, rollWidths } from './film-sizes';
export { copiesByTransfer, draftOf, ordersByDue, settingsOf, transfersByOrder } from './lookup';
export { MODEL_VERSION, migrate } from './migrations';
export {
  type Artwork,
  type Copy,
  type Film,
  type Order,
  type Place,
  type Run,
  type Settings,
  TINTS,
  type Transfer,
} from './records';
