import type { Hours, Stretch } from '../../../src/model';
import { fail, isDay, type LocalDate, ok, parseHours } from '../../../src/units';
import type { Words } from '../../words';
import { timeOfDay } from '../../words/format';
import { type Codec, told } from './codec';
import { type Place, place } from './place';

/** The hours of a day: stretches with breaks between them; nothing typed is a day that is closed. */
export const hours: Codec<Stretch[]> = {
  show: (stretches, ways) =>
    stretches.map(({ from, to }) => `${timeOfDay(from, ways)}–${timeOfDay(to, ways)}`).join(', '),
  read: (text, { words }) => told(parseHours(text), words.hoursProblems),
};

const isLocalDate = (text: string): text is LocalDate => isDay(text);

/** Days as the calendar writes them, the earliest first. */
export const days = (problem: (words: Words, day: string) => string): Codec<LocalDate[]> => ({
  show: (list) => list.join(', '),
  read(text, { words }) {
    const parts = text.split(/[\s,;]+/).filter((part) => part !== '');
    const wrong = parts.find((part) => !isLocalDate(part));
    return wrong === undefined
      ? ok([...new Set(parts.filter(isLocalDate))].sort())
      : fail(problem(words, wrong));
  },
});

/** A weekday of a week, from Monday as 0. */
export const onWeekday = <Whole>(week: Place<Whole, Hours['week']>, day: number): Place<Whole, Stretch[]> =>
  place(
    (whole) => week.get(whole)?.[day],
    (whole, own) => {
      const all = week.get(whole);
      return all ? week.put(whole, all.with(day, own)) : whole;
    },
  );
