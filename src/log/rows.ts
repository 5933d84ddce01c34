import type { Book, Closing } from '../model';
import { inOrder } from '../units';

/** A closed run as the log tells it. */
export interface LogRow {
  readonly closing: Closing;
  /** `1 - copy area / film area`, of the film that was really used; between 0 and 1. */
  readonly waste: number;
  readonly plannedWaste: number;
  /** Copies that came to nothing. */
  readonly spoiled: number;
}

const SQUARE_MICROMETRES = 1e6;

/** Share of a run's film that its copies left unprinted; 0 where there is no film. */
function wasteOf({ film, work }: Closing, length: number): number {
  const area = (film.width * length) / SQUARE_MICROMETRES;
  return area > 0 ? Math.max(0, 1 - work.copyArea / area) : 0;
}

/** Closed runs, the latest first. */
export const logRows = (closings: Book['closing']): LogRow[] =>
  Object.values(closings)
    .sort((a, b) => inOrder(b.at, a.at) || inOrder(a.id, b.id))
    .map((closing) => ({
      closing,
      waste: wasteOf(closing, closing.actual.film),
      plannedWaste: wasteOf(closing, closing.planned.film),
      spoiled: closing.spoiled.reduce((sum, { copies }) => sum + copies, 0),
    }));
