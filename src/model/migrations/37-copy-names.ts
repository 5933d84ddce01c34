import { isObject, type Migration } from './stored';

/** Version 37 prints the names of copies beside them, where that is asked for: until now there were their numbers at most. */
export const nameCopies: Migration = (records) =>
  new Map(
    [...records].map(([key, value]) =>
      key.startsWith('settings/') && isObject(value) && isObject(value.printImage)
        ? [key, { ...value, printImage: { ...value.printImage, names: false } }]
        : [key, value],
    ),
  );
