import { isNoStep, isObject, type Migration } from './stored';

const withTogether = (film: Record<string, unknown>) => ({ together: { kind: 'any' }, ...film });

/**
 * Version 3 laid the copies of an order wherever they fit best, and its straight cuts were staged ones.
 * Version 4 asks whether they lie together, and knows straight cuts in any order too.
 */
export const askForTogether: Migration = (records) =>
  new Map(
    [...records].filter(isNoStep).map(([key, value]) => {
      if (!isObject(value)) return [key, value];
      if (key.startsWith('film/')) return [key, withTogether(value)];
      if (key.startsWith('run/') && isObject(value.snapshot) && isObject(value.snapshot.film)) {
        return [key, { ...value, snapshot: { ...value.snapshot, film: withTogether(value.snapshot.film) } }];
      }
      return [key, value];
    }),
  );
