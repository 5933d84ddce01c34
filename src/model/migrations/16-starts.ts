import { isNoStep, isObject, type Migration } from './stored';

/** Up to version 15 nothing counted the ink that each run takes to start. From version 16 on a shop can; it begins with none. */
export const countStarts: Migration = (records) => {
  const withStart = (costs: unknown) =>
    isObject(costs) && isObject(costs.maintenance)
      ? { ...costs, maintenance: { start: { colour: 0, white: 0 }, ...costs.maintenance } }
      : costs;
  return new Map(
    [...records].filter(isNoStep).map(([key, value]) => {
      if (!isObject(value)) return [key, value];
      if (key.startsWith('settings/')) return [key, { ...value, costs: withStart(value.costs) }];
      if (!key.startsWith('run/') || !isObject(value.basis)) return [key, value];
      return [key, { ...value, basis: { ...value.basis, costs: withStart(value.basis.costs) } }];
    }),
  );
};
