import { use } from 'react';
import { create } from 'zustand';
import { type Language, languages } from '../../src/model';
import { en, type Words } from './en';

export type { Words } from './en';

/** Each language as it calls itself. */
export const languageNames: Readonly<Record<Language, string>> = { en: 'English', es: 'Español' };

/** English is in the first bundle. Others arrive when they are chosen; the service worker has them by then. */
const catalogues: Readonly<Record<Language, () => Words | Promise<Words>>> = {
  en: () => en,
  es: () => import('./es').then(({ es }) => es),
};

interface Speech {
  readonly language: Language;
  /** The locale that figures and dates are written by, always one of the language. */
  readonly locale: string;
  readonly words: Words;
}

const useSpeech = create<Speech>(() => ({ language: 'en', locale: 'en', words: en }));

/** The words in the language in force; a component that asks for them is drawn again when it changes. */
export const useWords = (): Words => useSpeech(({ words }) => words);

const loaded = new Map<Language, Promise<Words>>();

/** The words of a language, whichever is in force: for what was written in one. Suspends until they are here; English if they cannot be. */
export function useWordsOf(language: Language): Words {
  const inForce = useSpeech();
  if (language === inForce.language) return inForce.words;
  let words = loaded.get(language);
  if (!words) {
    words = Promise.resolve(catalogues[language]()).catch(() => en);
    loaded.set(language, words);
  }
  return use(words);
}

export const useLocale = (): string => useSpeech(({ locale }) => locale);

export const useLanguage = (): Language => useSpeech(({ language }) => language);

/** The words for what is said at this moment, outside components. Never keep them: the language is switched in place. */
export const wordsNow = (): Words => useSpeech.getState().words;

export const localeNow = (): string => useSpeech.getState().locale;

export const languageNow = (): Language => useSpeech.getState().language;

const languageOf = (tag: string): string => new Intl.Locale(tag).language;

/** The first of a reader's locales that is of a language, for its region; else the language's plain locale. */
export const localeFor = (language: Language, preferred: readonly string[]): string =>
  preferred.find((tag) => languageOf(tag) === language) ?? language;

/** The first of a reader's languages that there is a catalogue of; else English. */
export const languageFor = (preferred: readonly string[]): Language =>
  preferred
    .map((tag) => languages.find((language) => language === languageOf(tag)))
    .find((language) => language !== undefined) ?? 'en';

let wanted: Language = 'en';

/**
 * Switches the language in place, once its words are here; the last one asked for wins.
 * @throws if they cannot be loaded; the language in force stays
 */
export async function speak(language: Language): Promise<void> {
  wanted = language;
  const words = await catalogues[language]();
  if (wanted !== language) return;
  document.documentElement.lang = language;
  useSpeech.setState({ language, words, locale: localeFor(language, navigator.languages) });
}
