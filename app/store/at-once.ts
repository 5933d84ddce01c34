import type { AtOnce } from '../../src/packing';
import { fetchPart } from '../offline/part';
import { sayFailed } from './failures';

/**
 * Fetches what the engine does at once, which no screen needs before it is asked for.
 * @throws {PartMissing} if it cannot be fetched
 */
export const fetchAtOnce = async (): Promise<AtOnce> =>
  (await fetchPart(() => import('../../src/planning'))).atOnce;

/** The same; where it cannot be fetched, that is said, and there is none. */
export async function atOnceOrSaid(): Promise<AtOnce | null> {
  try {
    return await fetchAtOnce();
  } catch (error) {
    sayFailed('layout', error);
    return null;
  }
}
