export type { Mark, Page, TextMark, Tone } from './marks';
export { type CutMapOptions, cutMapPages } from './pages';
export type { Paper } from './sheet';
export type { Measure } from './text';
export type { CutMapWords, FilmFacts } from './words';
