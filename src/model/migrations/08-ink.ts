import { isObject, type Migration } from './stored';

/** Version 7 counted film only. Version 8 knows what ink and powder a printed area takes (common practice, from memory). */
export const countInk: Migration = (records) =>
  new Map(
    [...records].map(([key, value]) => {
      if (!key.startsWith('settings/') || !isObject(value)) return [key, value];
      return [key, { rates: { colour: 9_000, white: 14_000, powder: 100_000 }, ...value }];
    }),
  );
