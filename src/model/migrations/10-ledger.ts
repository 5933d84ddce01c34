import { isNoStep, isObject, type Migration } from './stored';

/** What a film had left when the ledger began: an entry that is its present amount. */
function openingOf(key: string, film: Record<string, unknown>): readonly [string, unknown][] {
  const isRoll = film.kind === 'roll';
  const amount = isRoll ? film.lengthLeft : film.sheetsLeft;
  if (typeof amount !== 'number' || amount <= 0) return [];
  const item = key.slice('film/'.length);
  const id = `opening-${item}`;
  const entry = {
    id,
    item,
    name: film.name,
    unit: isRoll ? 'length' : 'sheets',
    kind: 'opening',
    amount,
    run: null,
    order: null,
    counters: null,
    note: '',
    at: film.changed,
    changed: film.changed,
  };
  return [[`entry/${id}`, entry]];
}

/** Version 9 knew what was left of a film. From version 10 on a ledger tells how it came to that; undo begins anew with it. */
export const keepLedger: Migration = (records) =>
  new Map(
    [...records]
      .filter(isNoStep)
      .flatMap(([key, value]): (readonly [string, unknown])[] =>
        key.startsWith('film/') && isObject(value)
          ? [[key, value], ...openingOf(key, value)]
          : [[key, value]],
      ),
  );
