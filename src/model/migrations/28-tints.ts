import { isObject, type Migration } from './stored';

/** The first number that is not taken, taken. */
function take(taken: Set<number>): number {
  let free = 0;
  while (taken.has(free)) free += 1;
  taken.add(free);
  return free;
}

/** Version 28 has a tint for every order at work: of several that shared one of eight, the first keeps it. */
export const tellOrdersApart: Migration = (records) => {
  const isAtWork = (key: string, value: unknown): value is Record<string, unknown> =>
    key.startsWith('order/') && isObject(value) && value.archived !== true;
  const given = [...records].flatMap(([key, value]) =>
    isAtWork(key, value) && typeof value.tint === 'number' ? [value.tint] : [],
  );
  const taken = new Set(given);
  const kept = new Set<number>();
  return new Map(
    [...records].map(([key, value]) => {
      if (!isAtWork(key, value) || typeof value.tint !== 'number') return [key, value];
      if (kept.has(value.tint)) return [key, { ...value, tint: take(taken) }];
      kept.add(value.tint);
      return [key, value];
    }),
  );
};
