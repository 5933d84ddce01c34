import { changeRecords, inSnapshots } from './change-records';
import { isObject } from './stored';

const withSizes = (placement: unknown): unknown =>
  isObject(placement) ? { ...placement, sizes: {} } : placement;

const inSnapshot = (snapshot: Record<string, unknown>): unknown =>
  Array.isArray(snapshot.placements)
    ? { ...snapshot, placements: snapshot.placements.map(withSizes) }
    : snapshot;

/** From version 42 on single sizes of a place are printed at widths of their own; until now they had their group's. */
export const widenSizes = changeRecords({
  placement: withSizes,
  run: (run) => inSnapshots(run, inSnapshot),
});
