import { asMinor, costOf, type Micrometres, type Minor } from '../units';
import type { Film, Roll } from './records';

/** What a length of a roll costs, rounded once to whole minor units. */
export const filmCost = (length: Micrometres, roll: Pick<Roll, 'price'>): Minor => costOf(length, roll.price);

/** What a run's film costs: a roll by its length, sheets by how many are used. */
export const runCost = (
  film: Film,
  used: { readonly length: Micrometres; readonly sheets: number },
): Minor => (film.kind === 'roll' ? filmCost(used.length, film) : asMinor(used.sheets * film.price));
