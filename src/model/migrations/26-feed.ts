import { isObject, type Migration } from './stored';

/** Of runs that are sent to print an image may have been written: at true length, since no other was. Of a draft one will be. */
const completed = (run: Record<string, unknown>): Record<string, unknown> => ({
  ...run,
  imageFeed: run.state === 'draft' ? null : 1,
  // A device that handed a run over told nothing of its printer.
  ...(isObject(run.received) ? { received: { ...run.received, stretch: 1 } } : {}),
});

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

/** Version 26 can make up in a run's image for what the printer feeds long or short, and remembers by how much it did. */
export const correctFeed: Migration = (records) =>
  new Map(
    [...records].map(([key, value]) => {
      if (!isObject(value)) return [key, value];
      if (key.startsWith('settings/') && isObject(value.printImage))
        return [key, { ...value, printImage: { ...value.printImage, feedCorrected: false } }];
      if (key.startsWith('run/')) return [key, completed(value)];
      return key.startsWith('step/')
        ? [key, { ...value, redo: completedPatches(value.redo), undo: completedPatches(value.undo) }]
        : [key, value];
    }),
  );
