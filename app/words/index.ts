import { en } from './en';

/** The catalogue every sentence on screen comes from. */
export type Words = typeof en;

export const words: Words = en;

export const useWords = (): Words => words;
