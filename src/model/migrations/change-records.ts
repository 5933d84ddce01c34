import { isObject, type Migration } from './stored';

type Stored = Record<string, unknown>;
type Change = (record: Stored) => unknown;

/** Changes whole records of some collections, as they are stored and as steps of undo may bring them back. */
export function changeRecords(changes: Readonly<Record<string, Change>>): Migration {
  const changed = (collection: unknown, record: Stored): unknown =>
    typeof collection === 'string' && Object.hasOwn(changes, collection)
      ? changes[collection]?.(record)
      : record;
  const inPatches = (patches: unknown): unknown =>
    Array.isArray(patches)
      ? patches.map((patch) =>
          isObject(patch) && Array.isArray(patch.path) && patch.path.length === 2 && isObject(patch.value)
            ? { ...patch, value: changed(patch.path[0], patch.value) }
            : patch,
        )
      : patches;
  return (records) =>
    new Map(
      [...records].map(([key, value]) => {
        if (!isObject(value)) return [key, value];
        return key.startsWith('step/')
          ? [key, { ...value, redo: inPatches(value.redo), undo: inPatches(value.undo) }]
          : [key, changed(key.slice(0, key.indexOf('/')), value)];
      }),
    );
}

/** What a run was locked with, now and before each time that it was printed in part. */
export const inSnapshots = (run: Stored, change: Change): Stored => ({
  ...run,
  ...(isObject(run.snapshot) ? { snapshot: change(run.snapshot) } : {}),
  ...(isObject(run.printed) && Array.isArray(run.printed.as)
    ? {
        printed: {
          ...run.printed,
          as: run.printed.as.map((snapshot) => (isObject(snapshot) ? change(snapshot) : snapshot)),
        },
      }
    : {}),
});

/** The station that a run of another device goes on with. */
export const inReceived = (run: Stored, change: Change): Stored =>
  isObject(run.received) && isObject(run.received.station)
    ? { ...run, received: { ...run.received, station: change(run.received.station) } }
    : run;

/** The station of the shop. */
export const inSettings = (settings: Stored, change: Change): Stored =>
  isObject(settings.station) ? { ...settings, station: change(settings.station) } : settings;
