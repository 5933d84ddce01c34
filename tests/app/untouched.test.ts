import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { limitsTable } from '../../app/artwork/limits-form';
import { alternativeTable } from '../../app/costs/alternative-form';
import { costsTable } from '../../app/costs/costs-form';
import { filmTable } from '../../app/film/film-form';
import type { Reader } from '../../app/parts/fields/codec';
import { type FormName, type FormTable, namesOf, readForm, type Typed } from '../../app/parts/fields/form';
import { closingTable, type Proposal } from '../../app/press/close-form';
import { cureTable, pressTable } from '../../app/press/recipe-form';
import { stationTable } from '../../app/press/station-form';
import { pricesTable } from '../../app/pricing/prices-form';
import { type Added, addTable } from '../../app/stock/add-form';
import { boxTable } from '../../app/stock/box-form';
import { type Air, airTable } from '../../app/upkeep/air-form';
import { type CheckFields, checkTable } from '../../app/upkeep/check-form';
import { failedTable } from '../../app/upkeep/failed-form';
import { en } from '../../app/words/en';
import { es } from '../../app/words/es';
import type { Ways } from '../../app/words/format';
import type { Limits } from '../../src/artwork';
import type { Failed, FilmFields } from '../../src/editing';
import {
  type Alternative,
  asId,
  type Costs,
  covers,
  curers,
  firstOf,
  hazards,
  origins,
  type PressValues,
  type Pricing,
  pressures,
  type Rates,
  type Station,
  type StockUnit,
  type Stretch,
  subjects,
} from '../../src/model';
import { startingOven, startingPerson, startingStation } from '../../src/pressing';
import type { LocalDate } from '../../src/units';
import { people, presses, printing } from '../pressing/stations';

/** Values of a kind whose fields are whole numbers in units of their own. */
const whole = <Value>(least: number, most: number) =>
  fc.integer({ min: least, max: most }) as unknown as fc.Arbitrary<Value>;

const ways = fc.record({
  unit: fc.constantFrom('mm' as const, 'in' as const),
  currency: fc.constantFrom('USD', 'EUR', 'JPY', 'KWD'),
  locale: fc.constantFrom('en-US', 'en-GB', 'es', 'es-MX'),
});
const reading = (how: Ways) => ({ ...how, words: how.locale.startsWith('es') ? es : en });

const rate = fc.option(whole<NonNullable<Costs['energy']>>(1000, 3_000_000));
const money = whole<Pricing['minimum']>(0, 9_000_000);
const volume = whole<Rates['colour']>(1, 400_000);
const mass = whole<Rates['powder']>(1, 400_000);
const length = whole<FilmFields['gap']>(1000, 3_000_000);
const margin = whole<FilmFields['gap']>(0, 20_000);
const time = whole<Station['wetLimit']>(1, 20_000);
const share = fc.double({ min: 0, max: 1, noNaN: true });
const count = whole<number>(0, 999_999);
/** As it may have been taken over from elsewhere, with blanks around it. */
const text = fc.constantFrom('Barn', ' two  words ', 'año\n', '0', '12 mm');

const labour = fc.record({ artwork: rate, printing: rate, cutting: rate, pressing: rate, packing: rate });
const shopCosts: fc.Arbitrary<Costs> = fc.record({
  filmBy: fc.constantFrom('footprint' as const, 'ink' as const),
  colourInk: rate,
  whiteInk: rate,
  powder: rate,
  maintenance: fc.record({
    day: volume,
    runsADay: whole(1, 50),
    cleaning: volume,
    cleanings: whole(0, 50),
    start: fc.record({ colour: volume, white: volume }),
  }),
  energy: rate,
  watts: fc.record({ printer: whole(0, 9000), oven: whole(0, 9000), press: whole(0, 9000) }),
  labour,
  artworkTime: fc.record({ order: time, design: time }),
  blank: fc.option(money),
  blanks: fc.array(fc.record({ style: fc.constantFrom('Tee', 'Hoodie, navy'), price: money }), {
    maxLength: 2,
  }),
  spoilage: share,
  overhead: fc.oneof(
    fc.record({ kind: fc.constant('hour' as const), rate }),
    fc.record({ kind: fc.constant('share' as const), share }),
  ),
});
const rates: fc.Arbitrary<Rates> = fc.record({
  colour: whole(1000, 400_000),
  white: whole(1000, 400_000),
  powder: whole(1000, 400_000),
});

