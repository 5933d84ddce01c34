import { type ComponentType, createElement, type FunctionComponent, lazy, useState } from 'react';
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

interface Part<Props> extends FunctionComponent<Props> {
  /** Fetches it before it is shown: it is shown at once then, instead of a moment behind nothing. */
  readonly ahead: () => void;
}

/** The same component as long as it is shown: what comes in meanwhile makes no other of it. */
function Drawn<Props extends object>({ by, props }: { by: () => ComponentType<Props>; props: Props }) {
  const [shown] = useState(by);
  return createElement(shown, props);
}

/**
 * A component in a part of its own, fetched when it is first shown.
 * @param when settles once it may be fetched
 */
export function part<Props extends object>(
  fetch: () => Promise<ComponentType<Props>>,
  when: () => Promise<void> = () => Promise.resolve(),
): Part<Props> {
  let fetched: ComponentType<Props> | null = null;
  const load = async () => {
    await when();
    [fetched] = await fetchPart(() => Promise.all([fetch(), fetchAllWords()]));
    return { default: fetched };
  };
  const late = lazy(load);
  const by = () => fetched ?? late;
  const shown = (props: Props) => createElement(Drawn<Props>, { by, props });
  return Object.assign(shown, { ahead: () => void load().catch(() => undefined) });
}
