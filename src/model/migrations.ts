import { minorDigits } from '../units';
import type { RecordKey } from './book';

/** A book as it lies in storage, of any version: nothing is known of the values yet. */
export type StoredRecords = ReadonlyMap<RecordKey | string, unknown>;

type Migration = (records: StoredRecords) => StoredRecords;

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;

/**
 * Version 1 kept a film's side margins as one number.
 * Version 2 keeps the two sides apart, since printers feed off centre.
 */
const separateSideMargins: Migration = (records) =>
  new Map(
    [...records].map(([key, value]) => {
      if (!key.startsWith('film/') || !isObject(value) || !isObject(value.margins)) return [key, value];
      const { side, ...ends } = value.margins;
      return [key, { ...value, margins: { left: side, right: side, ...ends } }];
    }),
  );

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
const widenForTheShop: Migration = (records) =>
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

/**
 * Version 3 laid the copies of an order wherever they fit best, and its straight cuts were staged ones.
 * Version 4 asks whether they lie together, and knows straight cuts in any order too.
 */
const askForTogether: Migration = (records) =>
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

/** A step's patches are of records as they were: undo begins anew with records of another shape. */
const isNoStep = ([key]: readonly [string, unknown]): boolean => !key.startsWith('step/');

const withTogether = (film: Record<string, unknown>) => ({ together: { kind: 'any' }, ...film });

/** Version 5 knows what artwork was made from, and the limits it is checked by (common practice, no source). */
const checkArtwork: Migration = (records) =>
  new Map(
    [...records].filter(isNoStep).map(([key, value]) => {
      if (!isObject(value)) return [key, value];
      if (key.startsWith('artwork/')) return [key, { madeFrom: null, ...value }];
      if (!key.startsWith('settings/')) return [key, value];
      return [key, { limits: { stroke: 500, opening: 800, choke: 200 }, ...value }];
    }),
  );

/**
 * Version 5 wrote no images.
 * Version 6 remembers how; a printer whose test strip read rightly, ink up, needs them mirrored.
 */
const rememberImages: Migration = (records) =>
  new Map(
    [...records].map(([key, value]) => {
      if (!key.startsWith('settings/') || !isObject(value)) return [key, value];
      const mirrored = isObject(value.printer) && value.printer.inkUp === 'plain';
      const printImage = { form: 'png', ppi: 300, mirrored, ticks: false, numbers: false };
      return [key, { ...value, printImage }];
    }),
  );

/** The equipment of a desktop printer with one press: what version 7 begins with. */
const firstStation = {
  temperature: 'C',
  cutApart: 'after-cure',
  printer: { perHour: 2_500_000, warmUp: 240, check: 120 },
  hands: 1,
  press: { count: 1, platen: { width: 406_400, length: 508_000 }, warmUp: 720, rise: 3, fall: 8 },
  curer: 'press',
  oven: { width: 406_400, length: 508_000 },
  wetLimit: 300,
  handling: { cutOff: 30, powder: 75, load: 20, cutApart: 10, dress: 15, place: 8, pack: 15 },
  closes: '17:00',
};

const forOrder = { fabric: 'cotton', wants: 'garments' };
const forCopy = { shelved: false };
const forFilm = { peel: 'hot' };
const inSnapshot = { film: forFilm, orders: forOrder, copies: forCopy };

/** Each of a list with fields that it may lack. */
const each = (list: unknown, fields: Record<string, unknown>): unknown =>
  Array.isArray(list) ? list.map((entry) => (isObject(entry) ? { ...fields, ...entry } : entry)) : list;

/** New fields for what a locked run embeds: its film, and each of its orders, copies and garments. */
function withInSnapshot(
  snapshot: unknown,
  {
    film = {},
    orders = {},
    copies = {},
    garments = {},
  }: Partial<Record<'film' | 'orders' | 'copies' | 'garments', Record<string, unknown>>>,
): unknown {
  if (!isObject(snapshot)) return snapshot;
  return {
    ...snapshot,
    film: isObject(snapshot.film) ? { ...film, ...snapshot.film } : snapshot.film,
    orders: each(snapshot.orders, orders),
    copies: each(snapshot.copies, copies),
    // Up to version 12 it had none.
    ...('garments' in snapshot ? { garments: each(snapshot.garments, garments) } : {}),
  };
}

