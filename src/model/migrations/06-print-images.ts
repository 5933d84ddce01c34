import { isObject, type Migration } from './stored';

/**
 * Version 5 wrote no images.
 * Version 6 remembers how; a printer whose test strip read rightly, ink up, needs them mirrored.
 */
export const rememberImages: Migration = (records) =>
  new Map(
    [...records].map(([key, value]) => {
      if (!key.startsWith('settings/') || !isObject(value)) return [key, value];
      const mirrored = isObject(value.printer) && value.printer.inkUp === 'plain';
      const printImage = { form: 'png', ppi: 300, mirrored, ticks: false, numbers: false };
      return [key, { ...value, printImage }];
    }),
  );
