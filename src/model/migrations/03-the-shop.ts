import { isObject, type Migration } from './stored';

/** What version 3 added to each kind of record, with what it means for records that lack it. */
const added: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  order: {
    contact: '',
    notes: '',
    dueTime: null,
    rush: false,
    awaits: { proof: false, blanks: false },
    handover: 'collect',
    progress: 'open',
    archived: false,
  },
  transfer: { shade: null, garment: null, grid: null },
  artwork: { kind: 'png' },
  copy: { role: 'ordered', run: null },
  film: {
    kind: 'roll',
    cutting: 'free',
    curl: 0,
    archived: false,
    jobBlank: 0,
    cutBlank: 0,
    unreached: 0,
    noPrint: [],
  },
  run: { takes: 'all', printedTo: 0, spoiled: [], snapshot: null },
  settings: {
    mapPaper: { landscape: false, large: false, perSpan: false, pictures: true },
    printer: { firstEnd: 'lead', inkUp: 'mirrored', feed: 1 },
    lastBackup: null,
    columns: {},
  },
};

/**
 * Version 2 had one roll, one draft, and a copy's run in its place.
 * Version 3 keeps a copy's run beside its place, and knows garments, sheets, locked runs and the printer.
 */
export const widenForTheShop: Migration = (records) =>
  new Map(
    [...records].map(([key, value]) => {
      if (!isObject(value)) return [key, value];
      const collection = key.slice(0, key.indexOf('/'));
      const widened: Record<string, unknown> = { ...added[collection], ...value };
      if (collection === 'copy' && isObject(value.place)) {
        const { run, ...place } = value.place;
        Object.assign(widened, { run, place });
      }
      return [key, widened];
    }),
  );
