export { addDemoDay, missingArtwork } from './day';
