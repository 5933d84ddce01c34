import type { Migration } from './stored';

/** Version 24 lets film be asked to have what is due soonest first; what was asked of it before is so still. */
export const allowDueFirst: Migration = (records) => records;
