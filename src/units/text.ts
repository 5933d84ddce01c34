/** A text as it is compared: `Milímetros` and `milimetros` are one word. */
export const withoutAccents = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '');

/** Whether figures and dates can be written by a locale, as BCP 47 writes it. */
export function isLocale(tag: string): boolean {
  try {
    return Intl.getCanonicalLocales(tag).length === 1;
  } catch {
    return false;
  }
}