/** Version 6 ended at the printer. Version 7 goes on: fabrics, peeling, the shop's equipment, and when a run came to each state. */
const goOnToThePress: Migration = (records) =>
  new Map(
    [...records].filter(isNoStep).map(([key, value]) => {
      if (!isObject(value)) return [key, value];
      switch (key.slice(0, key.indexOf('/'))) {
        case 'order':
          return [key, { ...forOrder, ...value }];
        case 'copy':
          return [key, { ...forCopy, ...value }];
        case 'film':
          return [key, { ...forFilm, ...value }];
        case 'run':
          return [key, { history: [], ...value, snapshot: withInSnapshot(value.snapshot, inSnapshot) }];
        case 'settings': {
          const temperature = value.unit === 'in' ? 'F' : 'C';
          return [key, { station: { ...firstStation, temperature }, ...value }];
        }
        default:
          return [key, value];
      }
    }),
  );

/** Version 7 counted film only. Version 8 knows what ink and powder a printed area takes (common practice, from memory). */
const countInk: Migration = (records) =>
  new Map(
    [...records].map(([key, value]) => {
      if (!key.startsWith('settings/') || !isObject(value)) return [key, value];
      return [key, { rates: { colour: 9_000, white: 14_000, powder: 100_000 }, ...value }];
    }),
  );

/** Up to version 8 the app spoke English alone. */
const chooseLanguage: Migration = (records) =>
  new Map(
    [...records].map(([key, value]) => [
      key,
      key.startsWith('settings/') && isObject(value) ? { language: 'en', ...value } : value,
    ]),
  );

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
const keepLedger: Migration = (records) =>
  new Map(
    [...records]
      .filter(isNoStep)
      .flatMap(([key, value]): (readonly [string, unknown])[] =>
        key.startsWith('film/') && isObject(value)
          ? [[key, value], ...openingOf(key, value)]
          : [[key, value]],
      ),
  );

const forTransfer = { meant: [] };

/** Up to version 10 every finding about artwork stood. From version 11 on a shop can call one meant. */
const callFindingsMeant: Migration = (records) =>
  new Map(
    [...records].filter(isNoStep).map(([key, value]) => {
      if (!isObject(value)) return [key, value];
      if (key.startsWith('transfer/')) return [key, { ...forTransfer, ...value }];
      if (!key.startsWith('run/') || !isObject(value.snapshot)) return [key, value];
      const { snapshot } = value;
      return [key, { ...value, snapshot: { ...snapshot, transfers: each(snapshot.transfers, forTransfer) } }];
    }),
  );

/**
 * Version 11 kept what is cut and pressed on one device. Version 12 hands it over: a locked run also embeds garments and places, as
 * they are at the time of the migration.
 */
const handOver: Migration = (records) => {
  const of = (collection: string, orders: ReadonlySet<unknown>) =>
    [...records].flatMap(([key, value]) =>
      key.startsWith(`${collection}/`) && isObject(value) && orders.has(value.order) ? [value] : [],
    );
  const embed = (snapshot: unknown) => {
    if (!isObject(snapshot) || !Array.isArray(snapshot.orders)) return snapshot;
    const orders = new Set(snapshot.orders.map((order) => (isObject(order) ? order.id : null)));
    return { garments: of('garment', orders), placements: of('placement', orders), ...snapshot };
  };
  return new Map(
    [...records].filter(isNoStep).map(([key, value]) => {
      if (!isObject(value)) return [key, value];
      if (key.startsWith('run/'))
        return [key, { received: null, ...value, snapshot: embed(value.snapshot ?? null) }];
      if (!key.startsWith('settings/')) return [key, value];
      const station = isObject(value.station) ? { oneClosing: true, ...value.station } : value.station;
      return [key, { shelfFirst: true, ...value, station }];
    }),
  );
};

