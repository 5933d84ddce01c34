import { isObject, type Migration } from './stored';

/** Version 23 keeps what was said of the headings of a table with all of them. Undo stays, since no step is of settings. */
export const keepTables: Migration = (records) =>
  new Map(
    [...records].map(([key, value]) => [
      key,
      key === 'settings/shop' && isObject(value) ? { tables: {}, ...value } : value,
    ]),
  );
