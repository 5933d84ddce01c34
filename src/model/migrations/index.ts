import { fail, ok, type Result } from '../../units';
import type { StoredRecords } from './stored';

export type { StoredRecords } from './stored';

export const MODEL_VERSION = 47;

/**
 * Why records are not brought up. `newer`: of a newer version of the app; they may be looked at elsewhere, never written here. `damaged`:
 * of no version. `part-missing`: of an older one, and what brings them up could not be fetched.
 */
export type NotBroughtUp = 'newer' | 'damaged' | 'part-missing';

/** Brings stored records of one older version up to {@link MODEL_VERSION}, a step at a time. */
export type BringUp = (records: StoredRecords) => StoredRecords;

const asTheyAre: BringUp = (records) => records;

/** A part of the app of its own, which only a book of an older version needs. */
const fetchMigrations = () => import('./every-migration');

/**
 * What brings up records of a version, fetched before any of them is touched: it runs at once then, inside a transaction as well.
 * @param version the version of the model that they were kept in, whatever was found there
 */
export async function bringUpFrom(version: unknown): Promise<Result<BringUp, NotBroughtUp>> {
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) return fail('damaged');
  if (version > MODEL_VERSION) return fail('newer');
  if (version === MODEL_VERSION) return ok(asTheyAre);
  try {
    // On a busy machine the browser may give up a file that is there: it is asked for twice.
    const { migrations } = await fetchMigrations().catch(fetchMigrations);
    const steps = migrations.slice(version - 1);
    return ok((records) => steps.reduce((current, migration) => migration(current), records));
  } catch {
    return fail('part-missing');
  }
}
