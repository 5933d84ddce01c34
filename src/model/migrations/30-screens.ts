import type { Migration } from './stored';

/** Version 30 can call it meant that dots or holes of a screen are small; none of an older version did. */
export const knowScreens: Migration = (records) => records;
