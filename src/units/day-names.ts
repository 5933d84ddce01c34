import { withoutAccents } from './text';

/** Months and days of the week in the languages of the app, without accents; three letters of each are enough. */
const MONTHS = [
  ['january', 'enero'],
  ['february', 'febrero'],
  ['march', 'marzo'],
  ['april', 'abril'],
  ['may', 'mayo'],
  ['june', 'junio'],
  ['july', 'julio'],
  ['august', 'agosto'],
  ['september', 'septiembre', 'setiembre'],
  ['october', 'octubre'],
  ['november', 'noviembre'],
  ['december', 'diciembre'],
];
const WEEKDAYS = [
  ['sunday', 'domingo'],
  ['monday', 'lunes'],
  ['tuesday', 'martes'],
  ['wednesday', 'miercoles'],
  ['thursday', 'jueves'],
  ['friday', 'viernes'],
  ['saturday', 'sabado'],
];
const RELATIVE = [
  ['today', 'hoy'],
  ['tomorrow', 'manana'],
];

const plain = (word: string): string => withoutAccents(word).toLowerCase().replace(/\.$/, '');

function placeIn(names: readonly (readonly string[])[], word: string): number | null {
  const wanted = plain(word);
  const at = wanted.length < 3 ? -1 : names.findIndex((all) => all.some((name) => name.startsWith(wanted)));
  return at < 0 ? null : at;
}

/** The month a word names, from 1; `null` if it names none. */
export function monthNamed(word: string): number | null {
  const at = placeIn(MONTHS, word);
  return at === null ? null : at + 1;
}

/** The day of the week a word names, from 0 for Sunday; `null` if it names none. */
export const weekdayNamed = (word: string): number | null => placeIn(WEEKDAYS, word);

/** How many days from today a word names: `today` or `tomorrow`; `null` for any other. */
export function daysFromToday(word: string): number | null {
  const at = RELATIVE.findIndex((all) => all.includes(plain(word)));
  return at < 0 ? null : at;
}
