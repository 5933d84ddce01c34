import type { Migration } from './stored';

/** Version 33 takes a page of a PDF as artwork; none of an older version was one. */
export const takePdf: Migration = (records) => records;
