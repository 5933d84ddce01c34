import { fail, type Result } from '../units';
import { type KeptBook, readKept } from './kept';
import { MODEL_VERSION, type NotBroughtUp, type StoredRecords } from './migrations';

/** The collections that came after the first ones, with the version of the model from which on every book has them. */
const since: Readonly<Record<string, number>> = {
  recipe: 7,
  tick: 7,
  spoilage: 7,
  shelf: 7,
  closing: 8,
  item: 10,
  entry: 10,
  aside: 12,
  calibration: 14,
  leftOut: 14,
  check: 14,
  upkeep: 14,
  reading: 14,
  quote: 15,
};

/** No book was kept without its version after this one. */
const LAST = 18;

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

/** All records of a book as it was in memory; steps of undo are left out, since it cannot be told what they are patches of. */
const flattened = (book: Readonly<Record<string, unknown>>): StoredRecords =>
  new Map(
    Object.entries(book).flatMap(([name, records]) =>
      name !== 'step' && isObject(records)
        ? Object.entries(records).map(([id, record]): [string, unknown] => [`${name}/${id}`, record])
        : [],
    ),
  );

/**
 * Reads a book that was kept as it was in memory and without its version, as snapshots were up to version 18 of the model. Its collections
 * tell between which versions it is; of these it is of the latest in which all of it can be read, since what an older migration adds is what a
 * newer one asks for.
 */
export async function readUnversioned(book: unknown): Promise<Result<KeptBook, NotBroughtUp>> {
  if (!isObject(book)) return fail('damaged');
  const bounds = Object.entries(since);
  const from = Math.max(1, ...bounds.flatMap(([name, version]) => (name in book ? [version] : [])));
  const to = Math.min(LAST, ...bounds.flatMap(([name, version]) => (name in book ? [] : [version - 1])));
  const records = flattened(book);
  for (let version = Math.min(to, MODEL_VERSION); version >= from; version -= 1) {
    const kept = await readKept(records, version);
    if (!kept.ok || kept.value.setAside.length === 0) return kept;
  }
  return fail('damaged');
}
