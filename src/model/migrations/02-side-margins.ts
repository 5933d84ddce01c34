import { isObject, type Migration } from './stored';

/**
 * Version 1 kept a film's side margins as one number.
 * Version 2 keeps the two sides apart, since printers feed off centre.
 */
export const separateSideMargins: Migration = (records) =>
  new Map(
    [...records].map(([key, value]) => {
      if (!key.startsWith('film/') || !isObject(value) || !isObject(value.margins)) return [key, value];
      const { side, ...ends } = value.margins;
      return [key, { ...value, margins: { left: side, right: side, ...ends } }];
    }),
  );
