import { type Collection, collectionNames, type SetAside } from '../../src/model';

/** Records that were set aside by their collections, in the order of these; `null` for what is of none. */
export const byCollection = (
  all: readonly SetAside[],
): { readonly collection: Collection | null; readonly own: readonly SetAside[] }[] =>
  [...collectionNames, null]
    .map((collection) => ({ collection, own: all.filter((record) => record.collection === collection) }))
    .filter(({ own }) => own.length > 0);

/** The names of those that have one. */
export const namesOf = (records: readonly SetAside[]): string[] => records.flatMap(({ name }) => name ?? []);
