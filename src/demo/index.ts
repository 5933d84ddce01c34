export { addDemoDay, type MissingArtwork, missingArtwork } from './day';
