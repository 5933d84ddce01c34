/** Orders instants, dates and ids by their signs, which for ISO 8601 is by time; many times quicker than by a locale. */
export const inOrder = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** Compares lists of the same length by the first figure in which they differ. */
export function compareEach(a: readonly number[], b: readonly number[]): number {
  for (let index = 0; index < a.length; index += 1) {
    const difference = (a[index] ?? 0) - (b[index] ?? 0);
    if (difference !== 0) return difference;
  }
  return 0;
}
