import { describe, expect, it } from 'vitest';
import { startingCosts, startingRates } from '../../src/costing';
import { bringUpFrom, MODEL_VERSION, readRecord, type StoredRecords } from '../../src/model';
import { startingStation } from '../../src/pressing';
import { startingPricing } from '../../src/pricing';

/** A film as version 1 stored it. */
const filmOne = {
  id: 'film-1',
  name: 'Roll',
  width: 330_000,
  margins: { side: 4000, lead: 10_000, tail: 12_000 },
  lengthLeft: 60_000_000,
  price: { amount: 840, per: 1_000_000 },
  gap: 5000,
  spanMax: null,
  changed: '2026-01-05T08:00:00.000Z',
};
/** What version 3 added to it. */
const filmThree = {
  kind: 'roll',
  margins: { left: 4000, right: 4000, lead: 10_000, tail: 12_000 },
  cutting: 'straight',
  curl: 0,
  archived: false,
  jobBlank: 0,
  cutBlank: 0,
  unreached: 0,
  noPrint: [],
};
/** Settings of version 3 and 4. */
const settingsThree = {
  unit: 'mm',
  currency: 'EUR',
  dateOrder: null,
  paper: 'a4',
  mapView: 'ink-up',
  mapPaper: { landscape: false, large: false, perSpan: false, pictures: true },
  printer: { firstEnd: 'lead', inkUp: 'mirrored', feed: 1 },
  lastBackup: null,
  columns: {},
  changed: '2026-11-05T08:00:00.000Z',
};
const settingsFive = { ...settingsThree, limits: { stroke: 500, opening: 800, choke: 200 } };
const settingsSix = {
  ...settingsFive,
  printImage: { form: 'png', ppi: 300, mirrored: false, ticks: false, numbers: false },
};
/** Equipment as shops of any version have it, but for times, which later ones count otherwise. */
const { wetLimit: _wet, handling: _handling, allowance: _allowance, ...untimed } = startingStation('C');
const other = ['order/1', { id: '1', code: 'HB' }] as const;

/** Settings without what told of the only printer before each had a strip of its own. */
function withoutPrinter({ printer: _, printImage: __, ...settings }: Record<string, unknown>) {
  return settings;
}

const versions = Array.from({ length: MODEL_VERSION }, (_, index) => index + 1);
const found = await Promise.all(versions.map(bringUpFrom));

/** Records of a version, brought up to this one. */
function migrate(records: StoredRecords, version: number): StoredRecords {
  const bringUp = found[version - 1];
  return bringUp?.ok ? bringUp.value(records) : expect.fail('of no version');
}

