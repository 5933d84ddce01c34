import { isObject, type Migration } from './stored';

const withoutOutlines = (snapshot: unknown): unknown =>
  isObject(snapshot) ? { ...snapshot, outlines: {} } : snapshot;

const completedRun = (run: Record<string, unknown>): Record<string, unknown> => ({
  ...run,
  laidBy: 'boxes',
  ...('snapshot' in run ? { snapshot: withoutOutlines(run.snapshot) } : {}),
  ...(isObject(run.printed) && Array.isArray(run.printed.as)
    ? { printed: { ...run.printed, as: run.printed.as.map(withoutOutlines) } }
    : {}),
});

const completedArtwork = (artwork: Record<string, unknown>): Record<string, unknown> => ({
  ...artwork,
  outline: null,
});

/** A step may bring an image or a run back. */
const completedPatches = (patches: unknown): unknown =>
  Array.isArray(patches)
    ? patches.map((patch) => {
        if (!isObject(patch) || !Array.isArray(patch.path) || patch.path.length !== 2) return patch;
        if (!isObject(patch.value)) return patch;
        if (patch.path[0] === 'run') return { ...patch, value: completedRun(patch.value) };
        return patch.path[0] === 'artwork' ? { ...patch, value: completedArtwork(patch.value) } : patch;
      })
    : patches;

/** Version 31 can lay copies out by their outlines: until now all were laid out by their boxes. */
export const layByOutlines: Migration = (records) =>
  new Map(
    [...records].map(([key, value]) => {
      if (!isObject(value)) return [key, value];
      if (key.startsWith('run/')) return [key, completedRun(value)];
      if (key.startsWith('artwork/')) return [key, completedArtwork(value)];
      return key.startsWith('step/')
        ? [key, { ...value, redo: completedPatches(value.redo), undo: completedPatches(value.undo) }]
        : [key, value];
    }),
  );
