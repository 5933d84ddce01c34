import { isObject, type Migration } from './stored';

const WEEKDAYS = 5;
const OPENS = '08:00';
const LAST = '23:59';

/** Open from Monday to Friday until the time at which the day's orders were due; the shop had told no more of its hours. */
function withHours(station: unknown): unknown {
  if (!isObject(station)) return station;
  const { closes, ...kept } = station;
  const to = typeof closes === 'string' && closes !== '00:00' ? closes : LAST;
  const open = [{ from: to > OPENS ? OPENS : '00:00', to }];
  const week = Array.from({ length: 7 }, (_, day) => (day < WEEKDAYS ? open : []));
  return { hours: { week, closed: [] }, ...kept };
}

const completed = (run: Record<string, unknown>): Record<string, unknown> =>
  isObject(run.received)
    ? { ...run, received: { ...run.received, station: withHours(run.received.station) } }
    : run;

/** A step may bring a run back that was removed. */
const completedPatches = (patches: unknown): unknown =>
  Array.isArray(patches)
    ? patches.map((patch) =>
        isObject(patch) &&
        Array.isArray(patch.path) &&
        patch.path[0] === 'run' &&
        patch.path.length === 2 &&
        isObject(patch.value)
          ? { ...patch, value: completed(patch.value) }
          : patch,
      )
    : patches;

/** Version 29 knows when the shop is open, by weekday, and in which order its runs shall come. */
export const keepHours: Migration = (records) =>
  new Map(
    [...records].map(([key, value]) => {
      if (!isObject(value)) return [key, value];
      if (key.startsWith('settings/') && isObject(value.station))
        return [key, { ...value, runOrder: [], station: withHours(value.station) }];
      if (key.startsWith('run/')) return [key, completed(value)];
      return key.startsWith('step/')
        ? [key, { ...value, redo: completedPatches(value.redo), undo: completedPatches(value.undo) }]
        : [key, value];
    }),
  );
