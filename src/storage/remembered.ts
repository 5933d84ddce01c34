/** A word that the browser remembers outside IndexedDB; `null` if there is none, or it remembers nothing. */
export function remembered(key: string): string | null {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
}

/** Remembers a word, where the browser does; what is not remembered is not missed. */
export function remember(key: string, word: string): void {
  try {
    localStorage.setItem(key, word);
  } catch {
    // As in a page that may store nothing.
  }
}