/**
 * Records of upkeep and of calibration are new, and none of those before change. The number alone keeps an older app from a book
 * that it would read in part.
 */
const noteUpkeep: Migration = (records) => records;

/** What version 13 begins with, in a currency's own units. */
function firstPrices(currency: string) {
  const unit = 10 ** (/^[A-Z]{3}$/.test(currency) ? minorDigits(currency) : 2);
  const money = (amount: number) => Math.round(amount * unit);
  const fine = (amount: number) => Math.round(amount * unit * 1000);
  const hour = fine(18);
  return {
    costs: {
      filmBy: 'footprint',
      colourInk: fine(150),
      whiteInk: fine(160),
      powder: fine(35),
      maintenance: { day: 6_000, runsADay: 2, cleaning: 3_000, cleanings: 1 },
      energy: fine(0.2),
      watts: { printer: 150, oven: 1500, press: 1400 },
      labour: { artwork: hour, printing: hour, cutting: hour, pressing: hour, packing: hour },
      artworkTime: { order: 180, design: 420 },
      blank: money(4.5),
      blanks: [],
      spoilage: 0.03,
      overhead: { kind: 'hour', rate: fine(6) },
    },
    pricing: {
      aim: { kind: 'margin', share: 0.5 },
      by: 'cost',
      placement: money(6),
      length: { amount: money(30), per: 1_000_000 },
      artworkFee: money(15),
      breaks: [
        { from: 24, off: 0.05 },
        { from: 48, off: 0.1 },
      ],
      breaksBy: 'order',
      rush: 0.25,
      minimum: money(25),
      deposit: 0.5,
      tax: null,
      validDays: 30,
      nextQuote: 1,
    },
    alternatives: [],
    letterhead: { name: '', address: '' },
  };
}

/** Version 12 knew what film costs. Version 13 knows the other costs, prices and quotes; the values to start with are common practice. */
const countMoney: Migration = (records) =>
  new Map(
    [...records].filter(isNoStep).map(([key, value]) => {
      if (!isObject(value)) return [key, value];
      const order = { supplied: false, pricing: { aim: null, newDesigns: null, discount: 0 }, quote: null };
      const garment = { price: null };
      switch (key.slice(0, key.indexOf('/'))) {
        case 'order':
          return [key, { ...order, ...value }];
        case 'garment':
          return [key, { ...garment, ...value }];
        case 'run':
          return [
            key,
            {
              basis: null,
              ...value,
              snapshot: withInSnapshot(value.snapshot, { orders: order, garments: garment }),
            },
          ];
        case 'settings':
          return [key, { ...firstPrices(String(value.currency)), ...value }];
        default:
          return [key, value];
      }
    }),
  );

/**
 * Up to version 14 an order kept its last quote's number, days, total and notes. From version 15 on quotes are records of their own, whole;
 * of an older one the lines are not known. Undo begins anew.
 */
const keepQuotes: Migration = (records) => {
  const settings = records.get('settings/shop');
  const shop = isObject(settings) ? settings : {};
  const language = shop.language === 'es' ? 'es' : 'en';
  const withoutQuote = (order: unknown) => {
    if (!isObject(order)) return order;
    const { quote: _, ...rest } = order;
    return rest;
  };
  return new Map(
    [...records].filter(isNoStep).flatMap(([key, value]): (readonly [string, unknown])[] => {
      if (!isObject(value)) return [[key, value]];
      if (key.startsWith('run/') && isObject(value.snapshot) && Array.isArray(value.snapshot.orders)) {
        const { snapshot } = value;
        const orders = value.snapshot.orders.map(withoutQuote);
        return [[key, { ...value, snapshot: { ...snapshot, orders } }]];
      }
      if (!key.startsWith('order/')) return [[key, value]];
      if (!isObject(value.quote)) return [[key, withoutQuote(value)]];
      const id = `first-${key.slice('order/'.length)}`;
      const quote = {
        ...value.quote,
        id,
        order: value.id,
        language,
        locale: language,
        currency: shop.currency,
        from: shop.letterhead,
        for: { name: value.name, contact: value.contact },
        content: null,
        changed: value.changed,
      };
      return [
        [key, withoutQuote(value)],
        [`quote/${id}`, quote],
      ];
    }),
  );
};

