/** Orders instants, dates and ids by their signs, which for ISO 8601 is by time; many times quicker than by a locale. */
export const inOrder = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
