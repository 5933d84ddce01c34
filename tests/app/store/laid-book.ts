import { setPlaces } from '../../../src/editing';
import { layRun, placesOf, problemOf } from '../../../src/layout';
import { type Book, runOf } from '../../../src/model';
import { createPlanner } from '../../../src/packing';
import { type DayWork, dayWork } from '../../../src/pressing';
import { edited, smallBook } from '../../editing/book';
import { people } from '../../pressing/stations';

/** The small book with all its copies on the film, and the id of its run. */
export function laidBook(): { book: Book; run: string } {
  const { book } = smallBook();
  const open = runOf(book, null);
  if (!open) throw new Error('no run');
  const own = problemOf(book, open.run, open.film, 'pinned');
  const places = placesOf(createPlanner(own.problem, 1).best(), own, open.film);
  return { book: edited(book, (draft) => setPlaces(draft, open.run.id, places)), run: open.run.id };
}

/** The day of its run at eight, with so many hands. */
export function dayOfHands(hands: number): DayWork {
  const { book, run } = laidBook();
  const own = book.run[run];
  const laid = own && layRun(book, own);
  const station = Object.values(book.settings)[0]?.station;
  if (!laid || !station) throw new Error('nothing laid');
  return dayWork([{ laid, station, done: new Map(), on: new Map() }], {
    station: { ...station, ...people(hands) },
    origin: new Date('2026-11-25T00:00:00'),
    now: 8 * 3600,
    runOrder: [],
  });
}

/** A day on which nothing is to be done. */
export const emptyDay = (): DayWork => {
  const { work } = dayOfHands(1);
  return { work: { ...work, jobs: [], problem: { ...work.problem, tasks: [] } }, runs: [], without: [] };
};
