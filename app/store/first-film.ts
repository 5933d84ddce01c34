import { type FilmFields, firstFilm } from '../../src/editing';
import { wordsNow } from '../words';
import { waysNow } from './selectors';

/** The roll that a book begins with, in the words and the ways of the shop. */
export function firstFilmNow(): FilmFields {
  const { unit, currency } = waysNow();
  return firstFilm(wordsNow().film.firstFilm[unit], currency, unit);
}