const pricing: fc.Arbitrary<Pricing> = fc.record({
  aim: fc.oneof(
    fc.record({ kind: fc.constant('markup' as const), share: share.map((part) => 90 * part) }),
    fc.record({ kind: fc.constant('margin' as const), share: share.map((part) => 0.99 * part) }),
  ),
  by: fc.constantFrom('cost' as const, 'placement' as const, 'length' as const),
  placement: whole<Pricing['placement']>(1, 100_000),
  length: fc.record({
    amount: whole<Pricing['minimum']>(100, 900_000),
    per: whole<FilmFields['gap']>(100_000, 3_000_000),
  }),
  artworkFee: money,
  breaks: fc.constantFrom([], [{ from: 24, off: 1 / 3 }]),
  breaksBy: fc.constantFrom('order' as const, 'design' as const),
  rush: share,
  minimum: money,
  deposit: share,
  tax: fc.option(
    fc.record({ name: text, share, kind: fc.constantFrom('on-top' as const, 'included' as const) }),
  ),
  validDays: whole(1, 365),
  nextQuote: whole(1, 99),
});

const offered = { id: fc.constant('x'), name: text, shipping: money, days: whole<number>(0, 20) };
const alternative: fc.Arbitrary<Alternative> = fc.oneof(
  fc.record({
    ...offered,
    kind: fc.constant('length' as const),
    width: length,
    price: fc.record({ amount: money, per: length }),
  }),
  fc.record({ ...offered, kind: fc.constant('piece' as const), price: money }),
  fc.record({
    ...offered,
    kind: fc.constant('decorated' as const),
    setUp: money,
    colours: whole<number>(1, 20),
    price: money,
  }),
);

const anyFilm = {
  name: text,
  width: whole<FilmFields['width']>(200_000, 900_000),
  margins: fc.record({ left: margin, right: margin, lead: margin, tail: margin }),
  gap: whole<FilmFields['gap']>(0, 12_000),
  cutting: fc.constantFrom('free' as const, 'straight' as const, 'staged' as const),
  together: fc.oneof(
    fc.record({ kind: fc.constant('near' as const), share }),
    fc.record({ kind: fc.constantFrom('any' as const, 'apart' as const, 'by-due' as const) }),
  ),
  peel: fc.constantFrom('hot' as const, 'warm' as const, 'cold' as const),
  curl: margin,
  printer: fc.constant(firstOf('printer')),
  archived: fc.boolean(),
};
const film: fc.Arbitrary<FilmFields> = fc.oneof(
  fc.record({
    ...anyFilm,
    kind: fc.constant('roll' as const),
    lengthLeft: whole<FilmFields['gap']>(2_000_000, 99_000_000),
    price: fc.record({ amount: money, per: length }),
    spanMax: fc.option(whole<FilmFields['gap']>(400_000, 900_000)),
    jobBlank: margin,
    jobs: fc.constantFrom('run' as const, 'span' as const),
    cutBlank: margin,
    unreached: whole<FilmFields['gap']>(0, 400_000),
    noPrint: fc.array(
      whole<FilmFields['gap']>(0, 400_000).chain((from) =>
        fc.record({ from: fc.constant(from), to: whole<FilmFields['gap']>(from + 1000, 2_000_000) }),
      ),
      { maxLength: 2 },
    ),
  }),
  fc.record({
    ...anyFilm,
    kind: fc.constant('sheets' as const),
    length: whole<FilmFields['gap']>(200_000, 900_000),
    sheetsLeft: count,
    price: money,
  }),
);

const station: fc.Arbitrary<Station> = fc
  .record({
    perHour: length,
    width: length,
    bed: length,
    time,
    curer: fc.constantFrom('press' as const, 'oven' as const),
    sunday: fc.constantFrom<Stretch[][]>([], [{ from: '09:30', to: '13:00' }]),
    closed: fc.subarray(['2026-12-25', '2027-01-01'] as LocalDate[]),
  })
  .map(({ perHour, width, bed, time: seconds, curer, sunday, closed }) => {
    const starting = startingStation('F');
    return {
      ...starting,
      curer,
      hours: { week: starting.hours.week.with(6, sunday), closed: [...closed] },
      ...printing({ perHour, warmUp: seconds }),
      ...presses(2, { platen: { width, length: bed } }),
      ovens: [{ ...startingOven(firstOf('oven')), bed: { width: bed, length: width } }],
      people: [
        startingPerson(firstOf('person')),
        { ...startingPerson(asId('person-2')), name: 'Zq', hours: starting.hours.week.with(6, sunday) },
      ],
      allowance: sunday.length === 0 ? 0.12 : 0.155,
    };
  });

