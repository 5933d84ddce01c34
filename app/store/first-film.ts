import { type FilmFields, firstFilm } from '../../src/editing';
import type { Settings } from '../../src/model';
import { wordsNow } from '../words';

/** The roll that a shop begins with, in its words and its ways. */
export const firstFilmOf = ({ unit, currency }: Pick<Settings, 'unit' | 'currency'>): FilmFields =>
  firstFilm(wordsNow().film.firstFilm[unit], currency, unit);
