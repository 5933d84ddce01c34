import type { Collection, SettingsField } from '../../../src/model';
import { counted, listed, type Ways } from '../format';
import { damaged as first } from './first-damaged';

const of =
  (one: string, many: string) =>
  (count: number, ways: Ways): string =>
    counted(count, one, many, ways);

/** Stored records by their collections, counted. */
const records: Readonly<Record<Collection, (count: number, ways: Ways) => string>> = {
  order: of('order', 'orders'),
  transfer: of('transfer', 'transfers'),
  garment: of('line of garments', 'lines of garments'),
  placement: of('placement on garments', 'placements on garments'),
  copy: of('copy', 'copies'),
  artwork: of('image', 'images'),
  film: of('film', 'films'),
  run: of('run', 'runs'),
  recipe: of('recipe', 'recipes'),
  tick: of('tick', 'ticks'),
  spoilage: of('spoiled copy', 'spoiled copies'),
  aside: of('hand-over kept aside', 'hand-overs kept aside'),
  shelf: of('shelved transfer', 'shelved transfers'),
  reopened: of('reopened run’s record', 'reopened runs’ records'),
  closing: of('closed run’s record', 'closed runs’ records'),
  item: of('stock item', 'stock items'),
  entry: of('stock entry', 'stock entries'),
  calibration: of('calibration', 'calibrations'),
  leftOut: of('run left out of a calibration', 'runs left out of calibrations'),
  check: of('maintenance check', 'maintenance checks'),
  upkeep: of('maintenance note', 'maintenance notes'),
  reading: of('reading of the air', 'readings of the air'),
  quote: of('quote', 'quotes'),
  step: of('step of undo', 'steps of undo'),
  settings: of('record of settings', 'records of settings'),
};

const settings: Readonly<Record<SettingsField, string>> = {
  language: 'language',
  unit: 'unit of length',
  currency: 'currency',
  dateOrder: 'order of dates',
  paper: 'paper',
  mapView: 'view of the cut map',
  mapPaper: 'cut map on paper',
  limits: 'artwork limits',
  printImage: 'print-ready image',
  cutFile: 'how cut files are written',
  station: 'equipment',
  runOrder: 'order of the runs',
  shelfFirst: 'use of the shelf',
  rates: 'ink and powder',
  costs: 'costs',
  pricing: 'prices',
  alternatives: 'bought-in prints',
  letterhead: 'letterhead',
  mark: 'shop’s mark',
  lastBackup: 'date of the last backup',
  columns: 'headings of tables',
  tables: 'what headings of tables mean',
  changed: 'date of the last change',
};

/** What of the stored book could not be read. */
export const damaged = {
  ...first,
  said: 'Some of what is stored could not be read. It is left untouched in storage; all else is here.',
  which: 'What could not be read',
  noRun:
    'No run is open: the one that was could not be read, or this book came without. Orders are as they were.',
  beginRun: 'Begin a run',
  records,
  other: (count: number, ways: Ways) => counted(count, 'other entry', 'other entries', ways),
  named: (what: string, names: readonly string[], ways: Ways) =>
    names.length > 0 ? `${what}: ${listed(names, ways)}` : what,
  settings,
  fellBack: (fields: readonly string[], ways: Ways) =>
    `Settings that could not be read are those of a new shop: ${listed(fields, ways)}. Please look them through.`,
};
