export { type ArtworkStore, openArtworkStore } from './artwork-store';
export { databases, lastOpened, rememberOpened, type Source } from './names';
export type { StorageProblem } from './problem';
export { type BookRepository, openRepository } from './repository';
export { createSaver, type Saver, type SaveState } from './saver';
export { becomeWriter, type Writer } from './writer';