/** Up to version 15 nothing counted the ink that each run takes to start. From version 16 on a shop can; it begins with none. */
const countStarts: Migration = (records) => {
  const withStart = (costs: unknown) =>
    isObject(costs) && isObject(costs.maintenance)
      ? { ...costs, maintenance: { start: { colour: 0, white: 0 }, ...costs.maintenance } }
      : costs;
  return new Map(
    [...records].filter(isNoStep).map(([key, value]) => {
      if (!isObject(value)) return [key, value];
      if (key.startsWith('settings/')) return [key, { ...value, costs: withStart(value.costs) }];
      if (!key.startsWith('run/') || !isObject(value.basis)) return [key, value];
      return [key, { ...value, basis: { ...value.basis, costs: withStart(value.basis.costs) } }];
    }),
  );
};

const isPlaced = (copy: Record<string, unknown>) => isObject(copy.place) && typeof copy.run === 'string';

/** A copy that says its state; one that lies on a film lies there, whatever else it said. */
function withState({ shelved, ...copy }: Record<string, unknown>): Record<string, unknown> {
  if (isPlaced(copy)) return { ...copy, state: 'placed' };
  if (shelved === true) return { ...copy, state: 'shelved', run: null, place: null };
  return { ...copy, state: 'waiting', run: copy.run ?? null, place: null };
}

/** What a run that lacks it would have embedded: all on its film, as it is at the time of the migration; `null` where its film is gone. */
function embedNow(records: StoredRecords, run: Record<string, unknown>): Record<string, unknown> | null {
  const film = records.get(`film/${run.film}`);
  if (!isObject(film)) return null;
  const all = (collection: string, isWanted: (record: Record<string, unknown>) => boolean) =>
    [...records].flatMap(([key, value]) =>
      key.startsWith(`${collection}/`) && isObject(value) && isWanted(value) ? [value] : [],
    );
  const copies = all('copy', (copy) => isPlaced(copy) && copy.run === run.id);
  const onFilm = new Set(copies.map(({ transfer }) => transfer));
  const transfers = all('transfer', ({ id }) => onFilm.has(id));
  const orders = new Set(transfers.map(({ order }) => order));
  return {
    at: run.changed,
    film,
    orders: all('order', ({ id }) => orders.has(id)),
    transfers,
    copies,
    garments: all('garment', ({ order }) => orders.has(order)),
    placements: all('placement', ({ order }) => orders.has(order)),
  };
}

/** A snapshot with those of its copies that lie in a part of the film; each says its state. */
function partOf(snapshot: Record<string, unknown>, run: unknown, isIn: (y: number) => boolean) {
  const copies = Array.isArray(snapshot.copies) ? snapshot.copies : [];
  return {
    ...snapshot,
    copies: copies.flatMap((copy) => {
      const lies = isObject(copy) && isObject(copy.place) && isIn(Number(copy.place.y));
      return lies ? [withState({ ...copy, run })] : [];
    }),
  };
}

