import type { Artwork } from '../../model';

/** Kinds of artwork that have no pixels of their own: they are drawn as large as they are wanted. */
export type Drawn = 'svg' | 'pdf';

export const drawnAs = (kind: Artwork['kind']): Drawn | null =>
  kind === 'svg' || kind === 'pdf' ? kind : null;
