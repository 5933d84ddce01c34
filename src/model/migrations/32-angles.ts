import { isObject, type Migration } from './stored';

/** Tenths of a degree. */
const angleOf = (turned: unknown): number => (turned === true ? 900 : 0);

/** Places wherever they are: in copies, in what runs embed, in what a step takes back. */
function withAngles(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withAngles);
  if (!isObject(value)) return value;
  const entries = Object.entries(value).map(([name, inner]) => [name, withAngles(inner)] as const);
  const isPlace = typeof value.turned === 'boolean' && 'pinned' in value;
  return Object.fromEntries(
    isPlace
      ? entries.map((entry) => (entry[0] === 'turned' ? ['angle', angleOf(entry[1])] : entry))
      : entries,
  );
}

/** Patches of a step, one of which may be of a place's turn alone. */
const patchesWithAngles = (patches: unknown): unknown =>
  Array.isArray(patches)
    ? patches.map((patch) => {
        const isTurn = isObject(patch) && Array.isArray(patch.path) && patch.path.at(-1) === 'turned';
        return isTurn && Array.isArray(patch.path)
          ? { ...patch, path: [...patch.path.slice(0, -1), 'angle'], value: angleOf(patch.value) }
          : withAngles(patch);
      })
    : patches;

const PLACES = /^(copy|run|step)\//;

/** Version 32 lays copies at any angle: until now they were turned by a quarter, or not. */
export const layAtAngles: Migration = (records) =>
  new Map(
    [...records].map(([key, value]) => {
      if (!PLACES.test(key) || !isObject(value)) return [key, value];
      if (!key.startsWith('step/')) return [key, withAngles(value)];
      return [key, { ...value, redo: patchesWithAngles(value.redo), undo: patchesWithAngles(value.undo) }];
    }),
  );
