/** What ticks name: a subject is a job's key, or one of these. */

/** The tick that says when a run was begun. */
export const BEGUN = 'begun';

/** The tick that says that the printer is warm and its nozzles were looked at. */
export const READY = 'ready';

const PRINT = 'print/';

/** The tick that says that a span is printed. */
export const printKey = (span: number): string => `${PRINT}${span}`;

/** Whether a tick says that a span is printed. */
export const isPrintKey = (subject: string): boolean => subject.startsWith(PRINT);

/** Whether a tick says that a run has been at its printer. */
export const isAtPrinter = (subject: string): boolean => subject === READY || isPrintKey(subject);

/** The tick that says that a span is cut apart. */
export const apartKey = (span: number): string => `apart/${span}`;

/** What is ticked while a span is cut apart. */
export const cutKey = {
  copy: (copy: string): string => `copy/${copy}`,
  cut: (span: number, number: number): string => `cut/${span}/${number}`,
};

const PACK = 'pack/';

/** What is ticked when an order is packed. */
export const packKey = (order: string): string => `${PACK}${order}`;

/** The order whose packing a tick is about; `null` for other ticks. */
export const orderOfPack = (subject: string): string | null =>
  subject.startsWith(PACK) ? subject.slice(PACK.length) : null;
