import { first } from './first';
import { more } from './more';

/** English, which every other language is typed by. */
export const en = { ...first, ...more };

export type FirstWords = typeof first;
export type MoreWords = typeof more;

/** What every language has to say; a missing or left-over message does not compile. */
export type Words = FirstWords & MoreWords;
