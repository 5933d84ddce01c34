import { type ComponentType, type LazyExoticComponent, lazy } from 'react';
import { fetchPart } from '../offline/part';

/** A component in a part of its own, fetched when it is first shown. */
export const part = (fetch: () => Promise<ComponentType>): LazyExoticComponent<ComponentType> =>
  lazy(async () => ({ default: await fetchPart(fetch) }));
