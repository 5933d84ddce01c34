import { use } from 'react';
import { create } from 'zustand';
import { type Language, languages } from '../../src/model';
import type { FirstWords, Words } from './en';
import { first } from './en/first';

export type { FirstWords, Words } from './en';

/** Each language as it calls itself. */
export const languageNames: Readonly<Record<Language, string>> = { en: 'English', es: 'Español' };

/** What the first screen says in English is in the first bundle. All else arrives when it is needed; the service worker has it by then. */
const firsts: Readonly<Record<Language, () => FirstWords | Promise<FirstWords>>> = {
  en: () => first,
  es: () => import('./es/first').then(({ first }) => first),
};
const catalogues: Readonly<Record<Language, () => Promise<Words>>> = {
  en: () => import('./en').then(({ en }) => en),
  es: () => import('./es').then(({ es }) => es),
};

interface Speech {
  readonly language: Language;
  /** The locale that figures and dates are written by, always one of the language. */
  readonly locale: string;
  readonly words: FirstWords;
  /** `null` until a room or a window that needs them is shown. */
  readonly all: Words | null;
}

const useSpeech = create<Speech>(() => ({ language: 'en', locale: 'en', words: first, all: null }));

/** The words of the first screen in the language in force; a component that asks for them is drawn again when it changes. */
export const useWords = (): FirstWords => useSpeech(({ words }) => words);

function whole({ all }: Speech): Words {
  if (!all) throw new Error('these words belong to a part of the app, which fetches them first');
  return all;
}

/** All words in the language in force, for what is in a part of the app (`part`) and not in the first screen. */
export const useAllWords = (): Words => useSpeech(whole);

const loaded = new Map<Language, Promise<Words>>();

/** The words of a language, whichever is in force: for what was written in one. Suspends until they are here; English if they cannot be. */
export function useWordsOf(language: Language): Words {
  const inForce = useSpeech();
  if (language === inForce.language) return whole(inForce);
  let words = loaded.get(language);
  if (!words) {
    words = catalogues[language]().catch(catalogues.en);
    loaded.set(language, words);
  }
  return use(words);
}

export const useLocale = (): string => useSpeech(({ locale }) => locale);

export const useLanguage = (): Language => useSpeech(({ language }) => language);

/** The words for what is said at this moment, outside components. Never keep them: the language is switched in place. */
export const wordsNow = (): FirstWords => useSpeech.getState().words;

/** The same for all words, in what is in a part of the app and not in the first screen. */
export const allWordsNow = (): Words => whole(useSpeech.getState());

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

/** Whether more has been asked for than the first screen says. */
let isMoreWanted = false;

/**
 * Switches the language in place, once its words are here; the last one asked for wins.
 * @throws if they cannot be loaded; the language in force stays
 */
export async function speak(language: Language): Promise<void> {
  wanted = language;
  const words = await firsts[language]();
  const all = isMoreWanted ? await catalogues[language]() : null;
  if (wanted !== language) return;
  document.documentElement.lang = language;
  useSpeech.setState({ language, words, all, locale: localeFor(language, navigator.languages) });
}

/**
 * Fetches all words of the language in force, if they are not here.
 * @throws if they cannot be
 */
export async function fetchAllWords(): Promise<void> {
  isMoreWanted = true;
  const { language, all } = useSpeech.getState();
  if (all) return;
  const fetched = await catalogues[language]();
  // The language may have been switched meanwhile; then all of its words have come with it.
  if (useSpeech.getState().language === language) useSpeech.setState({ all: fetched });
}
