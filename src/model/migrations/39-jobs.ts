import { changeRecords, inReceived, inSettings, inSnapshots } from './change-records';
import { isObject, type Migration } from './stored';

const HOUR = 3600;
/** In micrometres: the longest span to start with. */
const SPAN = 480_000;

/** The longest span that a roll of the book is cut into. */
const longestSpan = (records: ReadonlyMap<string, unknown>): number => {
  const spans = [...records].flatMap(([key, film]) =>
    key.startsWith('film/') && isObject(film) && typeof film.spanMax === 'number' ? [film.spanMax] : [],
  );
  return spans.length > 0 ? Math.max(...spans) : SPAN;
};

/** Wet time counted from the end of a span, and now does from its first ink. */
function completedStation(station: unknown, span: number): unknown {
  if (!isObject(station)) return station;
  const { printer, handling, wetLimit } = station;
  if (!isObject(printer) || !isObject(handling) || typeof wetLimit !== 'number') return station;
  const { perHour } = printer;
  const printed = typeof perHour === 'number' && perHour > 0 ? Math.round((HOUR * span) / perHour) : 0;
  return {
    ...station,
    printer: { ...printer, sends: null, feedsBack: null },
    handling: { ...handling, loose: 8 },
    wetLimit: wetLimit + printed,
    powderLimit: 1800,
    trays: 3,
  };
}

/** Until now a run was taken to be one job, whatever it was. */
const completedFilm = (film: unknown): unknown =>
  isObject(film) && film.kind === 'roll' ? { ...film, jobs: 'run' } : film;

const completedSnapshot = (snapshot: unknown): unknown =>
  isObject(snapshot) ? { ...snapshot, film: completedFilm(snapshot.film) } : snapshot;

/**
 * Version 39 knows how runs reach the printer, of a roll what is a job, how long powdered film may wait and on how many trays, and
 * counts wet time from the first ink.
 */
export const tellJobs: Migration = (records) => {
  const span = longestSpan(records);
  const completed = (station: unknown) => completedStation(station, span);
  return changeRecords({
    settings: (settings) => inSettings(settings, completed),
    film: completedFilm,
    run: (run) => inReceived(inSnapshots(run, completedSnapshot), completed),
  })(records);
};