describe('migration', () => {
  it('keeps the sides of a film apart from version 2 on', () => {
    const migrated = migrate(new Map<string, unknown>([['film/film-1', filmOne], other]), 1);
    const film = readRecord('film', migrated.get('film/film-1'));
    expect(film?.margins).toEqual({ left: 4000, right: 4000, lead: 10_000, tail: 12_000 });
    expect(migrated.get(other[0])).toMatchObject(other[1]);
  });

  it('keeps the run of a copy beside its place from version 3 on, and adds what a shop needs', () => {
    const changed = '2026-06-05T08:00:00.000Z';
    const two = new Map<string, unknown>([
      ['film/f', { ...filmOne, margins: { left: 4000, right: 4000, lead: 10_000, tail: 12_000 } }],
      ['run/r', { id: 'r', name: 'Run 1', film: 'f', state: 'draft', changed }],
      ['order/o', { id: 'o', code: 'HB', name: 'Hill', due: null, tint: 0, nextNumber: 2, changed }],
      [
        'transfer/t',
        {
          id: 't',
          order: 'o',
          name: 'front',
          width: 1000,
          height: 1000,
          typed: { width: '1 mm', height: '1 mm' },
          turn: 'fixed',
          artwork: null,
          changed,
        },
      ],
      [
        'copy/c',
        {
          id: 'c',
          transfer: 't',
          number: 1,
          place: { run: 'r', x: 5000, y: 10_000, turned: false, pinned: true },
          changed,
        },
      ],
      ['copy/w', { id: 'w', transfer: 't', number: 2, place: null, changed }],
      [
        'settings/shop',
        { unit: 'mm', currency: 'EUR', dateOrder: null, paper: 'a4', mapView: 'ink-up', changed },
      ],
    ]);
    const migrated = migrate(two, 2);
    expect(readRecord('copy', migrated.get('copy/c'))).toMatchObject({
      run: 'r',
      role: 'ordered',
      place: { x: 5000, y: 10_000, angle: 0, pinned: true },
    });
    expect(readRecord('copy', migrated.get('copy/w'))).toMatchObject({ run: null, place: null });
    expect(readRecord('run', migrated.get('run/r'))).toMatchObject({
      takes: 'all',
      printed: null,
    });
    for (const [key, collection] of [
      ['film/f', 'film'],
      ['order/o', 'order'],
      ['transfer/t', 'transfer'],
      ['settings/shop', 'settings'],
    ] as const) {
      expect(readRecord(collection, migrated.get(key)), key).not.toBeNull();
    }
  });

  it('asks of a film whether orders lie together from version 4 on, and begins undo anew', () => {
    const film = { ...filmOne, ...filmThree };
    const three = new Map<string, unknown>([
      ['film/f', film],
      ['run/r', { id: 'r', name: 'Run 1', film: 'f', state: 'locked', snapshot: { film } }],
      ['step/s', { id: 's', number: 1, redo: [], undo: [{ op: 'add', path: ['film', 'g'], value: film }] }],
    ]);
    const migrated = migrate(three, 3);
    expect(readRecord('film', migrated.get('film/f'))?.together).toEqual({ kind: 'any' });
    expect(migrated.get('run/r')).toMatchObject({ snapshot: { film: { together: { kind: 'any' } } } });
    expect(migrated.has('step/s')).toBe(false);
  });

  it('knows the limits artwork is checked by, and what it was made from, from version 5 on', () => {
    const changed = '2026-11-20T08:00:00.000Z';
    const four = new Map<string, unknown>([
      [
        'artwork/a',
        {
          id: 'a',
          fileName: 'crest.png',
          kind: 'png',
          pixels: { width: 600, height: 400 },
          density: null,
          trim: { x: 0, y: 0, width: 600, height: 400 },
          changed,
        },
      ],
      ['settings/shop', settingsThree],
    ]);
    const migrated = migrate(four, 4);
    expect(readRecord('artwork', migrated.get('artwork/a'))?.madeFrom).toBeNull();
    expect(readRecord('settings', migrated.get('settings/shop'))?.limits).toEqual({
      stroke: 500,
      opening: 800,
      choke: 200,
      white: 200,
    });
  });

  it('writes images from version 6 on, mirrored where the test strip read rightly, ink up', () => {
    const settings = (inkUp: string) => ({
      ...settingsFive,
      printer: { firstEnd: 'lead', inkUp, feed: 1.002 },
    });
    for (const [inkUp, mirrored] of [
      ['mirrored', false],
      ['plain', true],
    ] as const) {
      const migrated = migrate(new Map([['settings/shop', settings(inkUp)]]), 5);
      const read = readRecord('settings', migrated.get('settings/shop'));
      expect(read?.printImage).toEqual({
        form: 'png',
        ppi: 300,
        ticks: false,
        numbers: false,
        names: false,
        corners: false,
        feedCorrected: false,
        white: false,
        whiteName: 'White',
      });
      expect(read?.station.printers[0]).toMatchObject({ feed: 1.002, mirrored });
    }
  });

  it('goes on to the press from version 7 on, also in what a locked run embeds', () => {
    const changed = '2026-11-20T08:00:00.000Z';
    const film = { ...filmOne, ...filmThree, together: { kind: 'any' } };
    const order = {
      id: 'o',
      code: 'HB',
      name: 'Hill',
      contact: '',
      notes: '',
      due: null,
      dueTime: null,
      rush: false,
      awaits: { proof: false, blanks: false },
      handover: 'collect',
      progress: 'open',
      archived: false,
      tint: 0,
      nextNumber: 2,
      changed,
    };
    const place = { x: 5000, y: 10_000, turned: false, pinned: false };
    const copy = { id: 'c', transfer: 't', number: 1, role: 'ordered', run: 'r', place, changed };
    const run = {
      id: 'r',
      name: 'Run 1',
      film: 'film-1',
      state: 'locked',
      takes: 'all',
      printedTo: 0,
      spoiled: [],
      snapshot: { at: changed, film, orders: [order], transfers: [], copies: [copy] },
      changed,
    };
    const settings = { ...settingsSix, unit: 'in', currency: 'USD', paper: 'letter' };
    const six = new Map<string, unknown>([
      ['film/film-1', film],
      ['order/o', order],
      ['copy/c', copy],
      ['run/r', run],
      ['settings/shop', settings],
    ]);
    const migrated = migrate(six, 6);
    expect(readRecord('film', migrated.get('film/film-1'))).toMatchObject({ peel: 'hot' });
    expect(readRecord('order', migrated.get('order/o'))).toMatchObject({
      wants: 'garments',
    });
    expect(readRecord('copy', migrated.get('copy/c'))).toMatchObject({
      state: 'placed',
      place: { x: 5000, y: 10_000, angle: 0, pinned: false },
    });
    const {
      presses: [inches],
      large,
    } = startingStation('F', 'in');
    const { platen } = inches ?? expect.fail();
    const { presses, ovens, ...station } = startingStation('F');
    expect(readRecord('settings', migrated.get('settings/shop'))?.station).toEqual({
      ...station,
      presses: presses.map((press) => ({ ...press, platen })),
      large,
      ovens: ovens.map((oven) => ({ ...oven, bed: platen })),
      hours: expect.objectContaining({ closed: [] }),
      // Five minutes behind a span of 480 mm, at 2.5 m an hour.
      wetLimit: 300 + 691,
    });
    expect(readRecord('run', migrated.get('run/r'))).toMatchObject({
      state: 'locked',
      history: [],
      snapshot: { film: { peel: 'hot' }, orders: [{ wants: 'garments' }], copies: [{ state: 'placed' }] },
    });
  });

  it('counts ink and powder from version 8 on', () => {
    const settings = { ...settingsSix, station: untimed };
    const migrated = migrate(new Map([['settings/shop', settings]]), 7);
    expect(migrated.get('settings/shop')).toMatchObject({
      ...withoutPrinter(settings),
      rates: startingRates.mm,
    });
  });

  it('speaks English in a shop of version 8, which had no other language', () => {
    const settings = { ...settingsSix, station: untimed, rates: startingRates.mm };
    const migrated = migrate(new Map<string, unknown>([['settings/shop', settings], other]), 8);
    expect(migrated.get('settings/shop')).toMatchObject({ ...withoutPrinter(settings), language: 'en' });
    expect(migrated.get(other[0])).toMatchObject(other[1]);
  });

  it('knows costs, prices and quotes from version 13 on, in the units of the currency', () => {
    const settings = {
      ...settingsSix,
      language: 'en',
      station: startingStation('C'),
      rates: startingRates.mm,
      shelfFirst: true,
    };
    const changed = '2026-11-24T08:00:00.000Z';
    const order = { id: 'o', wants: 'garments', changed };
    const garment = {
      id: 'g',
      order: 'o',
      style: 'tee',
      colour: '',
      shade: null,
      size: 'M',
      count: 2,
      changed,
    };
    const run = { id: 'r', state: 'locked', snapshot: { orders: [order], garments: [garment] } };
    const twelve = (currency: string) =>
      migrate(
        new Map<string, unknown>([
          ['settings/shop', { ...settings, currency }],
          ['order/o', order],
          ['garment/g', garment],
          ['run/r', run],
          ['step/1', {}],
        ]),
        12,
      );
    for (const currency of ['USD', 'JPY', 'KWD']) {
      expect(readRecord('settings', twelve(currency).get('settings/shop'))).toMatchObject({
        costs: startingCosts(currency),
        pricing: startingPricing(currency, 'mm'),
        alternatives: [],
      });
    }
    const own = { supplied: false, pricing: { aim: null, newDesigns: null, discount: 0 } };
    expect(twelve('USD').get('order/o')).toEqual({ ...order, ...own });
    expect(readRecord('garment', twelve('USD').get('garment/g'))?.price).toBeNull();
    expect(twelve('USD').get('run/r')).toMatchObject({
      ...run,
      basis: null,
      snapshot: { orders: [{ ...order, ...own }], garments: [{ ...garment, price: null }] },
    });
    // A step could bring back an order without them.
    expect(twelve('USD').has('step/1')).toBe(false);
  });

  it('opens the ledger from version 10 on with what is left of every film, and begins undo anew', () => {
    const changed = '2026-11-20T08:00:00.000Z';
    const nine = new Map<string, unknown>([
      ['film/f', { ...filmOne, id: 'f', kind: 'roll', name: 'Roll', cutting: 'free', changed }],
      ['film/s', { id: 's', name: 'Sheets', kind: 'sheets', sheetsLeft: 25, changed }],
      ['film/e', { ...filmOne, id: 'e', kind: 'roll', lengthLeft: 0, changed }],
      ['step/s', { id: 's', number: 1, redo: [], undo: [{ op: 'remove', path: ['film', 'f'] }] }],
    ]);
    const migrated = migrate(nine, 9);
    const entries = [...migrated].flatMap(([key, value]) =>
      key.startsWith('entry/') ? [readRecord('entry', value)] : [],
    );
    expect(entries).toMatchObject([
      { item: 'f', name: 'Roll', unit: 'length', kind: 'opening', amount: 60_000_000, at: changed },
      { item: 's', name: 'Sheets', unit: 'sheets', kind: 'opening', amount: 25, counters: null },
    ]);
    expect(migrated.get('film/f')).toMatchObject(nine.get('film/f') ?? {});
    expect(migrated.has('step/s')).toBe(false);
  });

  it('lets findings be called meant from version 11 on, in locked runs too, and begins undo anew', () => {
    const changed = '2026-11-05T08:00:00.000Z';
    const transfer = {
      id: 't',
      order: 'o',
      name: 'front',
      width: 1000,
      height: 1000,
      typed: { width: '1 mm', height: '1 mm' },
      turn: 'fixed',
      artwork: 'a',
      shade: null,
      garment: null,
      grid: null,
      changed,
    };
    const snapshot = { at: changed, film: {}, orders: [], transfers: [transfer], copies: [] };
    const ten = new Map<string, unknown>([
      ['transfer/t', transfer],
      ['run/r', { id: 'r', state: 'locked', snapshot }],
      ['run/d', { id: 'd', state: 'draft', snapshot: null }],
      ['step/1', { patches: [] }],
      other,
    ]);
    const migrated = migrate(ten, 10);
    expect(readRecord('transfer', migrated.get('transfer/t'))).toEqual({
      ...transfer,
      meant: [],
      fabric: null,
    });
    expect(migrated.get('run/r')).toMatchObject({ snapshot: { transfers: [{ ...transfer, meant: [] }] } });
    expect(migrated.get('run/d')).toMatchObject({ id: 'd', state: 'draft' });
    expect(migrated.has('step/1')).toBe(false);
    expect(migrated.get(other[0])).toMatchObject(other[1]);
  });

  it('embeds garments and places in locked runs from version 12 on, and knows received runs', () => {
    const garment = { id: 'g', order: 'o', style: 'tee', colour: '', shade: null, size: 'M', count: 3 };
    const others = { ...garment, id: 'h', order: 'p' };
    const { oneClosing, ...station } = startingStation('C');
    const eleven = new Map<string, unknown>([
      ['garment/g', garment],
      ['garment/h', others],
      ['run/r', { id: 'r', state: 'locked', snapshot: { orders: [{ id: 'o' }] } }],
      ['run/d', { id: 'd', state: 'draft', snapshot: null }],
      ['settings/shop', { ...settingsSix, station }],
    ]);
    const migrated = migrate(eleven, 11);
    expect(migrated.get('run/r')).toMatchObject({
      received: null,
      snapshot: { garments: [garment], placements: [] },
    });
    expect(migrated.get('run/d')).toMatchObject({ received: null });
    expect(migrated.get('settings/shop')).toMatchObject({ shelfFirst: true, station: { oneClosing } });
  });

  it('keeps every record as it was where upkeep and calibration are new, in version 14', () => {
    const thirteen = new Map<string, unknown>([other, ['order/2', { id: '2' }]]);
    expect(migrate(thirteen, 13)).toEqual(thirteen);
  });

  it('keeps quotes by themselves from version 15 on, of older ones what was known', () => {
    const changed = '2026-11-24T08:00:00.000Z';
    const quote = { number: 7, on: '2026-11-20', until: '2026-12-20', total: 12_300, notes: 'By hand.' };
    const order = { id: 'o', name: 'Corner Oven', contact: 'Ash', changed };
    const letterhead = { name: 'Print Barn', address: '2 Mill Lane' };
    const fourteen = new Map<string, unknown>([
      ['settings/shop', { language: 'es', currency: 'EUR', letterhead }],
      ['order/o', { ...order, quote }],
      ['order/p', { ...order, id: 'p', quote: null }],
      ['run/r', { id: 'r', state: 'locked', snapshot: { orders: [{ ...order, quote }] } }],
      ['run/d', { id: 'd', state: 'draft', snapshot: null }],
      ['step/1', {}],
    ]);
    const migrated = migrate(fourteen, 14);
    const kept = [...migrated].flatMap(([key, value]) =>
      key.startsWith('quote/') ? [readRecord('quote', value)] : [],
    );
    expect(kept).toEqual([
      {
        ...quote,
        id: 'first-o',
        order: 'o',
        language: 'es',
        locale: 'es',
        currency: 'EUR',
        from: letterhead,
        for: { name: 'Corner Oven', contact: 'Ash' },
        content: null,
        changed,
      },
    ]);
    expect(migrated.get('order/o')).toEqual(order);
    expect(migrated.get('order/p')).toEqual({ ...order, id: 'p' });
    expect(migrated.get('run/r')).toMatchObject({ snapshot: { orders: [order] } });
    expect(JSON.stringify(migrated.get('run/r'))).not.toContain('quote');
    expect(migrated.get('run/d')).toMatchObject({ id: 'd', state: 'draft' });
    expect(migrated.has('step/1')).toBe(false);
  });

  it('counts no ink for starts before version 16, in what locked runs rest on too', () => {
    const { start, ...maintenance } = startingCosts('EUR').maintenance;
    const costs = { ...startingCosts('EUR'), maintenance };
    const fifteen = new Map<string, unknown>([
      ['settings/shop', { currency: 'EUR', costs }],
      ['run/r', { id: 'r', state: 'locked', snapshot: {}, basis: { costs, use: 'kept' } }],
      ['run/d', { id: 'd', state: 'locked', snapshot: {}, basis: null }],
      ['step/1', {}],
    ]);
    const migrated = migrate(fifteen, 15);
    expect(migrated.get('settings/shop')).toMatchObject({ currency: 'EUR', costs: startingCosts('EUR') });
    expect(migrated.get('run/r')).toMatchObject({
      basis: { costs: startingCosts('EUR'), use: 'kept' },
    });
    expect(migrated.get('run/d')).toMatchObject({ basis: null });
    expect(start).toEqual({ colour: 0, white: 0 });
    expect(migrated.has('step/1')).toBe(false);
  });

  describe('of version 16', () => {
    const changed = '2026-11-25T08:00:00.000Z';
    const film = {
      ...filmOne,
      ...filmThree,
      id: 'f',
      together: { kind: 'any' },
      peel: 'hot',
    };
    const order = {
      id: 'o',
      code: 'HB',
      name: 'Hill',
      contact: '',
      notes: '',
      due: null,
      dueTime: null,
      rush: false,
      awaits: { proof: false, blanks: false },
      handover: 'collect',
      wants: 'garments',
      supplied: false,
      pricing: { aim: null, newDesigns: null, discount: 0 },
      progress: 'open',
      archived: false,
      tint: 0,
      nextNumber: 6,
      changed,
    };
    const transfer = {
      id: 't',
      order: 'o',
      name: 'front',
      width: 100_000,
      height: 80_000,
      typed: { width: '100 mm', height: '80 mm' },
      turn: 'fixed',
      artwork: null,
      meant: [],
      shade: null,
      garment: null,
      grid: null,
      changed,
    };
    const at = (y: number) => ({ x: 5000, y, turned: false, pinned: false });
    const copy = (id: string, run: string | null, place: object | null, shelved = false) => ({
      id,
      transfer: 't',
      number: 1,
      role: 'ordered',
      run,
      place,
      shelved,
      changed,
    });
    const first = copy('first', 'r', at(10_000));
    const second = copy('second', 'r', at(100_000));
    const snapshot = {
      at: changed,
      film,
      orders: [order],
      transfers: [transfer],
      copies: [first, second],
      garments: [],
      placements: [],
    };
    const run = {
      id: 'r',
      name: 'Run 1',
      film: 'f',
      state: 'locked',
      history: [{ state: 'locked', at: changed }],
      takes: 'all',
      printedTo: 0,
      spoiled: [],
      snapshot,
      received: null,
      basis: null,
      changed,
    };
    const sixteen = (fields: object, film_: object | null = film) =>
      migrate(
        new Map<string, unknown>([
          ...(film_ ? [['film/f', film_] as const] : []),
          ['order/o', order],
          ['transfer/t', transfer],
          ['copy/first', first],
          ['copy/second', second],
          ['run/r', { ...run, ...fields }],
        ]),
        16,
      );
    const runOf = (fields: object, film_: object | null = film) =>
      readRecord('run', sixteen(fields, film_).get('run/r'));
    const ids = (part: { readonly copies: readonly { readonly id: string }[] } | undefined) =>
      part?.copies.map(({ id }) => id);

    it.each([
      ['waiting', copy('c', null, null), { state: 'waiting', run: null, place: null }],
      ['chosen for a run', copy('c', 'r', null), { state: 'waiting', run: 'r', place: null }],
      [
        'placed',
        first,
        { state: 'placed', run: 'r', place: { x: 5000, y: 10_000, angle: 0, pinned: false } },
      ],
      ['shelved', copy('c', null, null, true), { state: 'shelved', run: null, place: null }],
      ['shelved, and chosen since', copy('c', 'r', null, true), { state: 'shelved', run: null }],
      ['placed, and called shelved', copy('c', 'r', at(0), true), { state: 'placed', run: 'r' }],
      ['placed on no run', copy('c', null, at(0)), { state: 'waiting', run: null, place: null }],
    ])('has copies that say their state: %s', (_, before, after) => {
      const migrated = migrate(
        new Map<string, unknown>([
          ['copy/c', before],
          ['step/1', {}],
        ]),
        16,
      );
      expect(readRecord('copy', migrated.get('copy/c'))).toMatchObject(after);
      expect(migrated.get('copy/c')).not.toHaveProperty('shelved');
      // A step's patches could put back half a state.
      expect(migrated.has('step/1')).toBe(false);
    });

    it('embeds in a locked run what it did, and keeps what was printed before apart', () => {
      const whole = runOf({});
      expect(whole).toMatchObject({ state: 'locked', printed: null, snapshot: { film } });
      expect(ids(whole?.state === 'locked' ? whole.snapshot : undefined)).toEqual(['first', 'second']);
      const part = runOf({ printedTo: 95_000 });
      expect(part).toMatchObject({ state: 'locked', printed: { to: 95_000 } });
      expect(ids(part?.printed?.as[0])).toEqual(['first']);
      expect(ids(part?.state === 'locked' ? part.snapshot : undefined)).toEqual(['second']);
    });

    it('takes from a draft what only a locked run has, but for what of it is printed', () => {
      const plain = sixteen({ state: 'draft', snapshot: null, basis: { costs: {} } }).get('run/r');
      expect(readRecord('run', plain)).toMatchObject({ state: 'draft', printed: null, received: null });
      for (const field of ['snapshot', 'basis', 'printedTo']) expect(plain).not.toHaveProperty(field);
      const part = runOf({ state: 'draft', printedTo: 95_000 });
      expect(part).toMatchObject({ state: 'draft', printed: { to: 95_000 } });
      expect(ids(part?.printed?.as[0])).toEqual(['first']);
      // Spoiled before it was ever locked: what lies there is embedded as it is.
      expect(ids(runOf({ state: 'draft', printedTo: 95_000, snapshot: null })?.printed?.as[0])).toEqual([
        'first',
      ]);
    });

    it('loses no locked run that lacks its snapshot: it embeds what is on its film', () => {
      const found = runOf({ state: 'printed', snapshot: null });
      expect(found).toMatchObject({
        state: 'printed',
        snapshot: { film, orders: [order], transfers: [transfer] },
      });
      expect(ids(found?.state === 'printed' ? found.snapshot : undefined)).toEqual(['first', 'second']);
      expect(runOf({ state: 'printed', snapshot: null }, null)).toMatchObject({
        state: 'draft',
        history: run.history,
      });
    });

    it('has received runs that are no drafts', () => {
      const received = { made: changed, recipes: [], station: startingStation('C'), known: [] };
      expect(runOf({ state: 'draft', received })).toMatchObject({
        state: 'locked',
        received: { made: changed },
      });
    });
  });

  it('says where on the garment a placement is from version 18 on, also in what runs embed, and begins undo anew', () => {
    const placement = { id: 'p', order: 'o', place: 'Pecho izquierdo', design: 'crest', ratio: 1 };
    const changed = '2026-11-20T08:00:00.000Z';
    const snapshot = { at: changed, placements: [placement] };
    const migrated = migrate(
      new Map<string, unknown>([
        ['placement/p', placement],
        ['placement/q', { ...placement, id: 'q', place: 'sleeve' }],
        ['run/locked', { state: 'locked', snapshot, printed: null }],
        ['run/draft', { state: 'draft', printed: { to: 1, as: [snapshot] } }],
        ['step/1', { redo: [], undo: [] }],
      ]),
      17,
    );
    expect(migrated.get('placement/p')).toEqual({ ...placement, on: 'left-chest', sizes: {} });
    expect(migrated.get('placement/q')).toMatchObject({ on: 'off-body' });
    expect(migrated.get('run/locked')).toMatchObject({
      snapshot: { at: changed, placements: [{ ...placement, on: 'left-chest' }] },
    });
    expect(migrated.get('run/draft')).toEqual({
      state: 'draft',
      imageFeed: null,
      laidBy: 'boxes',
      printed: {
        to: 1,
        as: [{ at: changed, placements: [{ ...placement, on: 'left-chest', sizes: {} }], outlines: {} }],
      },
    });
    expect(migrated.has('step/1')).toBe(false);
  });

  it('calls copies that are pressed so from version 20 on, and the time of machines; other records, and undo, stay', () => {
    const use = { transfers: [], bench: { ready: 120 } };
    const other = { id: 'g', garments: 3, bench: 'oak', driver: 'garment' };
    const migrated = migrate(
      new Map<string, unknown>([
        [
          'closing/r',
          { work: { copies: 4, garments: 3, closings: 7 }, spoiled: [{ copies: 1, garments: 1 }] },
        ],
        ['closing/bare', { work: null }],
        ['calibration/a', { driver: 'garment' }],
        ['calibration/b', { driver: 'span' }],
        ['run/locked', { state: 'locked', basis: { use, rates: 1 } }],
        ['run/unknown', { state: 'locked', basis: null }],
        ['run/draft', { state: 'draft' }],
        ['garment/g', other],
        ['step/1', { redo: [], undo: [] }],
      ]),
      19,
    );
    expect(Object.fromEntries(migrated)).toEqual({
      'closing/r': {
        work: { copies: 4, pressed: 3, platenClosings: 7 },
        spoiled: [{ copies: 1, garments: 1 }],
        earlier: [],
      },
      'closing/bare': { work: null, earlier: [] },
      'calibration/a': { driver: 'pressed', printer: null },
      'calibration/b': { driver: 'span', printer: null },
      'run/locked': {
        state: 'locked',
        imageFeed: 1,
        laidBy: 'boxes',
        basis: { use: { transfers: [], machines: { ready: 120 } }, rates: 1 },
      },
      'run/unknown': { state: 'locked', basis: null, imageFeed: 1, laidBy: 'boxes' },
      'run/draft': { state: 'draft', imageFeed: null, laidBy: 'boxes' },
      'garment/g': { ...other, fabric: null },
      'step/1': { redo: [], undo: [] },
    });
  });

  it('lets copies wait for any run from version 21 on where theirs was locked without them', () => {
    const waiting = (run: string | null) => ({ state: 'waiting', run, place: null });
    const stored = {
      'run/draft': { state: 'draft', imageFeed: null, laidBy: 'boxes' },
      'run/locked': { state: 'locked', imageFeed: 1, laidBy: 'boxes' },
      'run/closed': { state: 'closed', imageFeed: 1, laidBy: 'boxes' },
      'copy/a': waiting('draft'),
      'copy/b': waiting('locked'),
      'copy/c': waiting('closed'),
      'copy/d': waiting(null),
      'copy/e': { state: 'placed', run: 'locked', place: {} },
      // A copy of a run that is gone is set aside where it is read, and named.
      'copy/f': waiting('gone'),
    };
    expect(Object.fromEntries(migrate(new Map<string, unknown>(Object.entries(stored)), 20))).toEqual({
      ...stored,
      'copy/b': waiting(null),
      'copy/c': waiting(null),
    });
  });

  it('keeps what was told of closed runs from version 22 on', () => {
    const stored = new Map<string, unknown>([['closing/r', { notes: 'x' }], other]);
    expect(Object.fromEntries(migrate(stored, 21))).toEqual({
      'closing/r': { notes: 'x', earlier: [] },
      [other[0]]: other[1],
    });
  });

  it('keeps what was said of tables from version 23 on', () => {
    const stored = new Map<string, unknown>([['settings/shop', { columns: { klant: 'order' } }], other]);
    expect(Object.fromEntries(migrate(stored, 22))).toEqual({
      'settings/shop': { columns: { klant: 'order' }, tables: {}, mark: null },
      [other[0]]: other[1],
    });
  });

  it('lets copies wait from version 25 on that were put on a run after it was sent to print', () => {
    const placed = (id: string, run: string) => ({ id, state: 'placed', run, place: { x: 0 } });
    const copies = (...ids: readonly string[]) => ({
      copies: ids.map((id) => ({ id, onto: null, reprint: false })),
      outlines: {},
    });
    const stored = {
      'run/locked': {
        id: 'locked',
        laidBy: 'boxes',
        state: 'locked',
        printed: { as: [copies('a')] },
        snapshot: copies('b'),
        imageFeed: 1,
      },
      'run/draft': { id: 'draft', state: 'draft', printed: null, imageFeed: null, laidBy: 'boxes' },
      'copy/a': placed('a', 'locked'),
      'copy/b': placed('b', 'locked'),
      'copy/c': placed('c', 'locked'),
      'copy/d': placed('d', 'draft'),
      'copy/e': placed('e', 'gone'),
    };
    expect(Object.fromEntries(migrate(new Map<string, unknown>(Object.entries(stored)), 24))).toEqual({
      ...stored,
      'copy/c': { id: 'c', state: 'waiting', run: null, place: null },
    });
  });

  it('has no image make up for the feed of a run before version 26, also of one that undo brings back', () => {
    const patch = (value: unknown) => ({ op: 'add', path: ['run', 'r'], value });
    const name = { op: 'replace', path: ['run', 'r', 'name'], value: 'Run 2' };
    const stored = new Map<string, unknown>([
      ['run/draft', { state: 'draft', received: null }],
      ['run/received', { state: 'locked', received: { known: [] } }],
      ['settings/shop', { printImage: { ppi: 300 } }],
      ['step/1', { redo: [name], undo: [patch({ state: 'draft' })] }],
      other,
    ]);
    expect(Object.fromEntries(migrate(stored, 25))).toEqual({
      'run/draft': { state: 'draft', received: null, imageFeed: null, laidBy: 'boxes' },
      'run/received': { state: 'locked', received: { known: [], stretch: 1 }, imageFeed: 1, laidBy: 'boxes' },
      'settings/shop': {
        printImage: {
          ppi: 300,
          feedCorrected: false,
          corners: false,
          white: false,
          whiteName: 'White',
          names: false,
        },
        cutFile: { form: 'svg', view: 'ink-up' },
        mark: null,
      },
      'step/1': { redo: [name], undo: [patch({ state: 'draft', imageFeed: null, laidBy: 'boxes' })] },
      [other[0]]: other[1],
    });
  });

  it('says of an image made before version 27 that a colour was knocked out, also of one that undo brings back', () => {
    const before = { artwork: 'a', colour: '#fafafa', tolerance: 24, reach: 'from-edge' };
    const after = {
      artwork: 'a',
      by: { kind: 'knock-out', colour: '#fafafa', tolerance: 24, reach: 'from-edge' },
    };
    const add = (madeFrom: unknown, outline?: null) => ({
      op: 'add',
      path: ['artwork', 'b'],
      value: outline === undefined ? { madeFrom } : { madeFrom, outline, outlinedBy: 0 },
    });
    const again = (value: unknown) => ({ op: 'replace', path: ['artwork', 'b', 'madeFrom'], value });
    const remove = { op: 'remove', path: ['artwork', 'b'] };
    const stored = new Map<string, unknown>([
      ['artwork/a', { madeFrom: null }],
      ['artwork/b', { madeFrom: before }],
      ['step/1', { redo: [add(before), again(before)], undo: [remove, again(null)] }],
      other,
    ]);
    expect(Object.fromEntries(migrate(stored, 26))).toEqual({
      'artwork/a': { madeFrom: null, outline: null, outlinedBy: 0 },
      'artwork/b': { madeFrom: after, outline: null, outlinedBy: 0 },
      'step/1': { redo: [add(after, null), again(after)], undo: [remove, again(null)] },
      [other[0]]: other[1],
    });
  });

  it('gives orders at work that shared a tint before version 28 one each, and leaves the first its own', () => {
    const order = (id: string, tint: number, archived = false) =>
      [`order/${id}`, { id, tint, archived }] as const;
    const stored = [
      order('a', 0),
      order('b', 1),
      order('c', 0),
      order('d', 1, true),
      order('e', 0),
      other,
    ] as const;
    const after = [
      order('a', 0),
      order('b', 1),
      order('c', 2),
      order('d', 1, true),
      order('e', 3),
      other,
    ] as const;
    expect(migrate(new Map<string, unknown>(stored), 27)).toEqual(new Map<string, unknown>(after));
  });

  it('opens a shop of before version 29 from Monday to Friday until its orders were due, and chooses no run first', () => {
    const open = (from: string, to: string) => ({
      week: Array.from({ length: 7 }, (_, day) => (day < 5 ? [{ from, to }] : [])),
      closed: [],
    });
    const add = (value: unknown) => ({ op: 'add', path: ['run', 'r'], value });
    const station = (closes: string) => ({ hands: 2, closes });
    const stored = new Map<string, unknown>([
      ['settings/shop', { station: station('16:30') }],
      ['run/r', { received: { station: station('06:00') } }],
      ['run/s', { received: null }],
      ['step/1', { redo: [add({ received: { station: station('00:00') } })], undo: [] }],
      other,
    ]);
    expect(Object.fromEntries(migrate(stored, 28))).toEqual({
      'settings/shop': { runOrder: [], station: { hands: 2, hours: open('08:00', '16:30') }, mark: null },
      'run/r': { received: { station: { hands: 2, hours: open('00:00', '06:00') } }, laidBy: 'boxes' },
      'run/s': { received: null, laidBy: 'boxes' },
      'step/1': {
        redo: [add({ received: { station: { hands: 2, hours: open('08:00', '23:59') } }, laidBy: 'boxes' })],
        undo: [],
      },
      [other[0]]: other[1],
    });
  });

  it('has all copies laid out by boxes before version 31, also in what was printed and what undo brings back', () => {
    const before = { state: 'locked', printed: { to: 1, as: [{ at: 'then' }] }, snapshot: { at: 'now' } };
    const after = {
      state: 'locked',
      laidBy: 'boxes',
      printed: { to: 1, as: [{ at: 'then', outlines: {} }] },
      snapshot: { at: 'now', outlines: {} },
    };
    const add = (value: unknown) => ({ op: 'add', path: ['run', 'r'], value });
    const name = { op: 'replace', path: ['run', 'r', 'name'], value: 'Run 2' };
    const stored = new Map<string, unknown>([
      ['artwork/a', { fileName: 'a.png' }],
      ['run/draft', { state: 'draft', printed: null }],
      ['run/locked', before],
      ['step/1', { redo: [name], undo: [add(before)] }],
      other,
    ]);
    expect(Object.fromEntries(migrate(stored, 30))).toEqual({
      'artwork/a': { fileName: 'a.png', outline: null, outlinedBy: 0 },
      'run/draft': { state: 'draft', printed: null, laidBy: 'boxes' },
      'run/locked': after,
      'step/1': { redo: [name], undo: [add(after)] },
      [other[0]]: other[1],
    });
  });

  it('lays what was turned by a quarter at 90 degrees from version 32 on, in print, in hand and in what undo brings back', () => {
    const at = (turned: boolean) => ({ x: 5000, y: 10_000, turned, pinned: false });
    const as = (angle: number) => ({ x: 5000, y: 10_000, angle, pinned: false });
    const patch = (path: readonly string[], value: unknown) => ({ op: 'replace', path, value });
    const onto = (copy: object) => ({ ...copy, onto: null, reprint: false });
    const run = (copies: readonly unknown[]) => ({
      printed: { to: 1, as: [{ at: 'then', copies }] },
      snapshot: { at: 'now', copies },
      received: null,
    });
    const stored = new Map<string, unknown>([
      ['copy/a', { id: 'a', place: at(true) }],
      ['copy/b', { id: 'b', place: at(false) }],
      ['copy/c', { id: 'c', place: null }],
      ['run/r', run([{ id: 'd', place: at(true) }])],
      ['order/o', { name: 'a', notes: 'turned' }],
      [
        'step/1',
        {
          redo: [patch(['copy', 'a'], { place: at(true) }), patch(['copy', 'a', 'place', 'turned'], true)],
          undo: [patch(['copy', 'a', 'place'], at(false)), patch(['run', 'r'], run([{ place: at(true) }]))],
        },
      ],
    ]);
    expect(Object.fromEntries(migrate(stored, 31))).toEqual({
      'copy/a': { id: 'a', place: as(900) },
      'copy/b': { id: 'b', place: as(0) },
      'copy/c': { id: 'c', place: null },
      'run/r': run([onto({ id: 'd', place: as(900) })]),
      'order/o': { name: 'a', notes: 'turned' },
      'step/1': {
        redo: [patch(['copy', 'a'], { place: as(900) }), patch(['copy', 'a', 'place', 'angle'], 900)],
        undo: [patch(['copy', 'a', 'place'], as(0)), patch(['run', 'r'], run([onto({ place: as(900) })]))],
      },
    });
  });

  it('writes cut files as the map is seen, and no registration corners, before version 34', () => {
    const of = (mapView: string) =>
      new Map<string, unknown>([['settings/shop', { mapView, printImage: { ppi: 300 } }], other]);
    for (const view of ['ink-up', 'on-screen'])
      expect(Object.fromEntries(migrate(of(view), 33))).toEqual({
        'settings/shop': {
          mapView: view,
          printImage: { ppi: 300, corners: false, white: false, whiteName: 'White', names: false },
          cutFile: { form: 'svg', view },
          mark: null,
        },
        [other[0]]: other[1],
      });
  });

  it('asks for a platen for caps from version 43 on', () => {
    const station = (caps: object) => ({ press: { count: 1, ...caps } });
    const run = (caps: object) => ({ state: 'locked', received: { station: station(caps) } });
    const step = (caps: object) => {
      const back = [{ op: 'add', path: ['run', 'r'], value: run(caps) }];
      return { redo: back, undo: back };
    };
    const stored = new Map<string, unknown>([
      ['settings/shop', { station: station({}) }],
      ['run/r', run({})],
      ['step/1', step({})],
      other,
    ]);
    expect(Object.fromEntries(migrate(stored, 42))).toEqual({
      'settings/shop': { station: station({ caps: false }) },
      'run/r': run({ caps: false }),
      'step/1': step({ caps: false }),
      [other[0]]: other[1],
    });
  });

  it('keeps checks by machine from version 46 on, and knows which copies of a locked run are printed again', () => {
    const station = (printers: number) => ({
      printers: Array.from({ length: printers }, (_, at) => ({ id: `printer-${at + 1}` })),
      presses: [{ id: 'press-1' }],
    });
    const [early, locked, late] = ['09', '10', '11'].map((hour) => `2026-11-05T${hour}:00:00.000Z`);
    const run = (copies: readonly object[], more: object = {}) => ({
      state: 'locked',
      snapshot: { at: locked, copies },
      printed: null,
      ...more,
    });
    const stored = (printers: number) =>
      new Map<string, unknown>([
        ['settings/shop', { station: station(printers) }],
        ['check/nozzles', { id: 'nozzles' }],
        ['check/own', { id: 'own' }],
        ['upkeep/a', { check: 'nozzles' }],
        ['upkeep/b', { check: 'platen' }],
        ['upkeep/c', { check: 'own' }],
        ['upkeep/d', { check: 'room' }],
        ['spoilage/1', { copy: 'again', changed: early }],
        ['spoilage/2', { copy: 'first', changed: late }],
        ['run/other', { state: 'draft', spoiled: [{ copies: ['with-film'], at: early }] }],
        ['run/r', run([{ id: 'again' }, { id: 'first' }, { id: 'with-film' }, { id: 'whole' }])],
      ]);
    const one = migrate(stored(1), 45);
    expect(Object.fromEntries(one)).toMatchObject({
      'check/nozzles': { of: 'printer' },
      'check/own': { of: 'shop' },
      'upkeep/a': { machine: 'printer-1' },
      'upkeep/b': { machine: 'press-1' },
      'upkeep/c': { machine: null },
      'upkeep/d': { machine: null },
      'run/r': {
        snapshot: {
          copies: [
            { id: 'again', reprint: true },
            { id: 'first', reprint: false },
            { id: 'with-film', reprint: true },
            { id: 'whole', reprint: false },
          ],
        },
      },
    });
    // Of two printers nobody had said which.
    expect(migrate(stored(2), 45).get('upkeep/a')).toEqual({ check: 'nozzles', machine: null });
  });

  it('knows machines and people one by one from version 45 on, whose test strip is whose, and which film is in which printer', () => {
    const platen = { width: 400_000, length: 500_000 };
    const station = (perHour: number) => ({
      printer: { perHour, warmUp: 240 },
      hands: 2,
      press: { count: 2, platen, caps: true, large: 200_000, warmUp: 720 },
      oven: platen,
      trays: 3,
    });
    const named = (perHour: number, strip: object) => ({
      printers: [{ id: 'printer-1', name: '', perHour, warmUp: 240, ...strip }],
      presses: [1, 2].map((at) => ({ id: `press-${at}`, name: '', platen, caps: true, warmUp: 720 })),
      large: 200_000,
      ovens: [{ id: 'oven-1', name: '', bed: platen }],
      people: [1, 2].map((at) => ({ id: `person-${at}`, name: '', hours: null })),
      trays: 3,
    });
    const strip = { firstEnd: 'tail', inkUp: 'plain', feed: 1.01, mirrored: true };
    const untold = { firstEnd: 'lead', inkUp: 'mirrored', feed: 1, mirrored: false };
    const run = (film: object, more: object, own: object) => ({
      state: 'locked',
      snapshot: { film, ...more },
      printed: { to: 1, as: [{ film, ...more }] },
      received: { station: own },
    });
    const step = (film: object, value: object) => {
      const back = [
        { op: 'add', path: ['film', 'f'], value: film },
        { op: 'add', path: ['run', 'r'], value },
      ];
      return { redo: back, undo: back };
    };
    const film = { name: 'Roll' };
    const { mirrored, ...printer } = strip;
    const stored = new Map<string, unknown>([
      ['settings/shop', { printer, printImage: { ppi: 300, mirrored }, station: station(1) }],
      ['film/f', film],
      ['run/r', run(film, {}, station(2))],
      ['calibration/a', { quantity: 'printer' }],
      ['calibration/b', { quantity: 'white' }],
      ['step/1', step(film, run(film, {}, station(2)))],
      other,
    ]);
    const now = { name: 'Roll', printer: 'printer-1' };
    // What another device handed over tells of its own printer; the strip here was this shop's.
    const locked = run(now, { printer: null }, named(2, strip));
    expect(Object.fromEntries(migrate(stored, 44))).toEqual({
      'settings/shop': { printImage: { ppi: 300 }, station: named(1, strip) },
      'film/f': now,
      'run/r': locked,
      'calibration/a': { quantity: 'printer', printer: 'printer-1' },
      'calibration/b': { quantity: 'white', printer: null },
      'step/1': step(now, locked),
      [other[0]]: other[1],
    });
    // A hand-over comes without the settings of the shop.
    const alone = migrate(new Map([['run/r', run(film, {}, station(2))]]), 44);
    expect(alone.get('run/r')).toEqual(run(now, { printer: null }, named(2, untold)));
    const none = { ...station(1), press: { ...station(1).press, count: 0 } };
    const bare = migrate(new Map([['settings/shop', { station: none }]]), 44);
    expect(bare.get('settings/shop')).toMatchObject({ station: { presses: [], large: 200_000 } });
  });

  it('looks for outlines again from version 44 on, which found no holes before', () => {
    const outlined = { fileName: 'a.png', outline: [[0, 0, 20_000, 0, 0, 20_000]] };
    const bare = { fileName: 'b.png', outline: null };
    const step = (value: object) => {
      const back = [{ op: 'add', path: ['artwork', 'a'], value }];
      return { redo: back, undo: back };
    };
    const stored = new Map<string, unknown>([
      ['artwork/a', outlined],
      ['artwork/b', bare],
      ['step/1', step(outlined)],
      other,
    ]);
    expect(Object.fromEntries(migrate(stored, 43))).toEqual({
      'artwork/a': { ...outlined, outlinedBy: 1 },
      'artwork/b': { ...bare, outlinedBy: 0 },
      'step/1': step({ ...outlined, outlinedBy: 1 }),
      [other[0]]: other[1],
    });
  });

  it('allows for rest from version 41 on where the shop put in no time of its own, and knows who ticked', () => {
    const handling = {
      cutOff: 30,
      powder: 75,
      load: 20,
      cutApart: 10,
      dress: 15,
      place: 8,
      pack: 15,
      loose: 8,
    };
    const changed = '2026-11-20T08:00:00.000Z';
    const tick = { id: 't', run: 'r', subject: 'print/0', done: true, at: changed };
    const entry = { id: 'u', check: 'nozzles', done: true };
    const step = (value: object) => {
      const back = [{ op: 'add', path: ['run', 'r'], value }];
      return { redo: back, undo: back };
    };
    const run = (own: object) => ({ state: 'locked', received: { station: own } });
    const stored = new Map<string, unknown>([
      ['settings/shop', { station: { handling } }],
      ['run/r', run({ handling: { ...handling, pack: 12 } })],
      ['tick/t', tick],
      ['aside/a', { id: 'a', ticks: [tick] }],
      ['upkeep/u', entry],
      ['step/1', step(run({ handling: { ...handling, cutApart: 9 } }))],
      other,
    ]);
    const began = { ...handling, cutApart: 5, cutMetre: 10 };
    expect(Object.fromEntries(migrate(stored, 40))).toEqual({
      'settings/shop': { station: { handling: began, allowance: 0.12 } },
      // What was measured holds its rests already.
      'run/r': run({ handling: { ...began, pack: 12 }, allowance: 0 }),
      'tick/t': { ...tick, by: '', machine: null },
      'aside/a': { id: 'a', ticks: [{ ...tick, by: '', machine: null }] },
      'upkeep/u': { ...entry, failed: null, machine: null },
      'step/1': step(run({ handling: { ...handling, cutApart: 9, cutMetre: 0 }, allowance: 0 })),
      [other[0]]: other[1],
    });
  });

  it('counts wet time from the first ink from version 39 on, asks how runs are sent, and takes a run for one job', () => {
    const perHour = 2_500_000;
    const station = (more: object = {}, printer: object = {}, handling: object = {}) => ({
      printer: { perHour, ...printer },
      handling: { powder: 75, ...handling },
      wetLimit: 300,
      ...more,
    });
    // The longest span of the book, 400 mm, is printed in 576 s.
    const known = station(
      { wetLimit: 876, powderLimit: 1800, trays: 3, allowance: 0 },
      { sends: null, feedsBack: null },
      { loose: 8, cutMetre: 0 },
    );
    const roll = (more: object = {}) => ({ kind: 'roll', spanMax: 400_000, jobBlank: 0, ...more });
    const sheets = { kind: 'sheets', length: 297_000 };
    const run = (film: object, own: object) => ({
      state: 'locked',
      snapshot: { film, outlines: {} },
      printed: { to: 1, as: [{ film }] },
      received: { station: own },
    });
    const locked = (film: object, own: object) => ({
      ...run(film, own),
      snapshot: { film, outlines: {}, printer: null },
      printed: { to: 1, as: [{ film, printer: null }] },
    });
    const step = (film: object, value: object) => {
      const back = [
        { op: 'add', path: ['run', 'r'], value },
        { op: 'replace', path: ['film', 'f'], value: film },
        { op: 'replace', path: ['film', 'f', 'price'], value: { amount: 3 } },
      ];
      return { redo: back, undo: back };
    };
    const stored = new Map<string, unknown>([
      ['settings/shop', { unit: 'mm', station: station() }],
      ['film/f', roll()],
      ['film/s', sheets],
      ['run/r', run(roll(), station())],
      ['step/1', step(roll(), run(roll(), station()))],
      other,
    ]);
    const now = roll({ jobs: 'run', printer: 'printer-1' });
    expect(Object.fromEntries(migrate(stored, 38))).toEqual({
      'settings/shop': { unit: 'mm', station: known },
      'film/f': now,
      'film/s': { ...sheets, printer: 'printer-1' },
      'run/r': locked(now, known),
      'step/1': step(now, locked(now, known)),
      [other[0]]: other[1],
    });
  });

  it('presses as large from 200 mm before version 38, in inch shops from 8 in; a received run goes on as it did', () => {
    const station = (large: object) => ({ press: { count: 1, ...large }, hands: 1 });
    const run = (large: object) => ({ state: 'locked', received: { station: station(large) } });
    const step = (large: object) => {
      const back = [{ op: 'add', path: ['run', 'r'], value: run(large) }];
      return { redo: back, undo: back };
    };
    for (const [unit, large] of [
      ['mm', 200_000],
      ['in', 203_200],
    ] as const) {
      const stored = new Map<string, unknown>([
        ['settings/shop', { unit, station: station({}) }],
        ['run/r', run({})],
        ['step/1', step({})],
        other,
      ]);
      expect(Object.fromEntries(migrate(stored, 37))).toEqual({
        'settings/shop': { unit, station: station({ large, caps: false }) },
        'run/r': run({ large: 200_000, caps: false }),
        'step/1': step({ large: 200_000, caps: false }),
        [other[0]]: other[1],
      });
    }
  });

  it('has one fabric an order before version 40: its lines have it then, in the book, in what runs embed and in what undo brings back', () => {
    const order = (id: string, fabric: string | undefined) => ({
      id,
      ...(fabric ? { fabric } : {}),
      wants: 'garments',
    });
    const listed = (own: object) => ({ id: 't', order: 'o', garment: null, grid: null, ...own });
    const called = (own: object) => ({
      id: 'u',
      order: 'o',
      garment: null,
      grid: { placement: 'p', width: 80 },
      ...own,
    });
    const garment = (own: object) => ({ id: 'g', order: 'o', count: 3, ...own });
    const gone = (own: object) => ({ id: 'h', order: 'q', count: 1, ...own });
    const snapshot = (fabric: string | undefined, told: object, onto: object, takes: object) => ({
      orders: [order('o', fabric)],
      transfers: [listed(told), called('fabric' in told ? { fabric: null } : {})],
      copies: [{ id: 'c', ...onto }],
      garments: [garment({ ...told, ...takes })],
    });
    const run = (of: (fabric: string) => object) => ({
      id: 'r',
      snapshot: of('nylon'),
      printed: { to: 90, as: [of('leather')] },
    });
    const step = (fabric: string | undefined, told: object) => [
      { op: 'add', path: ['order', 'q'], value: order('q', fabric) },
      { op: 'add', path: ['garment', 'h'], value: gone(told) },
      { op: 'replace', path: ['order', 'o', 'name'], value: 'Barn' },
    ];
    const change = { op: 'replace', path: ['order', 'o', 'fabric'], value: 'cotton' };
    const migrated = migrate(
      new Map<string, unknown>([
        ['order/o', order('o', 'polyester')],
        ['transfer/t', listed({})],
        ['transfer/u', called({})],
        ['garment/g', garment({})],
        ['run/r', run((fabric) => snapshot(fabric, {}, {}, {}))],
        ['step/1', { redo: [change], undo: [...step('canvas', {}), change] }],
        other,
      ]),
      39,
    );
    expect(Object.fromEntries(migrated)).toEqual({
      'order/o': order('o', undefined),
      'transfer/t': listed({ fabric: 'polyester' }),
      'transfer/u': called({ fabric: null }),
      'garment/g': garment({ fabric: 'polyester' }),
      'run/r': run((fabric) => snapshot(undefined, { fabric }, { onto: null, reprint: false }, { takes: 3 })),
      'step/1': { redo: [], undo: step(undefined, { fabric: 'canvas' }) },
      [other[0]]: other[1],
    });
  });

  it('prints all sizes of a place at their group’s widths before version 42, in print and in what undo brings back', () => {
    const place = (own: object) => ({ id: 'p', place: 'front', ...own });
    const run = (own: object) => ({
      id: 'r',
      snapshot: { placements: [place(own)] },
      printed: { to: 9, as: [{ placements: [place(own)] }] },
    });
    const undo = (own: object) => [
      { op: 'add', path: ['placement', 'p'], value: place(own) },
      { op: 'add', path: ['run', 'r'], value: run(own) },
      { op: 'replace', path: ['placement', 'p', 'place'], value: 'back' },
    ];
    const stored = (own: object): Record<string, unknown> => ({
      'placement/p': place(own),
      'run/r': run(own),
      'step/1': { redo: [], undo: undo(own) },
      [other[0]]: other[1],
    });
    expect(Object.fromEntries(migrate(new Map(Object.entries(stored({}))), 41))).toEqual(
      stored({ sizes: {} }),
    );
  });

  it('knows of nothing that was ticked before version 47 on which machine it was done', () => {
    const tick = { id: 't', run: 'r', subject: 'press/1', done: true, by: 'MK' };
    const undo = (own: object) => [{ op: 'add', path: ['tick', 't'], value: own }];
    const stored = (own: object): Record<string, unknown> => ({
      'tick/t': own,
      'aside/a': { id: 'a', ticks: [own] },
      'step/1': { redo: [], undo: undo(own) },
      [other[0]]: other[1],
    });
    expect(Object.fromEntries(migrate(new Map(Object.entries(stored(tick))), 46))).toEqual(
      stored({ ...tick, machine: null }),
    );
  });

  it('keeps no mark of a shop that had none before version 35', () => {
    const migrated = migrate(new Map([['settings/shop', { letterhead: { name: 'Barn' } }]]), 34);
    expect(migrated.get('settings/shop')).toEqual({ letterhead: { name: 'Barn' }, mark: null });
  });

  it('leaves records of the present version alone', () => {
    const records = new Map<string, unknown>([other]);
    expect(migrate(records, MODEL_VERSION)).toEqual(records);
  });

  it('trusts 0.2 mm of white before version 36, in the units of the shop, and writes no plane of it', () => {
    const shop = (unit: string) => ({ unit, limits: { choke: 100 }, printImage: { form: 'pdf' } });
    for (const [unit, white] of [
      ['mm', 200],
      ['in', 203],
    ] as const) {
      const stored = new Map<string, unknown>([['settings/shop', shop(unit)], other]);
      expect(Object.fromEntries(migrate(stored, 35))).toEqual({
        'settings/shop': {
          unit,
          limits: { choke: 100, white },
          printImage: { form: 'pdf', white: false, whiteName: 'White', names: false },
        },
        [other[0]]: other[1],
      });
    }
  });

  it.each([
    [MODEL_VERSION + 1, 'newer'],
    [0, 'damaged'],
    [1.5, 'damaged'],
    [Number.NaN, 'damaged'],
    ['1', 'damaged'],
    [undefined, 'damaged'],
  ])('lets nothing of version %s be taken for ours', async (version, problem) => {
    expect(await bringUpFrom(version)).toEqual({ ok: false, problem });
  });
});
