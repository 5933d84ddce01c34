import { isObject, type Migration } from './stored';

/** Version 22 keeps what was told of a closed run before it was corrected. Undo stays, since no step is of a closed run. */
export const keepCorrections: Migration = (records) =>
  new Map(
    [...records].map(([key, value]) => [
      key,
      key.startsWith('closing/') && isObject(value) ? { earlier: [], ...value } : value,
    ]),
  );
