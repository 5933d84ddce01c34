import { isNoStep, isObject, type Migration } from './stored';

/** Version 5 knows what artwork was made from, and the limits it is checked by (common practice, no source). */
export const checkArtwork: Migration = (records) =>
  new Map(
    [...records].filter(isNoStep).map(([key, value]) => {
      if (!isObject(value)) return [key, value];
      if (key.startsWith('artwork/')) return [key, { madeFrom: null, ...value }];
      if (!key.startsWith('settings/')) return [key, value];
      return [key, { limits: { stroke: 500, opening: 800, choke: 200 }, ...value }];
    }),
  );
