import { type Book, collectionNames } from '../../src/model';

/** A book as it lies in storage. */
export const stored = (book: Book): Map<string, unknown> =>
  new Map(
    collectionNames.flatMap((name) =>
      Object.entries(book[name]).map(([id, record]): [string, unknown] => [
        `${name}/${id}`,
        structuredClone(record),
      ]),
    ),
  );
