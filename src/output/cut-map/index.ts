export type { Mark, Page, Tone } from './marks';
export { type CutMapOptions, cutMapPages } from './pages';
export type { FontFiles } from './pdf';
export type { Paper } from './sheet';
export type { Measure } from './text';
export type { CutMapWords, FilmFacts } from './words';