const lots = fc.record({ film: text, colour: text, white: text, powder: text });
const inks = { colour: fc.option(volume), white: fc.option(volume), powder: fc.option(mass) };
const closing: fc.Arbitrary<Proposal> = fc.record({
  id: whole<Proposal['id']>(1, 1),
  name: text,
  at: whole<Proposal['at']>(1, 1),
  day: whole<Proposal['day']>(1, 1),
  film: fc.record({
    id: whole<Proposal['film']['id']>(1, 1),
    name: text,
    kind: fc.constantFrom('roll' as const, 'sheets' as const),
    width: length,
  }),
  work: fc.constant({ copies: 1, pressed: 1, spans: 1, platenClosings: 1, copyArea: 1, coverage: null }),
  planned: fc.record({
    film: length,
    sheets: count,
    ...inks,
    time: fc.record({ printer: time, hands: time, press: time, oven: time }),
  }),
  actual: fc.record({
    film: length,
    sheets: count,
    ...inks,
    time: fc.record({
      printer: fc.option(time),
      hands: fc.option(time),
      press: fc.option(time),
      oven: fc.option(time),
    }),
  }),
  spoiled: fc.constant([]),
  lots,
  air: fc.record({
    temperature: fc.option(fc.double({ min: 10, max: 40, noNaN: true })),
    humidity: fc.option(share),
  }),
  notes: text,
});

const values = { temperature: whole<PressValues['temperature']>(0, 3000) };
const noted = { origin: fc.constantFrom(...origins), notes: text };
const pressing = fc.record({
  ...noted,
  values: fc.record({
    ...values,
    pressure: fc.constantFrom(...pressures),
    seconds: fc.record({ small: time, large: time }),
    wait: time,
    prePress: time,
    secondPress: time,
    cover: fc.constantFrom(...covers),
  }),
});
const curing = fc.record({ ...noted, values: fc.record({ ...values, seconds: time, clear: margin }) });

const limit = whole<Limits['stroke']>(0, 5000);
const limits: fc.Arbitrary<Limits> = fc.record({ stroke: limit, opening: limit, choke: limit, white: limit });

const day = fc.constantFrom(null, '2026-11-25' as LocalDate);
const stock = { pieces: 999_999, sheets: 999_999, length: 99_000_000, volume: 20_000_000, mass: 20_000_000 };
const box = (unit: StockUnit) =>
  fc.record({
    lot: text,
    bestBefore: day,
    opened: day,
    reorder: fc.option(whole<number>(0, stock[unit])),
    order: text,
  });

const added = (unit: StockUnit): fc.Arbitrary<Added> =>
  fc.oneof(
    fc.record({
      of: fc.constant('things' as const),
      name: text,
      amount: whole<number>(1, stock[unit]),
      box: box(unit),
    }),
    fc.record({
      of: fc.constant('garments' as const),
      style: text,
      colour: text,
      sizes: fc.array(
        fc.record({ size: fc.constantFrom('S', '2XL', '5-6 años'), count: whole<number>(0, 99_999) }),
        { minLength: 1, maxLength: 3 },
      ),
      box: box(unit),
    }),
  );

/** Air that people work in; one figure of it may be left out. */
const failed: fc.Arbitrary<Failed> = fc.record({
  seconds: whole<Failed['seconds']>(1, 80_000),
  colour: whole<Failed['colour']>(0, 90_000_000),
  white: whole<Failed['white']>(0, 90_000_000),
});

const degreesOfAir = fc.double({ min: -9.9, max: 49.9, noNaN: true });
const damp = fc.double({ min: 0.06, max: 1, noNaN: true });
const air: fc.Arbitrary<Air> = fc.oneof(
  fc.record({ temperature: degreesOfAir, humidity: fc.option(damp) }),
  fc.record({ temperature: fc.option(degreesOfAir), humidity: damp }),
);

/** A check; one of the shop's own has a name. */
const check = (name: fc.Arbitrary<string>): fc.Arbitrary<CheckFields> =>
  fc.record({
    name,
    interval: fc.oneof(
      fc.record({ kind: fc.constant('day' as const) }),
      fc.record({ kind: fc.constant('days' as const), days: whole<number>(2, 366) }),
      fc.record({ kind: fc.constant('film' as const), length }),
      fc.record({ kind: fc.constant('idle' as const), days: whole<number>(1, 366) }),
      fc.record({ kind: fc.constant('pause' as const), hours: whole<number>(1, 168) }),
    ),
    of: fc.constantFrom(...subjects),
    hazard: fc.constantFrom(...hazards),
  });

