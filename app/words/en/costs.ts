import type { CostKind, Gap, SharedBy } from '../../../src/costing';
import { counted, partly, type Ways, whole } from '../format';
import { copies } from './counts';

/** Lines of a run's costs. */
const kinds: Record<CostKind, string> = {
  film: 'Film',
  'colour-ink': 'Colour ink',
  'white-ink': 'White ink',
  powder: 'Powder',
  maintenance: 'Ink to keep the heads clean',
  'printer-power': 'Electricity, printer',
  'oven-power': 'Electricity, oven',
  'press-power': 'Electricity, press',
  artwork: 'Labour: orders and artwork',
  printing: 'Labour: film and printing',
  cutting: 'Labour: cutting apart',
  pressing: 'Labour: pressing',
  packing: 'Labour: packing',
  garments: 'Blanks',
  replacements: 'Blanks to replace spoiled ones',
  spoilage: 'Allowance for spoilage',
  overhead: 'Overhead',
};

const gaps: Record<Gap, string> = {
  'left-out': 'left out: it has no price',
  'no-times': 'not known: there is no timeline',
};

const sharedBys: Record<SharedBy, string> = {
  footprint: 'by the film its copies take',
  ink: 'by the area it prints',
  time: 'by the time it takes',
  copies: 'by its copies, within each order',
  cost: 'by what else it costs',
};

const part = (value: number, one: string, many: string, ways: Ways): string =>
  Number.isInteger(value) ? counted(value, one, many, ways) : `${partly(value, ways)} ${many}`;

export const costSheet = {
  title: (run: string) => `What ${run} costs`,
  each: (count: number, each: string, ways: Ways) => `for ${copies(count, ways)}, ${each} each on average`,
  copy: (code: string, number: number) => `${code} ${number}`,
  lines: 'What it is made of',
  parts: { orders: 'Its orders', transfers: 'Its transfers', copies: 'Its copies' },
  open: (name: string) => `Costs of ${name}`,
  path: 'Whose costs',
  kinds,
  gaps,
  /** A formula, its result behind the equals sign. */
  formula: (terms: readonly string[], result: string) => `${terms.join(' + ')} = ${result}`,
  counted: (amount: string) => `It counts as ${amount}, so that the parts sum to the whole.`,
  shared: (all: string, share: string, by: SharedBy, result: string) =>
    `${all} of the run × ${share}, shared ${sharedBys[by]} = ${result}`,
  count: {
    sheets: (value: number, ways: Ways) => part(value, 'sheet', 'sheets', ways),
    garments: (value: number, ways: Ways) => part(value, 'garment', 'garments', ways),
    orders: (value: number, ways: Ways) => part(value, 'order', 'orders', ways),
    designs: (value: number, ways: Ways) => part(value, 'new design', 'new designs', ways),
  },
  volumes: {
    day: (volume: string) => `${volume} a day`,
    cleanings: (volume: string) => `${volume} for cleanings`,
    start: (volume: string) => `${volume} to start`,
  },
  eachOne: (price: string) => `${price} each`,
  allElse: (amount: string) => `${amount} of all above`,
  filmBy: 'Film is shared',
  filmBys: { footprint: 'by the film copies take', ink: 'by the ink they bear' },
  kept: 'Reckoned with the prices and times of the day on which it was locked.',
  assumed: (names: readonly string[], count: number, ways: Ways) =>
    `White and colour are taken to cover all of ${counted(count, 'transfer', 'transfers', ways)} without a finished artwork check: ${names.join(', ')}. Ink and powder are at most this.`,
  noGarments: (codes: readonly string[]) =>
    `No garments are listed for ${codes.join(', ')}: none are counted. List them under “Garments and placements” of the order.`,
  unpriced: (codes: readonly string[]) =>
    `Some garments of ${codes.join(', ')} have no price and are not counted.`,
  noTimes:
    'There is no timeline for this layout, so labour, electricity and overhead by the hour are missing.',
  fixedNote: (amount: string) => `${amount} of it would be the same for any number of copies.`,
  rates: 'Costs of this shop',
  compare: 'Compare films',
  makeOrBuy: 'Make or buy',
  nothing: 'Nothing lies on the film yet, so there is nothing to reckon.',
  more: (count: number, ways: Ways) => `and ${whole(count, ways)} more`,
};

export const costsForm = {
  title: 'Costs of this shop',
  hint: 'Starting values are common practice, without a source. Put in your own from bills and labels. An empty price is left out of every cost, and the cost sheet says so.',
  groups: {
    ink: 'Ink and powder',
    takes: 'What a print takes',
    cleaning: 'Cleaning and starting',
    power: 'Electricity',
    hands: 'Labour, by the hour',
    garments: 'Blanks',
    beside: 'Spoilage and overhead',
  },
  price: (label: string, currency: string, unit: string) => `${label} (${currency} / ${unit})`,
  colourInk: 'Colour ink',
  whiteInk: 'White ink',
  powder: 'Powder',
  colourRate: (unit: string) => `Colour ink printed in full (${unit})`,
  whiteRate: (unit: string) => `White ink printed in full (${unit})`,
  powderRate: (unit: string) => `Powder printed in full (${unit})`,
  day: 'Ink for maintenance, a day',
  runsADay: 'Runs that share a day’s maintenance',
  cleaning: 'Ink for a cleaning',
  cleanings: 'Cleanings a run',
  startColour: 'Colour ink a run takes to start, beside its cleanings',
  startWhite: 'White ink a run takes to start, beside its cleanings',
  energy: 'Electricity',
  watts: { printer: 'Printer, watts', oven: 'Oven or line, watts', press: 'Press, watts' },
  labour: {
    artwork: 'Orders and artwork',
    printing: 'Film and printing',
    cutting: 'Cutting apart',
    pressing: 'Pressing',
    packing: 'Packing',
  },
  orderTime: 'Time for an order',
  designTime: 'Time for a new design',
  blank: 'Any blank',
  blanks: 'Blanks by style',
  blanksHint: 'Style and price, a line each: Tee 3.90',
  blanksProblem: (line: string) =>
    `“${line}” has no price at its end. Write a style and its price, such as Tee 3.90.`,
  spoilage: 'Spoiled, of all that is used (%)',
  overhead: 'Overhead',
  overheads: { hour: 'for each hour of labour', share: 'as a share of all other costs' },
  overheadRate: 'Overhead, by the hour',
  overheadShare: 'Overhead (%)',
  wattsProblem: 'Write watts as a whole number, such as 1400.',
  wholeProblem: 'Write a whole number from 1 to 50.',
  cleaningsProblem: 'Write a whole number from 0 to 50.',
  zeroRate: 'A rate of zero would print without ink. Write what a full square takes.',
};
