import { isObject, type Migration } from './stored';

/** The ids of copies that a run embedded when it was printed in part, or locked. */
function embeddedIn(run: Readonly<Record<string, unknown>>): Set<unknown> {
  const printed = isObject(run.printed) && Array.isArray(run.printed.as) ? run.printed.as : [];
  return new Set(
    [...printed, run.snapshot].flatMap((part) =>
      isObject(part) && Array.isArray(part.copies)
        ? part.copies.map((copy: unknown) => (isObject(copy) ? copy.id : undefined))
        : [],
    ),
  );
}

/**
 * Version 25 lets go of copies that were put on a run after it was sent to print: it does not print them, and no act could move them.
 * Undo stays: it puts such a copy where it is now.
 */
export const letGoOfUnprinted: Migration = (records) => {
  const embedded = new Map(
    [...records].flatMap(([key, run]) =>
      key.startsWith('run/') && isObject(run) && run.state !== 'draft' && isObject(run.snapshot)
        ? [[run.id, embeddedIn(run)] as const]
        : [],
    ),
  );
  return new Map(
    [...records].map(([key, value]) => {
      if (!key.startsWith('copy/') || !isObject(value) || value.state !== 'placed') return [key, value];
      const printed = embedded.get(value.run);
      const isAstray = printed !== undefined && !printed.has(value.id);
      return [key, isAstray ? { ...value, state: 'waiting', run: null, place: null } : value];
    }),
  );
};
