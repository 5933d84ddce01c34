import type { AtOnce } from '../../src/packing';
import type { planInWorkers } from '../../src/planning/browser';
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

/**
 * Looks for a layout in workers; what starts and hears them is fetched for the first.
 * @throws {PartMissing} if it cannot be fetched; {WorkerFailed} if a worker fails
 */
export const lookForPlan: typeof planInWorkers = async (problem, options) =>
  (await fetchPart(() => import('../../src/planning/browser'))).planInWorkers(problem, options);
