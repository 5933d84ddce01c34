import { isObject, type Migration } from './stored';

/** Where white was not asked about yet, 0.2 mm of it is trusted: 0.008 in. */
const TRUSTED = { mm: 200, in: 203 };

/** Version 36 judges how thin the white gets, writes it as a plane on request, and makes what is see-through solid or a screen. */
export const layWhite: Migration = (records) =>
  new Map(
    [...records].map(([key, value]) => {
      if (!key.startsWith('settings/') || !isObject(value)) return [key, value];
      const { limits, printImage, unit } = value;
      return [
        key,
        {
          ...value,
          ...(isObject(limits) ? { limits: { ...limits, white: TRUSTED[unit === 'in' ? 'in' : 'mm'] } } : {}),
          ...(isObject(printImage)
            ? { printImage: { ...printImage, white: false, whiteName: 'White' } }
            : {}),
        },
      ];
    }),
  );
