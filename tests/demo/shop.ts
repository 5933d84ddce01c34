import { demoStock as stockWords, demo as words } from '../../app/words/en/demo';
import { firstBook } from '../../src/demo';
import { firstFilm } from '../../src/editing';
import { firstSettings } from '../../src/editing/first-settings';
import { placesOf, problemOf } from '../../src/layout';
import { asId, type Book, runOf } from '../../src/model';
import { atOnce } from '../../src/packing';
import type { LocalDate } from '../../src/units';
import { NOW } from '../editing/book';

const locales = { mm: 'en-GB', in: 'en-US' } as const;

/** The book of the demo day as a first visitor has it. */
export function demoShop(unit: keyof typeof locales): Book {
  const settings = { ...firstSettings(locales[unit], 'en'), locale: locales[unit] };
  if (settings.unit !== unit) throw new Error(`a shop that measures in ${settings.unit}`);
  const film = firstFilm('Roll', settings.currency, settings.unit);
  return firstBook(
    { settings, film, runName: 'Run 1' },
    {
      dayFrom: (days) =>
        new Date(Date.parse(NOW) + days * 86_400_000).toISOString().slice(0, 10) as LocalDate,
      unit,
      words,
      stockWords,
      typed: (length) => `${length}`,
    },
    { now: NOW, newId: <Kind extends string>() => asId<Kind>(crypto.randomUUID()) },
  );
}

/** The demo day's run as the engine first lays it. */
export function laidByEngine(book: Book) {
  const open = runOf(book, null);
  if (!open) throw new Error('no run');
  const copy = Object.fromEntries(
    Object.entries(book.copy).map(([id, own]) => [
      id,
      { ...own, state: 'waiting' as const, run: null, place: null },
    ]),
  );
  const bare: Book = { ...book, copy };
  const own = problemOf(bare, open.run, open.film, 'pinned');
  const plan = atOnce.firstPlan(own.problem);
  return { book: bare, ...open, plan, places: placesOf(plan, own, open.film) };
}
