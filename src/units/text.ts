/** A text as it is compared: `Milímetros` and `milimetros` are one word. */
export const withoutAccents = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '');
