/** At most two letters that a shop is known by: the first of its first words. */
export const initialsOf = (name: string): string =>
  name
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => /\p{Lu}|\p{N}/u.test(word.charAt(0)))
    .slice(0, 2)
    .map((word) => word.charAt(0))
    .join('');
