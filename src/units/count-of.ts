import { onceFor } from './once-for';

/** How many records a table has, counted once: of thousands no list is made by each who asks. */
export const countOf = onceFor((records: Readonly<Record<string, unknown>>) => Object.keys(records).length);
