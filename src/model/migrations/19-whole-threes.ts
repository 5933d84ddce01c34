import { each, isObject, type Migration } from './stored';

/** What the migration to version 3 came to add after it had shipped, by the kinds of records. */
const late = {
  transfer: { garment: null },
  artwork: { kind: 'png' },
  film: { cutting: 'free' },
  settings: { lastBackup: null },
  mapPaper: { perSpan: false, pictures: true },
  printer: { inkUp: 'mirrored' },
};

const withLate = (value: unknown, fields: Readonly<Record<string, unknown>>): unknown =>
  isObject(value) ? { ...fields, ...value } : value;

const wholeSnapshot = (snapshot: unknown): unknown =>
  isObject(snapshot)
    ? {
        ...snapshot,
        film: withLate(snapshot.film, late.film),
        transfers: each(snapshot.transfers, late.transfer),
      }
    : snapshot;

const wholePrinted = (printed: unknown): unknown =>
  isObject(printed) && Array.isArray(printed.as)
    ? { ...printed, as: printed.as.map(wholeSnapshot) }
    : printed;

/** A record with some of its fields made whole, where it has them. */
const mended = (
  value: Readonly<Record<string, unknown>>,
  mends: Readonly<Record<string, (field: unknown) => unknown>>,
): Record<string, unknown> => ({
  ...value,
  ...Object.fromEntries(
    Object.entries(mends).flatMap(([name, mend]) => (name in value ? [[name, mend(value[name])]] : [])),
  ),
});

function whole(collection: string, value: Readonly<Record<string, unknown>>): unknown {
  switch (collection) {
    case 'transfer':
    case 'artwork':
    case 'film':
      return { ...late[collection], ...value };
    case 'run':
      return mended(value, { snapshot: wholeSnapshot, printed: wholePrinted });
    case 'settings':
      return mended(
        { ...late.settings, ...value },
        {
          mapPaper: (paper) => withLate(paper, late.mapPaper),
          printer: (printer) => withLate(printer, late.printer),
        },
      );
    default:
      return value;
  }
}

/**
 * The migration to version 3 was changed after it had shipped, so books of that version were of two kinds: some lack fields, and versions
 * up to 18 set such a film, its locked runs and others aside. From version 19 on they have what they lack, and come back. Undo stays,
 * since no step is of a record that was set aside.
 */
export const completeThrees: Migration = (records) =>
  new Map(
    [...records].map(([key, value]) => [
      key,
      isObject(value) ? whole(key.slice(0, key.indexOf('/')), value) : value,
    ]),
  );
