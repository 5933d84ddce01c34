import { isObject, type Migration } from './stored';

/** Nobody was asked until now. */
function withCaps(station: unknown): unknown {
  if (!isObject(station) || !isObject(station.press)) return station;
  return { ...station, press: { ...station.press, caps: false } };
}

const completed = (run: Record<string, unknown>): Record<string, unknown> =>
  isObject(run.received)
    ? { ...run, received: { ...run.received, station: withCaps(run.received.station) } }
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

/** Version 43 knows whether a platen for caps is there. */
export const askForCaps: Migration = (records) =>
  new Map(
    [...records].map(([key, value]) => {
      if (!isObject(value)) return [key, value];
      if (key.startsWith('settings/') && isObject(value.station))
        return [key, { ...value, station: withCaps(value.station) }];
      if (key.startsWith('run/')) return [key, completed(value)];
      return key.startsWith('step/')
        ? [key, { ...value, redo: completedPatches(value.redo), undo: completedPatches(value.undo) }]
        : [key, value];
    }),
  );
