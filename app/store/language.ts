import { type Book, settingsOf } from '../../src/model';
import { languageNow, speak, wordsNow } from '../words';
import { useShop } from './shop';
import { notify } from './view';

/** Speaks the language of a book before it is shown; where its words cannot be had, the language in force stays. */
export async function speakOf(book: Book): Promise<void> {
  const language = settingsOf(book)?.language ?? languageNow();
  if (language === languageNow()) return;
  await speak(language).catch(() => notify('care', wordsNow().shop.notLoaded));
}

/** Follows the language of the book that is open, wherever it is changed, until the returned function is called. */
export const followLanguage = (): (() => void) =>
  useShop.subscribe((now, before) => {
    if (settingsOf(now.book)?.language !== settingsOf(before.book)?.language) void speakOf(now.book);
  });
