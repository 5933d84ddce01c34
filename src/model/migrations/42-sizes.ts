import { isObject, type Migration } from './stored';

const withSizes = (placement: unknown): unknown =>
  isObject(placement) ? { ...placement, sizes: {} } : placement;

const inSnapshot = (snapshot: unknown): unknown =>
  isObject(snapshot) && Array.isArray(snapshot.placements)
    ? { ...snapshot, placements: snapshot.placements.map(withSizes) }
    : snapshot;

const inRun = (run: Record<string, unknown>): Record<string, unknown> => ({
  ...run,
  ...('snapshot' in run ? { snapshot: inSnapshot(run.snapshot) } : {}),
  ...(isObject(run.printed) && Array.isArray(run.printed.as)
    ? { printed: { ...run.printed, as: run.printed.as.map(inSnapshot) } }
    : {}),
});

/** A step may bring a place or a run back. */
const inPatches = (patches: unknown): unknown =>
  Array.isArray(patches)
    ? patches.map((patch) => {
        if (!isObject(patch) || !Array.isArray(patch.path) || patch.path.length !== 2) return patch;
        if (!isObject(patch.value)) return patch;
        if (patch.path[0] === 'placement') return { ...patch, value: withSizes(patch.value) };
        return patch.path[0] === 'run' ? { ...patch, value: inRun(patch.value) } : patch;
      })
    : patches;

/** From version 42 on single sizes of a place are printed at widths of their own; until now they had their group's. */
export const widenSizes: Migration = (records) =>
  new Map(
    [...records].map(([key, value]) => {
      if (!isObject(value)) return [key, value];
      if (key.startsWith('placement/')) return [key, withSizes(value)];
      if (key.startsWith('run/')) return [key, inRun(value)];
      return key.startsWith('step/')
        ? [key, { ...value, redo: inPatches(value.redo), undo: inPatches(value.undo) }]
        : [key, value];
    }),
  );
