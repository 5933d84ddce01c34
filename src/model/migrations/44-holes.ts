import { changeRecords } from './change-records';

/** Version 44 knows by which way of finding them outlines were found: those of until now had no holes, nor were their islands tied. */
export const findHoles = changeRecords({
  artwork: (artwork) => ({ ...artwork, outlinedBy: artwork.outline === null ? 0 : 1 }),
});
