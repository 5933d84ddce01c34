import { type ComponentType, type LazyExoticComponent, lazy } from 'react';

/** A part of the app could not be fetched: it is gone, perhaps after an update, or there is no way to it. */
export class PartMissing extends Error {}

/** A component in a part of its own, fetched when it is first shown; a part that cannot be fetched fails as {@link PartMissing}. */
export const part = (fetch: () => Promise<ComponentType>): LazyExoticComponent<ComponentType> =>
  lazy(() =>
    fetch().then(
      (component) => ({ default: component }),
      (cause) => {
        throw new PartMissing('a part of the app could not be fetched', { cause });
      },
    ),
  );
