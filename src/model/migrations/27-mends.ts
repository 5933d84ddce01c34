import { isObject, type Migration } from './stored';

/** What an image was made from, and how: until now by knocking a colour out. */
function told(madeFrom: unknown): unknown {
  if (!isObject(madeFrom)) return madeFrom;
  const { artwork, ...knockOut } = madeFrom;
  return { artwork, by: { kind: 'knock-out', ...knockOut } };
}

const completed = (artwork: Record<string, unknown>): Record<string, unknown> => ({
  ...artwork,
  madeFrom: told(artwork.madeFrom),
});

/** A step may bring an image back, or say anew what one was made from. */
const completedPatches = (patches: unknown): unknown =>
  Array.isArray(patches)
    ? patches.map((patch) => {
        if (!isObject(patch) || !Array.isArray(patch.path) || patch.path[0] !== 'artwork') return patch;
        if (patch.path.length === 2 && isObject(patch.value))
          return { ...patch, value: completed(patch.value) };
        return patch.path.length === 3 && patch.path[2] === 'madeFrom'
          ? { ...patch, value: told(patch.value) }
          : patch;
      })
    : patches;

/** Version 27 can mend an image in several ways, and remembers in which. */
export const tellMends: Migration = (records) =>
  new Map(
    [...records].map(([key, value]) => {
      if (!isObject(value)) return [key, value];
      if (key.startsWith('artwork/')) return [key, completed(value)];
      return key.startsWith('step/')
        ? [key, { ...value, redo: completedPatches(value.redo), undo: completedPatches(value.undo) }]
        : [key, value];
    }),
  );