/** A run that keeps what was printed of it apart from the rest, and embeds the rest if it is locked. */
function withPrinted(records: StoredRecords, run: Record<string, unknown>): Record<string, unknown> {
  const { snapshot: before, printedTo, basis = null, received = null, ...rest } = run;
  const snapshot = isObject(before) ? before : embedNow(records, run);
  const to = Number(printedTo ?? 0);
  const printed = snapshot && to > 0 ? { to, as: [partOf(snapshot, run.id, (y) => y < to)] } : null;
  // A locked run without film and snapshot could not be drawn; its history still tells how far it came.
  const isDraft = (run.state === 'draft' && !isObject(received)) || !snapshot;
  if (isDraft) return { ...rest, state: 'draft', printed, received: null };
  const state = run.state === 'draft' ? 'locked' : run.state;
  return {
    ...rest,
    state,
    printed,
    snapshot: partOf(snapshot, run.id, (y) => y >= to),
    received,
    basis,
  };
}

/**
 * Up to version 16 a copy told by three fields where it is, and any run could have a snapshot, how far it was printed and what its cost
 * rests on. From version 17 on each says its state and has what belongs to it. A locked run that lacks a snapshot embeds what is on its
 * film at the time of the migration. Undo begins anew.
 */
const tellStates: Migration = (records) =>
  new Map(
    [...records].filter(isNoStep).map(([key, value]) => {
      if (!isObject(value)) return [key, value];
      if (key.startsWith('copy/')) return [key, withState(value)];
      if (key.startsWith('run/')) return [key, withPrinted(records, value)];
      return [key, value];
    }),
  );

/** What the words of a place meant when this was written, frozen with it. */
function placeAsOf18(place: unknown): string {
  const name = String(place);
  if (/sleeve|neck|tag|label|hood|cap|hat|manga|cuello|etiqueta|capucha|gorr/i.test(name)) return 'off-body';
  if (/back|espalda/i.test(name)) return 'back';
  if (/chest|pecho|pocket|bolsillo/i.test(name)) {
    if (/left|izq/i.test(name)) return 'left-chest';
    return /right|der/i.test(name) ? 'right-chest' : 'chest';
  }
  return /front|frente|delanter/i.test(name) ? 'front' : 'other';
}

/** From version 18 on a placement says where on the garment it is, beside the shop's own word for it. Undo begins anew. */
const placeOnGarments: Migration = (records) => {
  const known = (placement: unknown) =>
    isObject(placement) ? { on: placeAsOf18(placement.place), ...placement } : placement;
  const embedded = (snapshot: unknown) =>
    isObject(snapshot) && Array.isArray(snapshot.placements)
      ? { ...snapshot, placements: snapshot.placements.map(known) }
      : snapshot;
  return new Map(
    [...records].filter(isNoStep).map(([key, value]) => {
      if (!isObject(value)) return [key, value];
      if (key.startsWith('placement/')) return [key, known(value)];
      if (!key.startsWith('run/')) return [key, value];
      const { printed } = value;
      return [
        key,
        {
          ...value,
          ...('snapshot' in value ? { snapshot: embedded(value.snapshot) } : {}),
          printed:
            isObject(printed) && Array.isArray(printed.as)
              ? { ...printed, as: printed.as.map(embedded) }
              : printed,
        },
      ];
    }),
  );
};

/** `migrations[n]` takes version n + 1 to n + 2. Append only: what was shipped is never changed. */
const migrations: readonly Migration[] = [
  separateSideMargins,
  widenForTheShop,
  askForTogether,
  checkArtwork,
  rememberImages,
  goOnToThePress,
  countInk,
  chooseLanguage,
  keepLedger,
  callFindingsMeant,
  handOver,
  countMoney,
  noteUpkeep,
  keepQuotes,
  countStarts,
  tellStates,
  placeOnGarments,
];

export const MODEL_VERSION = migrations.length + 1;

/**
 * Brings stored records of an older version up to {@link MODEL_VERSION}, a step at a time.
 * @returns `null` if they are of a newer version, or of none: they may be looked at elsewhere, never written here
 */
export function migrate(records: StoredRecords, version: number): StoredRecords | null {
  if (!Number.isInteger(version) || version < 1 || version > MODEL_VERSION) return null;
  return migrations.slice(version - 1).reduce((current, migration) => migration(current), records);
}
