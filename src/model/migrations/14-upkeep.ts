import type { Migration } from './stored';

/**
 * Records of upkeep and of calibration are new, and none of those before change. The number alone keeps an older app from a book
 * that it would read in part.
 */
export const noteUpkeep: Migration = (records) => records;
