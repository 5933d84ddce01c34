import { type ComponentType, type LazyExoticComponent, lazy } from 'react';
import { fetchAllWords } from '../words';

/** A part of the app could not be fetched: it is gone, perhaps after an update, or there is no way to it. */
export class PartMissing extends Error {}

/** How long is waited before a part is asked for again, in milliseconds: on a busy machine the browser may give up one that is there. */
const PAUSES = [200, 1_000];

/**
 * Fetches a part of the app when it is needed first.
 * @throws {PartMissing} if it cannot be fetched, asked for again too
 */
export async function fetchPart<Part>(fetch: () => Promise<Part>): Promise<Part> {
  for (const pause of PAUSES) {
    try {
      return await fetch();
    } catch {
      await new Promise((resume) => setTimeout(resume, pause));
    }
  }
  return await fetch().catch((cause) => {
    throw new PartMissing('a part of the app could not be fetched', { cause });
  });
}

/**
 * A component in a part of its own, fetched when it is first shown.
 * @param when settles once it may be fetched
 */
export const part = <Props extends object>(
  fetch: () => Promise<ComponentType<Props>>,
  when: () => Promise<void> = () => Promise.resolve(),
): LazyExoticComponent<ComponentType<Props>> =>
  lazy(async () => {
    await when();
    const [shown] = await fetchPart(() => Promise.all([fetch(), fetchAllWords()]));
    return { default: shown };
  });
