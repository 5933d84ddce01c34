import type { Film } from './records';

/** Whether film is cut apart by lines from edge to edge alone. */
export const isCutStraight = ({ cutting }: Pick<Film, 'cutting'>): boolean =>
  cutting === 'straight' || cutting === 'staged';

/** Whether copies are laid out by their outlines. */
export const isCutByOutline = ({ cutting }: Pick<Film, 'cutting'>): boolean =>
  cutting === 'outlines' || cutting === 'in-holes';
