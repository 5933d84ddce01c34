import { isObject, type Migration } from './stored';

/**
 * Version 21 lets go of copies that wait for a run which was locked without them: no act could place them. Undo stays, since locking ends
 * what can be undone.
 */
export const letGoOfWaiting: Migration = (records) =>
  new Map(
    [...records].map(([key, value]) => {
      if (!key.startsWith('copy/') || !isObject(value) || value.state !== 'waiting') return [key, value];
      const run = records.get(`run/${value.run}`);
      return [key, isObject(run) && run.state !== 'draft' ? { ...value, run: null } : value];
    }),
  );
