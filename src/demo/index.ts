export { addDemoDay, type DemoWords, missingArtwork } from './day';
export { addDemoWeeks, type DemoStockWords } from './weeks';