/** Every text of a form typed over itself. */
function typedAsShown<Whole, Name extends string>(
  table: FormTable<Whole, Name>,
  record: Whole,
  reader: Reader,
): Typed<Name> {
  const typed: { [Field in Name]?: string } = {};
  for (const name of namesOf(table)) {
    const shown = table.fields[name].show(record, reader);
    if (shown) typed[name] = shown;
  }
  return typed;
}

const degrees = ['C', 'F'] as const;
const stockUnits = ['length', 'sheets', 'volume', 'mass', 'pieces'] as const;

/** A form, and records that it may be opened with. */
const drawn =
  <Whole, Name extends string>(table: FormTable<Whole, Name>, records: fc.Arbitrary<Whole>) =>
  (hold: <Each, Field extends string>(table: FormTable<Each, Field>, records: fc.Arbitrary<Each>) => void) =>
    hold(table, records);

/** Every form there is: one that is missing here does not compile. */
const forms: Readonly<Record<FormName, readonly ReturnType<typeof drawn>[]>> = {
  added: stockUnits.map((unit) => drawn(addTable(unit, new Set()), added(unit))),
  air: degrees.map((unit) => drawn(airTable(unit), air)),
  alternative: [drawn(alternativeTable, alternative)],
  box: stockUnits.map((unit) => drawn(boxTable(unit), box(unit))),
  check: [
    drawn(checkTable(null), check(text)),
    drawn(checkTable('nozzles'), check(fc.oneof(fc.constant(''), text))),
  ],
  closing: curers.flatMap((curer) =>
    degrees.map((unit) => drawn(closingTable({ curer, temperature: unit }), closing)),
  ),
  costs: [drawn(costsTable, fc.record({ costs: shopCosts, rates }))],
  curing: curers.flatMap((by) => degrees.map((unit) => drawn(cureTable(unit, by), curing))),
  failed: [drawn(failedTable, failed)],
  film: [drawn(filmTable, film)],
  limits: [drawn(limitsTable, limits)],
  pressing: degrees.map((unit) => drawn(pressTable(startingStation(unit)), pressing)),
  prices: [
    drawn(
      pricesTable,
      fc.record({
        pricing,
        letterhead: fc.record({ name: text, address: text }),
        mark: fc.constantFrom(null, 'iVBORw=='),
      }),
    ),
  ],
  station: [drawn(stationTable({ ...startingStation('F'), ...presses(2), ...people(2) }), station)],
};

describe.each(Object.entries(forms))('the form of %s', (name, cases) => {
  it('is called so', () => {
    for (const form of cases) form((table) => expect(table.name).toBe(name));
  });

  it('changes nothing when it is saved untouched, nor with its own texts typed over themselves', () => {
    for (const form of cases) {
      form((table, records) =>
        fc.assert(
          fc.property(records, ways, (record, how) => {
            const reader = reading(how);
            const entry = { record, typed: {} };
            expect(readForm(table, entry, reader)).toEqual({ ok: true, value: record });
            const typed = typedAsShown(table, record, reader);
            expect(readForm(table, { record, typed }, reader)).toEqual({ ok: true, value: record });
          }),
        ),
      );
    }
  });

  it('can read all that it shows, and shows it again as it was', () => {
    for (const form of cases) {
      form((table, records) =>
        fc.assert(
          fc.property(records, ways, (record, how) => {
            const reader = reading(how);
            const changed = namesOf(table).flatMap((field) => {
              const { show, read } = table.fields[field];
              const shown = show(record, reader);
              if (shown === undefined) return [];
              const found = read(record, shown, reader);
              const again = found.ok && show(found.value, reader);
              return again === shown.trim() ? [] : [{ field, shown, again }];
            });
            expect(changed).toEqual([]);
          }),
        ),
      );
    }
  });

  it('changes only the field that is typed over', () => {
    for (const form of cases) {
      form((table, records) =>
        fc.assert(
          fc.property(records, records, ways, fc.nat(), (record, other, how, pick) => {
            const reader = reading(how);
            const names = namesOf(table);
            const field = names[pick % names.length];
            if (field === undefined) return;
            const text = table.fields[field].show(other, reader);
            if (text === undefined || table.fields[field].show(record, reader) === undefined) return;
            const typed = table.fields[field].read(record, text, reader);
            if (!typed.ok) return;
            const changed = names.filter((name) => {
              const { show } = table.fields[name];
              return name !== field && show(typed.value, reader) !== show(record, reader);
            });
            expect(changed).toEqual([]);
          }),
        ),
      );
    }
  });
});
