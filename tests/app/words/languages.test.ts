import { describe, expect, it } from 'vitest';
import { languageFor, localeFor } from '../../../app/words';

describe('the language a new shop begins with', () => {
  it.each([
    ['is the first of the reader’s that there is', ['de-AT', 'en-GB', 'en'], 'en'],
    ['is English where there is none of them', ['de-AT', 'fi'], 'en'],
    ['is English where the browser tells none', [], 'en'],
  ] as const)('%s', (_, preferred, language) => {
    expect(languageFor(preferred)).toBe(language);
  });
});

describe('the locale of figures and dates', () => {
  it.each([
    ['has the reader’s region where the browser is of the language', ['de-AT', 'en-NZ', 'en-GB'], 'en-NZ'],
    ['is the plain language where it is not', ['de-AT', 'fi'], 'en'],
  ] as const)('%s', (_, preferred, locale) => {
    expect(localeFor('en', preferred)).toBe(locale);
  });
});
