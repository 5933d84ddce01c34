import { isObject, type Migration } from './stored';

/** From here a transfer is pressed as a large one: 200 mm until now, in shops of inches 8 in. */
const LARGE = { mm: 200_000, in: 203_200 };

function withLarge(station: unknown, large: number): unknown {
  if (!isObject(station) || !isObject(station.press)) return station;
  return { ...station, press: { ...station.press, large } };
}

/** A run that another device has received works with that one's station, which goes on as it did. */
const completed = (run: Record<string, unknown>): Record<string, unknown> =>
  isObject(run.received)
    ? { ...run, received: { ...run.received, station: withLarge(run.received.station, LARGE.mm) } }
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

/** Version 38 lets the shop say from which size a transfer is pressed as a large one. */
export const askForLarge: Migration = (records) =>
  new Map(
    [...records].map(([key, value]) => {
      if (!isObject(value)) return [key, value];
      if (key.startsWith('settings/') && isObject(value.station))
        return [
          key,
          { ...value, station: withLarge(value.station, LARGE[value.unit === 'in' ? 'in' : 'mm']) },
        ];
      if (key.startsWith('run/')) return [key, completed(value)];
      return key.startsWith('step/')
        ? [key, { ...value, redo: completedPatches(value.redo), undo: completedPatches(value.undo) }]
        : [key, value];
    }),
  );
