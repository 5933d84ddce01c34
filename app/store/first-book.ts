import { firstBook } from '../../src/demo';
import { firstSettings } from '../../src/editing/first-settings';
import type { Book, Settings } from '../../src/model';
import type { Source } from '../../src/storage';
import { languageNow, localeNow, wordsNow } from '../words';
import { typedLength } from '../words/format';
import { firstFilmOf } from './first-film';
import { editContext } from './shop';
import { dayFrom } from './today';

/** The settings that a book begins with, in the ways of whoever opens it. */
export const firstSettingsNow = (): Settings => ({
  ...firstSettings(navigator.language, languageNow()),
  changed: editContext().now,
});

/** What a book begins with, in the words and the ways of whoever opens it first. */
export function firstBookOf(source: Source): Book {
  const words = wordsNow();
  const settings = firstSettings(navigator.language, languageNow());
  const ways = { ...settings, locale: localeNow() };
  return firstBook(
    {
      settings,
      film: firstFilmOf(ways),
      runName: words.film.firstRun,
    },
    source === 'demo'
      ? {
          dayFrom,
          unit: ways.unit,
          words: words.demo,
          stockWords: words.demoStock,
          typed: (length) => `${typedLength(length, ways)} ${ways.unit}`,
        }
      : null,
    editContext(),
  );
}
