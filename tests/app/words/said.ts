import { en } from '../../../app/words/en';
import { recovery } from '../../../app/words/en/recovery';
import { es } from '../../../app/words/es';
import { recovery as recuperacion } from '../../../app/words/es/recovery';
import type { Ways } from '../../../app/words/format';
import { argumentsFor } from './samples';

/** What the app says, and the page beside it. */
export const inEn = { ...en, recovery };
export const inEs = { ...es, recovery: recuperacion };

const inEnglish: Ways = { unit: 'mm', currency: 'EUR', locale: 'en' };
export const inSpanish: Ways = { unit: 'mm', currency: 'EUR', locale: 'es' };

export type Catalogue = Readonly<Record<string, unknown>>;

/** A message as it is said: what it says with each of its sample arguments, in both languages side by side. */
export interface Said {
  readonly place: string;
  readonly english: string;
  readonly spanish: string;
}

export const isCatalogue = (value: unknown): value is Catalogue =>
  typeof value === 'object' && value !== null;

/** What a message says; where an argument is no text, nor has a sample, that is a hole like any other. */
function say(message: unknown, list: readonly unknown[]): unknown {
  try {
    return (message as (...args: readonly unknown[]) => unknown)(...list);
  } catch (error) {
    return `undefined: ${String(error)}`;
  }
}

/** A sentence in pieces is said as a whole. */
const joined = (value: unknown): unknown =>
  Array.isArray(value) && value.every((part) => isCatalogue(part) && typeof part.text === 'string')
    ? value.map(({ text }) => text).join('')
    : value;

/** Walks both catalogues at once and says every message in both languages. */
function sayAll(english: unknown, spanish: unknown, place = ''): Said[] {
  if (typeof english === 'string') return [{ place, english, spanish: String(spanish) }];
  if (typeof english === 'function' && typeof spanish === 'function') {
    const lists = argumentsFor(place, english as never, inEnglish);
    const spanishLists = argumentsFor(place, english as never, inSpanish);
    return lists.flatMap((list, index) =>
      sayAll(joined(say(english, list)), joined(say(spanish, spanishLists[index] ?? [])), `${place}()`),
    );
  }
  if (!isCatalogue(english) || !isCatalogue(spanish)) return [];
  return Object.entries(english).flatMap(([key, value]) =>
    sayAll(value, spanish[key], place === '' ? key : `${place}.${key}`),
  );
}

/** Every message with each of its samples, in both languages. */
export const said: readonly Said[] = sayAll(inEn, inEs);
