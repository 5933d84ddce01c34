export { addDemoDay, type DemoWords, missingArtwork } from './day';
export { firstBook } from './first-book';
export { addDemoWeeks, type DemoStockWords } from './weeks';
