import { changeRecords, inSnapshots } from './change-records';
import { isObject, type Migration, type StoredRecords } from './stored';

type Stored = Record<string, unknown>;

/** Of which machine each check to start with is; all others are the shop's. */
const OF: Readonly<Record<string, 'printer' | 'press'>> = {
  'white-stirred': 'printer',
  nozzles: 'printer',
  'film-square': 'printer',
  blade: 'printer',
  capping: 'printer',
  parked: 'printer',
  'waste-ink': 'printer',
  rollers: 'printer',
  'deep-clean': 'printer',
  platen: 'press',
};

/** The only machine of a kind; of several nobody had said which. */
function onlyOne(settings: unknown, list: 'printers' | 'presses'): unknown {
  if (!isObject(settings) || !isObject(settings.station)) return null;
  const { [list]: machines } = settings.station;
  const [only, another] = Array.isArray(machines) ? machines : [];
  return isObject(only) && another === undefined ? only.id : null;
}

/** When each copy was spoiled, in a run that was printed or with its film. */
function spoiledAt(records: StoredRecords): ReadonlyMap<unknown, readonly string[]> {
  const all = new Map<unknown, string[]>();
  const note = (copy: unknown, at: unknown) => {
    if (typeof at === 'string') all.set(copy, [...(all.get(copy) ?? []), at]);
  };
  for (const [key, record] of records) {
    if (!isObject(record)) continue;
    if (key.startsWith('spoilage/')) note(record.copy, record.changed);
    if (!key.startsWith('run/') || !Array.isArray(record.spoiled)) continue;
    for (const { copies, at } of record.spoiled.filter(isObject))
      if (Array.isArray(copies)) for (const copy of copies) note(copy, at);
  }
  return all;
}

/**
 * Version 46 keeps checks by machine, and knows which copies of a locked run are printed again: those that had been spoiled before it was
 * locked.
 */
export const keepByMachine: Migration = (records) => {
  const settings = records.get('settings/shop');
  const machines = { printer: onlyOne(settings, 'printers'), press: onlyOne(settings, 'presses') };
  const spoiled = spoiledAt(records);
  const ofCheck = (id: unknown) => (typeof id === 'string' ? OF[id] : undefined);
  const withReprints = (snapshot: Stored): Stored => {
    const { at, copies } = snapshot;
    if (!Array.isArray(copies)) return snapshot;
    const isReprint = (copy: Stored) =>
      (spoiled.get(copy.id) ?? []).some((before) => typeof at === 'string' && before < at);
    return {
      ...snapshot,
      copies: copies.map((copy) => (isObject(copy) ? { ...copy, reprint: isReprint(copy) } : copy)),
    };
  };
  return changeRecords({
    check: (check) => ({ ...check, of: ofCheck(check.id) ?? 'shop' }),
    upkeep: (entry) => {
      const of = ofCheck(entry.check);
      return { ...entry, machine: of ? machines[of] : null };
    },
    run: (run) => inSnapshots(run, withReprints),
  })(records);
};
