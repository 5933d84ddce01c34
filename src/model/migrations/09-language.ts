import { isObject, type Migration } from './stored';

/** Up to version 8 the app spoke English alone. */
export const chooseLanguage: Migration = (records) =>
  new Map(
    [...records].map(([key, value]) => [
      key,
      key.startsWith('settings/') && isObject(value) ? { language: 'en', ...value } : value,
    ]),
  );
