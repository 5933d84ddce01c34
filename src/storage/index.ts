export { type ArtworkStore, openArtworkStore } from './artwork-store';
export { databases, lastOpened, rememberOpened, type Source } from './names';
export type { StorageProblem } from './problem';
export { openRepository } from './repository';
export { createSaver, type Saver, type SaveState } from './saver';
export { openSnapshots, type SnapshotStore, type StoredSnapshot } from './snapshots';
export { becomeWriter } from './writer';
