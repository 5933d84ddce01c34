export { addDemoDay, type DemoWords, missingArtwork } from './day';
