import { isObject, type Migration } from './stored';

/** Version 34 writes the lines for a contour cutter, and registration corners into print-ready images: until now there were none. */
export const writeCutFiles: Migration = (records) =>
  new Map(
    [...records].map(([key, value]) =>
      key.startsWith('settings/') && isObject(value) && isObject(value.printImage)
        ? [
            key,
            {
              ...value,
              printImage: { ...value.printImage, corners: false },
              cutFile: { form: 'svg', view: value.mapView === 'on-screen' ? 'on-screen' : 'ink-up' },
            },
          ]
        : [key, value],
    ),
  );
