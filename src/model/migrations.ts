import type { RecordKey } from './book';

/** A book as it lies in storage, of any version: nothing is known of the values yet. */
export type StoredRecords = ReadonlyMap<RecordKey | string, unknown>;

type Migration = (records: StoredRecords) => StoredRecords;

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;

/**
 * Version 1 kept a film's side margins as one number.
 * Version 2 keeps the two sides apart, since printers feed off centre.
 */
const separateSideMargins: Migration = (records) =>
  new Map(
    [...records].map(([key, value]) => {
      if (!key.startsWith('film/') || !isObject(value) || !isObject(value.margins)) return [key, value];
      const { side, ...ends } = value.margins;
      return [key, { ...value, margins: { left: side, right: side, ...ends } }];
    }),
  );

/** `migrations[n]` takes version n + 1 to n + 2. Append only: what was shipped is never changed. */
const migrations: readonly Migration[] = [separateSideMargins];

export const MODEL_VERSION = migrations.length + 1;

/**
 * Brings stored records of an older version up to {@link MODEL_VERSION}, a step at a time.
 * @returns `null` if they are of a newer version, or of none: they may be looked at elsewhere, never written here
 */
export function migrate(records: StoredRecords, version: number): StoredRecords | null {
  if (!Number.isInteger(version) || version < 1 || version > MODEL_VERSION) return null;
  return migrations.slice(version - 1).reduce((current, migration) => migration(current), records);
}
