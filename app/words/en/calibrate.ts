import type { Untold } from '../../../src/costing/calibration';
import type { Driver, Quantity } from '../../../src/model';
import { counted, type Ways } from '../format';

const runs = (count: number, ways: Ways) => counted(count, 'run', 'runs', ways);

const drivers: Record<Driver, string> = {
  area: 'an area printed in full',
  run: 'each run, whatever it prints',
  length: 'an hour of printing',
  span: 'a span',
  copy: 'a copy',
  pressed: 'a press on a garment',
  plan: 'the planned time as a whole',
};

/** Rates from the log. */
export const calibrate = {
  title: 'Rates from the log',
  open: 'Calibrate',
  hint: 'What closed runs tell. Nothing changes before you apply it, and each change can be taken back.',
  offer: (list: string) => `Closed runs tell enough to look at: ${list}.`,
  noOffer: (needed: number, ways: Ways) =>
    `Once ${runs(needed, ways)} are closed with measured ink, powder or minutes, your own rates can be found from them.`,
  what: 'What is looked at',
  quantities: {
    colour: 'colour ink',
    white: 'white ink',
    powder: 'powder',
    printer: 'the printer’s time',
    hands: 'labour',
  } satisfies Record<Quantity, string>,
  drivers,
  range: (low: string, high: string) => `${low} – ${high}`,
  columns: { rate: 'For', present: 'Now', found: 'Found', range: '95% interval', apply: 'Apply' },
  belowCleanings:
    'Less than the cleanings of a run are taken to be: lower those under “Costs of this shop” first.',
  fits: 'What is set now lies in the interval: these runs do not speak against it.',
  loose: (more: number, ways: Ways) =>
    more > 200
      ? 'The interval is wider than half of the rate. More runs that scatter like these would not help.'
      : `The interval is wider than half of the rate. About ${counted(more, 'more run', 'more runs', ways)} like these would make it narrow enough.`,
  nothing: 'These runs tell none of it.',
  tooFar: 'Handling times cannot take up so large a difference. Look at the recipes and at what was noted.',
  apply: 'Apply',
  applyOf: (driver: string) => `Apply: ${driver}`,
  missing: (count: number, ways: Ways) =>
    `${counted(count, 'more closed run', 'more closed runs', ways)} with a measured figure, and there is something to tell. With fewer than five runs beyond the rates sought, an interval tells little but that nobody knows how runs scatter.`,
  nothingTold: 'These runs tell nothing: nothing was printed on them.',
  untold: {
    'not-measured': (count: number, ways: Ways) => `${runs(count, ways)} without a measured figure`,
    'as-planned': (count: number, ways: Ways) =>
      `${runs(count, ways)} closed with the plan’s own figure, which tells nothing new`,
    'no-artwork': (count: number, ways: Ways) => `${runs(count, ways)} with artwork that was never checked`,
    'other-times': (count: number, ways: Ways) => `${runs(count, ways)} planned with other handling times`,
    'nothing-printed': (count: number, ways: Ways) => `${runs(count, ways)} on which nothing was printed`,
  } satisfies Record<Untold, (count: number, ways: Ways) => string>,
  notTold: (list: string) => `Not looked at: ${list}.`,
  apart: (list: string, reason: 'few' | 'alike') =>
    reason === 'few'
      ? `Too few runs yet to tell ${list} apart from the rest.`
      : `In these runs ${list} cannot be told apart from the rest: they go up and down together.`,
  plot: 'How each run fits',
  plotTold: (unit: string) => `told by the rates, ${unit}`,
  plotOff: (unit: string) => `off, ${unit}`,
  /** The plot in a sentence. */
  scatter: (amount: string) =>
    `Each dot is a run. Across is what the rates tell of it, up and down how far the measured figure is off. Runs scatter by ${amount} (standard deviation).`,
  allFit: 'No run stands out.',
  misfits: (list: string) =>
    `Not like the others: ${list}. Look at what was noted there; leave a run out if its figure was read wrongly.`,
  leftOutNote: (list: string) => `Left out: ${list}.`,
  runs: 'The runs',
  runColumns: {
    run: 'Run',
    day: 'Closed',
    measured: 'Measured',
    told: 'Told',
    off: 'Off',
    influence: 'Influence',
    takenIn: 'Taken in',
  },
  influenceHint:
    'Influence: how much a run alone bends the result. A run with much influence wants a look, even where it fits.',
  takeIn: (run: string) => `Take in ${run}`,
  changes: 'Changes so far',
  noChanges: 'No rate has been changed from the log yet.',
  change: (what: string, from: string, to: string) => `${what}: ${from} → ${to}`,
  changedAt: (when: string, count: number, ways: Ways) => `${when}, from ${runs(count, ways)}`,
  takenBack: (when: string) => `taken back ${when}`,
  setSince: 'set otherwise since',
  takeBack: 'Take back',
  takeBackOf: (change: string) => `Take back: ${change}`,
  settings: {
    'rates.colour': 'colour ink',
    'rates.white': 'white ink',
    'rates.powder': 'powder',
    'start.colour': 'colour ink a run takes to start',
    'start.white': 'white ink a run takes to start',
    'printer.perHour': 'printed in an hour',
    'printer.warmUp': 'printer’s warm-up',
    'handling.cutOff': 'cut off a span',
    'handling.powder': 'powder a span',
    'handling.load': 'load or unload a cure',
    'handling.cutApart': 'cut a copy out',
    'handling.dress': 'garment on and off the press',
    'handling.place': 'place a transfer, peel it',
    'handling.pack': 'stretch, check, bag a garment',
  },
};
