import { useAllWords, type Words } from '../words';
import type { Ways } from '../words/format';
import { useWays } from './selectors';

/** How figures are shown and read, and the words for what cannot be. */
export function useReader(): Ways & { readonly words: Words } {
  const ways = useWays();
  const words = useAllWords();
  return { ...ways, words };
}
