import { describe, expect, it } from 'vitest';
import { startingCosts, startingRates } from '../../src/costing';
import { MODEL_VERSION, migrate, readRecord } from '../../src/model';
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
const other = ['order/1', { id: '1', code: 'HB' }] as const;

describe('migration', () => {
  it('keeps the sides of a film apart from version 2 on', () => {
    const migrated = migrate(new Map<string, unknown>([['film/film-1', filmOne], other]), 1);
    const film = readRecord('film', migrated?.get('film/film-1'));
    expect(film?.margins).toEqual({ left: 4000, right: 4000, lead: 10_000, tail: 12_000 });
    expect(migrated?.get(other[0])).toMatchObject(other[1]);
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
    expect(readRecord('copy', migrated?.get('copy/c'))).toMatchObject({
      run: 'r',
      role: 'ordered',
      place: { x: 5000, y: 10_000, turned: false, pinned: true },
    });
    expect(readRecord('copy', migrated?.get('copy/w'))).toMatchObject({ run: null, place: null });
    expect(readRecord('run', migrated?.get('run/r'))).toMatchObject({
      takes: 'all',
      printedTo: 0,
      snapshot: null,
    });
    for (const [key, collection] of [
      ['film/f', 'film'],
      ['order/o', 'order'],
      ['transfer/t', 'transfer'],
      ['settings/shop', 'settings'],
    ] as const) {
      expect(readRecord(collection, migrated?.get(key)), key).not.toBeNull();
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
    expect(readRecord('film', migrated?.get('film/f'))?.together).toEqual({ kind: 'any' });
    expect(migrated?.get('run/r')).toMatchObject({ snapshot: { film: { together: { kind: 'any' } } } });
    expect(migrated?.has('step/s')).toBe(false);
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
    expect(readRecord('artwork', migrated?.get('artwork/a'))?.madeFrom).toBeNull();
    expect(readRecord('settings', migrated?.get('settings/shop'))?.limits).toEqual({
      stroke: 500,
      opening: 800,
      choke: 200,
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
      const read = readRecord('settings', migrated?.get('settings/shop'));
      expect(read?.printImage).toEqual({
        form: 'png',
        ppi: 300,
        mirrored,
        ticks: false,
        numbers: false,
      });
      expect(read?.printer.feed).toBe(1.002);
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
    expect(readRecord('film', migrated?.get('film/film-1'))).toMatchObject({ peel: 'hot' });
    expect(readRecord('order', migrated?.get('order/o'))).toMatchObject({
      fabric: 'cotton',
      wants: 'garments',
    });
    expect(readRecord('copy', migrated?.get('copy/c'))).toMatchObject({ shelved: false, place });
    expect(readRecord('settings', migrated?.get('settings/shop'))?.station).toEqual(startingStation('F'));
    expect(readRecord('run', migrated?.get('run/r'))).toMatchObject({
      state: 'locked',
      history: [],
      snapshot: { film: { peel: 'hot' }, orders: [{ fabric: 'cotton' }], copies: [{ shelved: false }] },
    });
  });

  it('counts ink and powder from version 8 on', () => {
    const settings = { ...settingsSix, station: startingStation('C') };
    const migrated = migrate(new Map([['settings/shop', settings]]), 7);
    expect(migrated?.get('settings/shop')).toMatchObject({ ...settings, rates: startingRates });
  });

  it('speaks English in a shop of version 8, which had no other language', () => {
    const settings = { ...settingsSix, station: startingStation('C'), rates: startingRates };
    const migrated = migrate(new Map<string, unknown>([['settings/shop', settings], other]), 8);
    expect(migrated?.get('settings/shop')).toMatchObject({ ...settings, language: 'en' });
    expect(migrated?.get(other[0])).toMatchObject(other[1]);
  });

  it('knows costs, prices and quotes from version 13 on, in the units of the currency', () => {
    const settings = {
      ...settingsSix,
      language: 'en',
      station: startingStation('C'),
      rates: startingRates,
      shelfFirst: true,
    };
    const changed = '2026-11-24T08:00:00.000Z';
    const order = { id: 'o', fabric: 'cotton', wants: 'garments', changed };
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
    const run = { id: 'r', snapshot: { orders: [order], garments: [garment] } };
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
      expect(readRecord('settings', twelve(currency)?.get('settings/shop'))).toMatchObject({
        costs: startingCosts(currency),
        pricing: startingPricing(currency),
        alternatives: [],
      });
    }
    const own = { supplied: false, pricing: { aim: null, newDesigns: null, discount: 0 } };
    expect(twelve('USD')?.get('order/o')).toEqual({ ...order, ...own });
    expect(readRecord('garment', twelve('USD')?.get('garment/g'))?.price).toBeNull();
    expect(twelve('USD')?.get('run/r')).toEqual({
      ...run,
      basis: null,
      snapshot: { orders: [{ ...order, ...own }], garments: [{ ...garment, price: null }] },
    });
    // A step could bring back an order without them.
    expect(twelve('USD')?.has('step/1')).toBe(false);
  });

  it('opens the ledger from version 10 on with what is left of every film, and begins undo anew', () => {
    const changed = '2026-11-20T08:00:00.000Z';
    const nine = new Map<string, unknown>([
      ['film/f', { ...filmOne, id: 'f', kind: 'roll', name: 'Roll', changed }],
      ['film/s', { id: 's', name: 'Sheets', kind: 'sheets', sheetsLeft: 25, changed }],
      ['film/e', { ...filmOne, id: 'e', kind: 'roll', lengthLeft: 0, changed }],
      ['step/s', { id: 's', number: 1, redo: [], undo: [{ op: 'remove', path: ['film', 'f'] }] }],
    ]);
    const migrated = migrate(nine, 9);
    const entries = [...(migrated ?? [])].flatMap(([key, value]) =>
      key.startsWith('entry/') ? [readRecord('entry', value)] : [],
    );
    expect(entries).toMatchObject([
      { item: 'f', name: 'Roll', unit: 'length', kind: 'opening', amount: 60_000_000, at: changed },
      { item: 's', name: 'Sheets', unit: 'sheets', kind: 'opening', amount: 25, counters: null },
    ]);
    expect(migrated?.get('film/f')).toEqual(nine.get('film/f'));
    expect(migrated?.has('step/s')).toBe(false);
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
      ['run/r', { id: 'r', snapshot }],
      ['run/d', { id: 'd', snapshot: null }],
      ['step/1', { patches: [] }],
      other,
    ]);
    const migrated = migrate(ten, 10);
    expect(readRecord('transfer', migrated?.get('transfer/t'))).toEqual({ ...transfer, meant: [] });
    expect(migrated?.get('run/r')).toMatchObject({ snapshot: { transfers: [{ ...transfer, meant: [] }] } });
    expect(migrated?.get('run/d')).toMatchObject({ id: 'd', snapshot: null });
    expect(migrated?.has('step/1')).toBe(false);
    expect(migrated?.get(other[0])).toMatchObject(other[1]);
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
    expect(migrated?.get('run/r')).toMatchObject({
      received: null,
      snapshot: { garments: [garment], placements: [] },
    });
    expect(migrated?.get('run/d')).toMatchObject({ received: null, snapshot: null });
    expect(migrated?.get('settings/shop')).toMatchObject({ shelfFirst: true, station: { oneClosing } });
  });

  it('keeps every record as it was where upkeep and calibration are new, in version 14', () => {
    const thirteen = new Map<string, unknown>([other, ['run/r', { id: 'r' }]]);
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
      ['run/r', { id: 'r', snapshot: { orders: [{ ...order, quote }] } }],
      ['run/d', { id: 'd', snapshot: null }],
      ['step/1', {}],
    ]);
    const migrated = migrate(fourteen, 14);
    const kept = [...(migrated ?? [])].flatMap(([key, value]) =>
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
    expect(migrated?.get('order/o')).toEqual(order);
    expect(migrated?.get('order/p')).toEqual({ ...order, id: 'p' });
    expect(migrated?.get('run/r')).toEqual({ id: 'r', snapshot: { orders: [order] } });
    expect(migrated?.get('run/d')).toEqual({ id: 'd', snapshot: null });
    expect(migrated?.has('step/1')).toBe(false);
  });

  it('counts no ink for starts before version 16, in what locked runs rest on too', () => {
    const { start, ...maintenance } = startingCosts('EUR').maintenance;
    const costs = { ...startingCosts('EUR'), maintenance };
    const fifteen = new Map<string, unknown>([
      ['settings/shop', { currency: 'EUR', costs }],
      ['run/r', { id: 'r', basis: { costs, use: 'kept' } }],
      ['run/d', { id: 'd', basis: null }],
      ['step/1', {}],
    ]);
    const migrated = migrate(fifteen, 15);
    expect(migrated?.get('settings/shop')).toEqual({ currency: 'EUR', costs: startingCosts('EUR') });
    expect(migrated?.get('run/r')).toEqual({ id: 'r', basis: { costs: startingCosts('EUR'), use: 'kept' } });
    expect(migrated?.get('run/d')).toEqual({ id: 'd', basis: null });
    expect(start).toEqual({ colour: 0, white: 0 });
    expect(migrated?.has('step/1')).toBe(false);
  });

  it('leaves records of the present version alone', () => {
    const records = new Map<string, unknown>([other]);
    expect(migrate(records, MODEL_VERSION)).toEqual(records);
  });

  it('lets nothing of a newer version, or of none, be taken for ours', () => {
    for (const version of [MODEL_VERSION + 1, 0, 1.5, Number.NaN])
      expect(migrate(new Map(), version)).toBeNull();
  });
});
