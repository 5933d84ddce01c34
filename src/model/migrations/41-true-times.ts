import { isObject, type Migration } from './stored';

/** What the hands took to start with. A shop that has put in no time of its own begins with those of now. */
const STARTED = { cutOff: 30, powder: 75, load: 20, cutApart: 10, dress: 15, place: 8, pack: 15 };
const ALLOWANCE = 0.12;

/** Times that the shop has measured hold its rests already, and its copies as it cuts them out. */
function completedStation(station: unknown): unknown {
  if (!isObject(station) || !isObject(station.handling)) return station;
  const { handling } = station;
  const isStarted = Object.entries(STARTED).every(([name, seconds]) => handling[name] === seconds);
  const cutting = handling.cutApart === STARTED.cutApart ? { cutApart: 5, cutMetre: 10 } : { cutMetre: 0 };
  return { ...station, handling: { ...handling, ...cutting }, allowance: isStarted ? ALLOWANCE : 0 };
}

const completedRun = (run: Record<string, unknown>): Record<string, unknown> =>
  isObject(run.received)
    ? { ...run, received: { ...run.received, station: completedStation(run.received.station) } }
    : run;

const withNobody = (tick: unknown): unknown => (isObject(tick) ? { ...tick, by: '' } : tick);

/** What was handed over and waits to be taken in. */
const completedAside = (aside: Record<string, unknown>): Record<string, unknown> => ({
  ...aside,
  ...(Array.isArray(aside.ticks) ? { ticks: aside.ticks.map(withNobody) } : {}),
});

/** A step may bring a run back, or ticks that waited. */
const completedPatches = (patches: unknown): unknown =>
  Array.isArray(patches)
    ? patches.map((patch) => {
        if (!isObject(patch) || !Array.isArray(patch.path) || patch.path.length !== 2) return patch;
        if (!isObject(patch.value)) return patch;
        if (patch.path[0] === 'run') return { ...patch, value: completedRun(patch.value) };
        if (patch.path[0] === 'tick') return { ...patch, value: withNobody(patch.value) };
        return patch.path[0] === 'aside' ? { ...patch, value: completedAside(patch.value) } : patch;
      })
    : patches;

/**
 * Version 41 counts rest and hitches, and the line along which copies are cut out, knows who ticked what, and what a check that failed
 * took.
 */
export const timeTruly: Migration = (records) =>
  new Map(
    [...records].map(([key, value]) => {
      if (!isObject(value)) return [key, value];
      if (key.startsWith('settings/') && isObject(value.station))
        return [key, { ...value, station: completedStation(value.station) }];
      if (key.startsWith('run/')) return [key, completedRun(value)];
      if (key.startsWith('tick/')) return [key, withNobody(value)];
      if (key.startsWith('aside/')) return [key, completedAside(value)];
      if (key.startsWith('upkeep/')) return [key, { ...value, failed: null }];
      return key.startsWith('step/')
        ? [key, { ...value, redo: completedPatches(value.redo), undo: completedPatches(value.undo) }]
        : [key, value];
    }),
  );
