import { logRows } from '../../log';
import type { Book, Closing, EntryKind, StockUnit } from '../../model';
import { fromUnit, inOrder, toMass, toVolume } from '../../units';
import type { CsvCell, CsvTable } from './write';

/** The units a table's figures are in, by the reader's choice. */
export type TableUnits = 'metric' | 'inch';

const decimals = (value: number, most: number): number => Math.round(value * 10 ** most) / 10 ** most;

/** A roll's length in metres or feet. */
const along = (length: number, units: TableUnits): number =>
  decimals(length / fromUnit(1, units === 'metric' ? 'm' : 'ft'), 3);

const millilitres = (value: Closing['actual']['white']): CsvCell =>
  value === null ? null : decimals(toVolume(value, 'ml'), 3);

const grams = (value: Closing['actual']['powder']): CsvCell =>
  value === null ? null : decimals(toMass(value, 'g'), 3);

const minutes = (value: number | null): CsvCell => (value === null ? null : decimals(value / 60, 2));

const amountIn = (amount: number, unit: StockUnit, units: TableUnits): number => {
  if (unit === 'length') return along(amount, units);
  return unit === 'volume' || unit === 'mass' ? decimals(amount / 1000, 3) : amount;
};

/** What each column of the log is called, in the order of its columns. */
const logColumns = [
  'run',
  'day',
  'film',
  'copies',
  'pressed',
  'spans',
  'filmPlanned',
  'filmUsed',
  'sheetsPlanned',
  'sheetsUsed',
  'wastePlanned',
  'waste',
  'colourPlanned',
  'colour',
  'whitePlanned',
  'white',
  'powderPlanned',
  'powder',
  'printerPlanned',
  'printer',
  'handsPlanned',
  'hands',
  'pressPlanned',
  'press',
  'ovenPlanned',
  'oven',
  'spoiled',
  'spoiledWhy',
  'filmLot',
  'colourLot',
  'whiteLot',
  'powderLot',
  'temperature',
  'humidity',
  'notes',
] as const;

export type LogColumn = (typeof logColumns)[number];

/** Closed runs as a table, the latest first; an empty field was not measured. Waste and humidity in percent. */
export function logTable(
  book: Pick<Book, 'closing'>,
  units: TableUnits,
  words: {
    readonly columns: Readonly<Record<LogColumn, string>>;
    readonly spoiled: (line: Closing['spoiled'][number]) => string;
  },
): CsvTable {
  return {
    headings: logColumns.map((column) => words.columns[column]),
    rows: logRows(book.closing).map(({ closing, waste, plannedWaste, spoiled }): CsvCell[] => {
      const { planned, actual, work, lots, air, film } = closing;
      return [
        closing.name,
        closing.day,
        film.name,
        work.copies,
        work.pressed,
        work.spans,
        along(planned.film, units),
        along(actual.film, units),
        planned.sheets,
        actual.sheets,
        decimals(100 * plannedWaste, 1),
        decimals(100 * waste, 1),
        millilitres(planned.colour),
        millilitres(actual.colour),
        millilitres(planned.white),
        millilitres(actual.white),
        grams(planned.powder),
        grams(actual.powder),
        minutes(planned.time.printer),
        minutes(actual.time.printer),
        minutes(planned.time.hands),
        minutes(actual.time.hands),
        minutes(planned.time.press),
        minutes(actual.time.press),
        minutes(planned.time.oven),
        minutes(actual.time.oven),
        spoiled,
        closing.spoiled.map(words.spoiled).join('; '),
        lots.film,
        lots.colour,
        lots.white,
        lots.powder,
        air.temperature,
        air.humidity === null ? null : decimals(100 * air.humidity, 1),
        closing.notes,
      ];
    }),
  };
}

const upkeepColumns = [
  'at',
  'day',
  'what',
  'state',
  'temperature',
  'humidity',
  'minutes',
  'colour',
  'white',
  'by',
  'note',
  'entry',
] as const;

export type UpkeepColumn = (typeof upkeepColumns)[number];

/** Checks that were noted, and readings of the room, in the order in which they were; humidity in percent. */
export function upkeepTable(
  book: Pick<Book, 'upkeep' | 'reading'>,
  words: {
    readonly columns: Readonly<Record<UpkeepColumn, string>>;
    readonly states: Readonly<Record<'done' | 'failed' | 'takenBack', string>>;
    readonly reading: string;
  },
): CsvTable {
  const checks = Object.values(book.upkeep).map(
    ({ id, at, day, name, done, by, note, failed }): CsvCell[] => [
      at,
      day,
      name,
      words.states[failed ? 'failed' : done ? 'done' : 'takenBack'],
      null,
      null,
      failed && decimals(failed.seconds / 60, 1),
      failed && decimals(toVolume(failed.colour, 'ml'), 1),
      failed && decimals(toVolume(failed.white, 'ml'), 1),
      by,
      note,
      id,
    ],
  );
  const readings = Object.values(book.reading).map(
    ({ id, at, day, temperature, humidity, by }): CsvCell[] => [
      at,
      day,
      words.reading,
      null,
      temperature === null ? null : decimals(temperature, 1),
      humidity === null ? null : decimals(100 * humidity, 1),
      null,
      null,
      null,
      by,
      null,
      id,
    ],
  );
  return {
    headings: upkeepColumns.map((column) => words.columns[column]),
    rows: [...checks, ...readings].sort((a, b) => inOrder(String(a[0]), String(b[0]))),
  };
}

const ledgerColumns = ['at', 'item', 'what', 'change', 'unit', 'run', 'note', 'entry', 'undoes'] as const;

export type LedgerColumn = (typeof ledgerColumns)[number];

/** The ledger as a table in the order in which it was written. */
export function ledgerTable(
  book: Pick<Book, 'entry' | 'run' | 'closing'>,
  units: TableUnits,
  words: {
    readonly columns: Readonly<Record<LedgerColumn, string>>;
    readonly kinds: Readonly<Record<EntryKind, string>>;
    readonly units: Readonly<Record<StockUnit, string>>;
  },
): CsvTable {
  return {
    headings: ledgerColumns.map((column) => words.columns[column]),
    rows: Object.values(book.entry)
      .sort((a, b) => inOrder(a.at, b.at))
      .map(({ id, at, name, kind, amount, unit, run, note, counters }): CsvCell[] => [
        at,
        name,
        words.kinds[kind],
        amountIn(amount, unit, units),
        words.units[unit],
        run === null ? null : (book.run[run]?.name ?? book.closing[run]?.name ?? run),
        note,
        id,
        counters,
      ]),
  };
}
