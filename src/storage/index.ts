export { type ArtworkStore, openArtworkStore } from './artwork-store';
export { type Epoch, noEpoch } from './epoch';
export { browserGround } from './ground';
export { databases, lastOpened, rememberOpened, type Source } from './names';
export type { StorageProblem } from './problem';
export { openRepository } from './repository';
export type { SaveState } from './saver';
export { openSharedBook, type SharedBook } from './shared-book';
export { openSnapshots, type SnapshotStore, type StoredSnapshot } from './snapshots';
