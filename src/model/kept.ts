import { fail, ok, type Result } from '../units';
import { type AnyRecord, type Book, collectionNames, type RecordKey } from './book';
import {
  type BringUp,
  bringUpFrom,
  MODEL_VERSION,
  type NotBroughtUp,
  type StoredRecords,
} from './migrations';
import { type Opened, openBook } from './reading';
import type { Settings } from './records';

/** A book that was kept somewhere, as this version of the model has it. */
export interface KeptBook extends Opened {
  /** All of it, what could not be read as well. */
  readonly records: StoredRecords;
  /** The version of the model that it was kept in. */
  readonly version: number;
}

/**
 * Records that are brought up to this version, as a book: each is checked by its schema and by what it cannot be without.
 * @param first the settings that a shop begins with, to stand in for those that cannot be read; `null` where none may
 */
export function openKept(
  records: StoredRecords,
  bringUp: BringUp,
  first: Settings | null,
): Omit<KeptBook, 'version'> {
  const broughtUp = bringUp(records);
  return { ...openBook(broughtUp, first), records: broughtUp };
}

/**
 * The one door by which records become a book: those of the database, of a snapshot, of a backup and of a hand-over are brought up from
 * their version here, by what is fetched for an older one alone.
 * @param version the version of the model that they were kept in, whatever was found there
 */
export async function readKept(
  records: StoredRecords,
  version: unknown,
  first: Settings | null = null,
): Promise<Result<KeptBook, NotBroughtUp>> {
  const bringUp = await bringUpFrom(version);
  if (!bringUp.ok) return bringUp;
  return ok({ ...openKept(records, bringUp.value, first), version: Number(version) });
}

/** A book's records by their keys. */
export const recordsOf = (book: Book): Map<RecordKey, AnyRecord> =>
  new Map(
    collectionNames.flatMap((name) =>
      Object.entries(book[name]).map(([id, record]): [RecordKey, AnyRecord] => [`${name}/${id}`, record]),
    ),
  );

const FORMAT = 'rollwright backup';

/** Records of a version of the model as text (JSON, RFC 8259): what a backup and a snapshot hold. */
export const writeKept = (records: StoredRecords, version: number = MODEL_VERSION): string =>
  JSON.stringify({ format: FORMAT, version, records: Object.fromEntries(records) });

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

/** Whether something could not be read, and nothing is left but settings. */
const isLost = ({ book, setAside, fellBack }: Opened): boolean =>
  setAside.length + fellBack.length > 0 &&
  collectionNames.every((name) => name === 'settings' || Object.keys(book[name]).length === 0);

/**
 * Reads what {@link writeKept} wrote; `null` for text of anything else. Where nothing of it can be read, it is damaged.
 * @param first the settings that a shop begins with, to stand in for those that cannot be read
 */
export async function readWritten(
  text: string,
  first: Settings,
): Promise<Result<KeptBook, NotBroughtUp> | null> {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return null;
  }
  if (!isObject(value) || value.format !== FORMAT || !isObject(value.records)) return null;
  const kept = await readKept(new Map(Object.entries(value.records)), value.version, first);
  return kept.ok && isLost(kept.value) ? fail('damaged') : kept;
}
