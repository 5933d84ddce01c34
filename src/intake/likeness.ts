import { withoutAccents } from '../units';

/** A name by its parts: what it says in letters, and in figures. */
export interface NameParts {
  readonly words: readonly string[];
  readonly figures: readonly string[];
}

/** Takes a name apart at everything that is no letter or figure, between the two, and where a capital begins within a word. */
export function partsOf(name: string): NameParts {
  const parts = withoutAccents(name.replace(/(\p{Ll})(\p{Lu})/gu, '$1 $2'))
    .toLowerCase()
    .match(/\p{L}+|\p{N}+/gu);
  const isFigure = (part: string) => /^\p{N}/u.test(part);
  return {
    words: (parts ?? []).filter((part) => !isFigure(part)),
    figures: (parts ?? []).filter(isFigure).map((figure) => figure.replace(/^0+(?=.)/, '')),
  };
}

/** The name of a file without what tells its kind. */
export const withoutKind = (fileName: string): string => fileName.replace(/\.[a-z0-9]{1,5}$/i, '');

/** Pairs of neighbouring letters, word by word; a letter alone is one by itself. */
function pairsOf(words: readonly string[]): Map<string, number> {
  const pairs = new Map<string, number>();
  for (const word of words) {
    for (let at = 0; at < Math.max(1, word.length - 1); at += 1) {
      const pair = word.slice(at, at + 2);
      pairs.set(pair, (pairs.get(pair) ?? 0) + 1);
    }
  }
  return pairs;
}

/**
 * How alike two names are in their letters, from 0 to 1, whatever the order of their words: twice the pairs of letters that they share
 * over all of theirs (L. R. Dice, "Measures of the amount of ecologic association between species", Ecology 26, 1945).
 */
export function likeness(a: readonly string[], b: readonly string[]): number {
  const [one, other] = [pairsOf(a), pairsOf(b)];
  const sum = (pairs: ReadonlyMap<string, number>) =>
    [...pairs.values()].reduce((total, times) => total + times, 0);
  const all = sum(one) + sum(other);
  if (all === 0) return 0;
  const shared = [...one].reduce((total, [pair, times]) => total + Math.min(times, other.get(pair) ?? 0), 0);
  return (2 * shared) / all;
}
