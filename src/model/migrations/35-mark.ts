import { isObject, type Migration } from './stored';

/** Version 35 keeps the mark that a shop signs with beside its name. */
export const keepMark: Migration = (records) =>
  new Map(
    [...records].map(([key, value]) => [
      key,
      key === 'settings/shop' && isObject(value) ? { ...value, mark: null } : value,
    ]),
  );
