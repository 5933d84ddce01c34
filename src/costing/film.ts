import type { Film } from '../model';
import { costOf, type Micrometres, type Minor } from '../units';

/** What a length of a film costs, rounded once to whole minor units. */
export const filmCost = (length: Micrometres, film: Pick<Film, 'price'>): Minor => costOf(length, film.price);
