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

const completedRun = (run: Record<string, unknown>, span: number): Record<string, unknown> => ({
  ...run,
  ...('snapshot' in run ? { snapshot: completedSnapshot(run.snapshot) } : {}),
  ...(isObject(run.printed) && Array.isArray(run.printed.as)
    ? { printed: { ...run.printed, as: run.printed.as.map(completedSnapshot) } }
    : {}),
  ...(isObject(run.received)
    ? { received: { ...run.received, station: completedStation(run.received.station, span) } }
    : {}),
});

/** A step may bring a film or a run back. */
const completedPatches = (patches: unknown, span: number): unknown =>
  Array.isArray(patches)
    ? patches.map((patch) => {
        if (!isObject(patch) || !Array.isArray(patch.path) || patch.path.length !== 2) return patch;
        if (!isObject(patch.value)) return patch;
        if (patch.path[0] === 'run') return { ...patch, value: completedRun(patch.value, span) };
        return patch.path[0] === 'film' ? { ...patch, value: completedFilm(patch.value) } : patch;
      })
    : patches;

/**
 * Version 39 knows how runs reach the printer, of a roll what is a job, how long powdered film may wait and on how many trays, and
 * counts wet time from the first ink.
 */
export const tellJobs: Migration = (records) => {
  const span = longestSpan(records);
  return new Map(
    [...records].map(([key, value]) => {
      if (!isObject(value)) return [key, value];
      if (key.startsWith('settings/') && isObject(value.station))
        return [key, { ...value, station: completedStation(value.station, span) }];
      if (key.startsWith('film/')) return [key, completedFilm(value)];
      if (key.startsWith('run/')) return [key, completedRun(value, span)];
      return key.startsWith('step/')
        ? [
            key,
            { ...value, redo: completedPatches(value.redo, span), undo: completedPatches(value.undo, span) },
          ]
        : [key, value];
    }),
  );
};
