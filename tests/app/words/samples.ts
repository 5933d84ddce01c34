import type { Ways } from '../../../app/words/format';
import type { Finding, InkChange } from '../../../src/artwork';
import type { SharedBy } from '../../../src/costing';
import type { CellProblem } from '../../../src/intake';
import type { LaidCopy, Refusal } from '../../../src/layout';
import { compared } from '../../../src/log';
import {
  asId,
  type Interval,
  type Mend,
  type Peel,
  type PressValues,
  type StockUnit,
} from '../../../src/model';
import type { BundleProblem } from '../../../src/output/backup';
import type { Part } from '../../../src/output/print-image';
import type { ImageProblem } from '../../../src/output/print-image/browser';
import type { UnplacedReason } from '../../../src/packing';
import type { Batch, Bottleneck, JobKind, Question, Worker } from '../../../src/pressing';
import type { BreakEven } from '../../../src/pricing';
import type { SnapshotReason } from '../../../src/storage';
import { fromDegrees, fromMm, type Seconds, um } from '../../../src/units';
import type { Standing } from '../../../src/upkeep';

/** Every member of a union, which the compiler counts. */
const every = <Union extends string>(all: Record<Union, true>): Union[] => Object.keys(all) as Union[];

const seconds = (value: number) => value as Seconds;
const counts = [0, 1, 2, 1234];
const numbers = [1, 2, 12];
const texts = ['Zq'];
const moments = [
  { day: null, time: 'Zq' },
  { day: 'Zr', time: '9:48 p. m.' },
];
const stockUnits = every<StockUnit>({ length: true, sheets: true, volume: true, mass: true, pieces: true });
const lengths = [fromMm(203.5)];
const shares = [0.118];

const findings: Record<Finding['code'], Finding> = {
  coarse: { grade: 'poor', code: 'coarse', x: 120, y: 140 },
  stretched: { grade: 'check', code: 'stretched', share: 0.02, height: fromMm(80) },
  'coarse-image': { grade: 'poor', code: 'coarse-image', ppi: 63 },
  font: { grade: 'poor', code: 'font', names: ['Zq'] },
  'see-through': { grade: 'check', code: 'see-through', share: 0.12 },
  'thin-strokes': {
    grade: 'check',
    code: 'thin-strokes',
    count: 3,
    least: fromMm(0.2),
    limit: fromMm(0.5),
  },
  'white-lost': { grade: 'check', code: 'white-lost', count: 1, choke: fromMm(0.2) },
  'thin-white': {
    grade: 'check',
    code: 'thin-white',
    count: 4,
    least: fromMm(0.1),
    limit: fromMm(0.2),
    choke: fromMm(0.2),
  },
  specks: { grade: 'check', code: 'specks', count: 2, limit: fromMm(0.5) },
  'screen-dots': {
    grade: 'check',
    code: 'screen-dots',
    count: 412,
    dots: 4188,
    least: fromMm(0.2),
    limit: fromMm(0.5),
    lines: 25,
  },
  'screen-holes': {
    grade: 'check',
    code: 'screen-holes',
    count: 90,
    dots: 1200,
    least: fromMm(0.3),
    limit: fromMm(0.8),
    lines: 25,
  },
  strays: {
    grade: 'poor',
    code: 'strays',
    count: 2,
    size: { width: fromMm(41.6), height: fromMm(30) },
    without: { width: fromMm(25.4), height: fromMm(30) },
  },
  openings: { grade: 'check', code: 'openings', count: 2, least: fromMm(0.3), limit: fromMm(0.8) },
  checkerboard: { grade: 'poor', code: 'checkerboard' },
  fringe: { grade: 'check', code: 'fringe', share: 0.4, ground: '#ffffff' },
  ground: { grade: 'poor', code: 'ground', colour: [10, 20, 250] },
  'black-on-black': { grade: 'check', code: 'black-on-black', share: 0.4 },
  profile: { grade: 'check', code: 'profile', name: 'Zq', inks: null, clipped: 0.2 },
  gamma: { grade: 'check', code: 'gamma', gamma: 0.5 },
  animated: { grade: 'check', code: 'animated' },
  deep: { grade: 'good', code: 'deep' },
  outside: { grade: 'check', code: 'outside', count: 2 },
};

const mendOf: { readonly [Kind in Mend['kind']]: Extract<Mend, { kind: Kind }> } = {
  'knock-out': { kind: 'knock-out', colour: '#fafafa', tolerance: 24, reach: 'from-edge' },
  'take-off': { kind: 'take-off', largest: fromMm(0.75), reach: 'strays' },
  thicken: { kind: 'thicken', to: fromMm(0.5) },
  defringe: { kind: 'defringe', ground: '#ffffff' },
  threshold: { kind: 'threshold', from: 0.5 },
  screen: { kind: 'screen', lines: 25, least: fromMm(0.5) },
};
const mends = Object.values(mendOf);

const other = { order: { code: 'ZQ' }, number: 7 } as LaidCopy;
const refusals: Record<Refusal['code'], Refusal> = {
  'outside-left': { code: 'outside-left' },
  'outside-right': { code: 'outside-right' },
  'before-lead': { code: 'before-lead' },
  'past-end': { code: 'past-end' },
  'no-print': { code: 'no-print' },
  'may-not-turn': { code: 'may-not-turn', turning: 'half' },
  'too-close': { code: 'too-close', other, gap: fromMm(5) },
  'no-knife-line': { code: 'no-knife-line', spanMax: fromMm(480) },
};

const questions: Record<Question['code'], Question> = {
  'other-unit': { code: 'other-unit', meant: fromDegrees(330, 'F') },
  scorches: { code: 'scorches', most: fromDegrees(350, 'F') },
  'dye-migrates': { code: 'dye-migrates', most: fromDegrees(285, 'F') },
  'melts-nothing': { code: 'melts-nothing', least: fromDegrees(225, 'F') },
  'too-short': { code: 'too-short', least: seconds(5), most: seconds(40) },
  'too-long': { code: 'too-long', least: seconds(5), most: seconds(40) },
  'pre-press-long': { code: 'pre-press-long', most: seconds(10) },
  'second-press-long': { code: 'second-press-long', most: seconds(15) },
  'wait-long': { code: 'wait-long', most: seconds(60) },
  'clear-off': { code: 'clear-off', least: fromMm(5), most: fromMm(10) },
};

const cells: readonly CellProblem[] = [
  { column: 'order', code: 'empty' },
  { column: 'transfer', code: 'empty' },
  { column: 'width', code: 'unreadable', text: 'zq' },
  { column: 'height', code: 'not-positive', text: '-5' },
  { column: 'size', code: 'unreadable', text: 'zq' },
  ...(['unreadable', 'zero', 'too-many', 'too-many-in-all'] as const).map(
    (code) => ({ column: 'count', code, text: '0' }) as const,
  ),
  ...(['unreadable', 'no-such-day', 'ambiguous'] as const).map(
    (code) => ({ column: 'due', code, text: '3/4/2026' }) as const,
  ),
  { column: 'turn', code: 'unreadable', text: 'zq' },
];

const kinds = every<JobKind>({
  ready: true,
  print: true,
  'cut-off': true,
  powder: true,
  cure: true,
  line: true,
  apart: true,
  press: true,
  again: true,
  pack: true,
});
const workers = every<Worker>({ printer: true, hands: true, press: true, oven: true });
const peels = every<Peel>({ hot: true, warm: true, cold: true });
const values = (pressure: PressValues['pressure'], large: number): PressValues => ({
  temperature: fromDegrees(320, 'F'),
  pressure,
  seconds: { small: seconds(10), large: seconds(large) },
  wait: seconds(0),
  prePress: seconds(3),
  secondPress: seconds(5),
  cover: 'paper',
});

/** What became of the rows of a table. */
const takenRows = counts.flatMap((count) =>
  [
    { added: count, replaced: 0, skipped: 0 },
    { added: 0, replaced: count, skipped: 1 },
    { added: count, replaced: count, skipped: count },
    { added: 0, replaced: 0, skipped: count },
  ].filter(({ added, replaced, skipped }) => added + replaced + skipped > 0),
);

/** What a parameter of a message that is no text may be, by its name, or by the message's place and the parameter's number. */
const samples: Readonly<Record<string, readonly unknown[]>> = {
  'film.noRoomForRush.1': counts,
  'film.rushDone.1': moments,
  'film.inTimeBut.0': counts,
  'table.mapTitle.0': counts,
  'common.more.0': [60],
  'common.more.1': [60, 2940],
  'orders.partDone.0': counts,
  'orders.partDone.1': counts,
  'orders.partDone.2': counts,
  'table.add.0': takenRows,
  'table.added.0': takenRows,
  'table.mapTitle.1': counts,
  ...Object.fromEntries(
    ['count', 'orderCount', 'copyCount', 'transferCount', 'left', 'taken', 'all', 'rest'].map((name) => [
      name,
      counts,
    ]),
  ),
  ...Object.fromEntries(
    ['number', 'of', 'index', 'line', 'page', 'spans', 'span', 'unit', 'bad', 'most', 'least', 'many'].map(
      (name) => [name, numbers],
    ),
  ),
  more: counts,
  standing: [
    { kind: 'done' },
    { kind: 'never' },
    { kind: 'days', over: 0 },
    { kind: 'days', over: 3 },
    { kind: 'film', over: um(0) },
    { kind: 'film', over: fromMm(12_000) },
    { kind: 'before-run' },
  ] satisfies Standing[],
  interval: [
    { kind: 'day' },
    { kind: 'days', days: 7 },
    { kind: 'days', days: 3 },
    { kind: 'film', length: fromMm(50_000) },
    { kind: 'idle', days: 1 },
    { kind: 'pause', hours: 4 },
  ] satisfies Interval[],
  needed: numbers,
  'table.onLines.0': [[2], [2, 5]],
  'reprints.joined.1': [[0], [0, 2]],
  'calibrate.apart.1': ['few', 'alike'],
  bytes: [40_000_000],
  bearing: [4120],
  mm2: [4120],
  placed: [1, 12],
  total: [12],
  reason: every<UnplacedReason>({ 'too-wide': true, 'too-long': true, 'no-room': true }),
  seconds: [12],
  wait: [0, 12],
  'cards.garment.1': counts,
  cover: every<PressValues['cover']>({ none: true, paper: true, silicone: true, fabric: true }),
  worker: workers,
  'keep.problems.0': [
    { code: 'not-backup' },
    { code: 'damaged' },
    { code: 'newer' },
    { code: 'part-missing' },
    ...(['book', 'image', 'total', 'images', 'ratio', 'text'] as const).map(
      (of) => ({ code: 'too-much', of }) as const,
    ),
    { code: 'not-kept' },
  ] satisfies (BundleProblem | { code: 'not-kept' })[],
  'keep.leftOut.0': [['zq.png']],
  'keep.snapshot.0': ['hour', 'day', 'before-restoring', 'before-migrating'] satisfies SnapshotReason[],
  'orders.artworkRefused.1': [
    'not-image',
    'large-inks',
    'broken',
    'no-size',
    'unreadable',
    'too-large',
    'blank',
    'too-wide',
    'many-parts',
    'too-long',
    'too-slow',
    'many-elements',
    'many-filters',
    'nested',
    'indirect',
  ],
  'orders.countProblem.0': [0, 1],
  'orders.countProblem.1': texts,
  'designs.countProblem.0': texts,
  'film.uncuttable.0': texts,
  'film.details.0': texts,
  'film.detailsOfSheets.0': texts,
  'film.detailsByOutlines.0': texts,
  'film.leftOnRoll.0': texts,
  'film.nothingToLay.0': [
    { elsewhere: 0, unchosen: 0, unready: 0 },
    { elsewhere: 1, unchosen: 2, unready: 3 },
  ],
  'film.sentence.3': [null, ...moments],
  'film.filmLine.2': [null, 'Zq'],
  'film.refused.0': Object.values(refusals),
  'film.refusedShort.0': Object.values(refusals),
  'filmForm.compared.1': [null, 'Zq'],
  'runs.taken.0': texts,
  'runs.taken.1': texts,
  'runs.lengthPrinted.0': ['mm', 'in'],
  'runs.from.0': ['mm', 'in'],
  'runs.to.0': ['mm', 'in'],
  'runs.withinRun.0': ['', 'Zq'],
  'table.problem.0': [
    { code: 'missing-columns', columns: ['width'] },
    { code: 'missing-columns', columns: ['transfer', 'width', 'height'] },
    { code: 'too-long' },
    { code: 'many-rows' },
    { code: 'many-columns', line: 3 },
    { code: 'long-cell', line: 3 },
  ],
  'table.cellProblem.0': cells,
  'artwork.said.0': Object.values(findings),
  'artwork.worst.0': ['good', 'check', 'poor'],
  'mends.offer.0': Object.keys(findings),
  'mends.title.0': mends,
  'mends.hint.0': mends,
  'mends.ink.0': [
    {
      before: { bearing: 900, white: 800, colour: 500 },
      after: { bearing: 800, white: 700, colour: 400 },
    },
  ] satisfies InkChange[],
  'mends.madeFrom.0': mends,
  'mends.fileName.1': mends.map(({ kind }) => kind),
  'artwork.perInch.0': [300],
  'artwork.perInch.1': [250],
  'artwork.bearingShare.1': shares,
  'printImage.saved.0': [['zq.png'], ['zq.png', 'zr.png']],
  'printImage.problems.0': [
    ...(['stopped', 'disk-full', 'not-written'] as const).map((code) => ({ code })),
    { code: 'artwork', artwork: 'zq' },
  ] satisfies ImageProblem[],
  'printImage.fileName.1': [
    { kind: 'run' },
    { kind: 'chosen' },
    { kind: 'span', number: 2 },
    { kind: 'sheet', number: 2 },
  ] satisfies Part[],
  'press.job.0': kinds.map((kind) => ({ kind, spans: [0, 1], code: 'ZQ', transfers: ['Zq'], copies: 2 })),
  'press.bottleneck.0': [
    ...workers.map((worker) => ({ kind: 'worker', worker, machine: null, busy: 60 }) as const),
    { kind: 'path', through: kinds },
    { kind: 'trays' },
  ] satisfies Bottleneck[],
  'press.batch.0': [
    ...kinds.map((kind) => ({ by: 'kind', kind, jobs: [] }) as const),
    { by: 'span', span: 1, jobs: [] },
    { by: 'order', order: { id: asId('zq'), code: 'ZQ', tint: 0 }, jobs: [] },
  ] satisfies Batch[],
  'film.fromShelf.0': [[{ name: 'Zq', count: 2 }]],
  'handOver.missing.0': [[0, 2]],
  'handOver.handBack.0': counts,
  'handOver.taken.ticks.1': counts,
  'handOver.taken.again.1': counts,
  'handOver.taken.ticks.2': counts,
  'handOver.asideOf.1': counts,
  'handOver.asideOf.2': counts,
  'cards.together.0': [['Zq', 'Zr']],
  'cards.together.1': counts,
  'press.beyond.0': [
    { waiting: 1, elsewhere: 0 },
    { waiting: 2, elsewhere: 3 },
  ],
  'press.sentence.0': moments,
  'press.sentence.1': [1, 3],
  'press.bound.0': moments,
  'press.wetOverClosing.0': moments,
  'press.worker.1': [0, 1],
  'press.worker.2': [1, 2],
  'press.line.0': [values('light', 10), values('medium', 15), values('firm', 15)],
  'press.peelAfter.0': peels,
  'press.cureLine.2': [null, 'Zq'],
  'cut.pileOf.1': counts,
  'costSheet.formula.0': [['Zq'], ['Zq', 'Zq']],
  'costSheet.shared.1': ['Zq'],
  'costSheet.shared.2': every<SharedBy>({ footprint: true, ink: true, time: true, copies: true, cost: true }),
  'costSheet.count.sheets.0': [1, 2],
  'costSheet.count.garments.0': [1, 12],
  'costSheet.count.orders.0': [1, 2, 1.5],
  'costSheet.count.designs.0': [1, 2, 2.5],
  'costSheet.assumed.0': [['Zq'], ['Zq', 'Zr']],
  'costSheet.noGarments.0': [['ZQ']],
  'costSheet.unpriced.0': [['ZQ', 'ZR']],
  'costsForm.price.2': texts,
  'costsForm.colourRate.0': texts,
  'costsForm.whiteRate.0': texts,
  'costsForm.powderRate.0': texts,
  'costsForm.blanksProblem.0': texts,
  'price.earned.0': [null, 'Zq'],
  'price.earned.1': [null, 'Zq'],
  'price.breakOff.2': [null, 'Zq'],
  'price.discount.0': texts,
  'prices.length.0': ['m', 'ft'],
  'price.newDesignsHint.0': texts,
  'quote.heading.0': texts,
  'costSheet.shared.0': texts,
  'cutMap.garmentLine.4': texts,
  'cutFile.noCorners.0': [1, 2, 12],
  'cutFile.boxed.0': [1, 2, 12],
  'cutFile.loose.0': [1, 2, 12],
  'cutFile.saveAll.0': [2, 12],
  'cutFile.fileName.1': [null, { kind: 'span', number: 2 }, { kind: 'sheet', number: 2 }],
  'printImage.whats.span.0': numbers,
  'printImage.whats.sheet.0': numbers,
  'stock.cutTooLong.0': texts,
  'stock.lastsAll.0': texts,
  'makeOrBuy.breakEven.0': [
    { kind: 'always' },
    { kind: 'never' },
    { kind: 'from', count: 12 },
    { kind: 'up-to', count: 1 },
  ] satisfies BreakEven[],
  'log.head.0': counts,
  'closing.spoiledLine.0': counts,
  'closing.spoiledLine.2': ['', 'Zq'],
  'stock.amount.0': [1500],
  'stock.amount.1': stockUnits,
  'stock.change.0': [1500, -1500],
  'stock.change.1': stockUnits,
  'upkeep.failedTold.0': [
    { seconds: seconds(720), colour: 0, white: 0 },
    { seconds: seconds(90), colour: 8000, white: 12_500 },
  ],
  'stock.lastsAll.1': numbers,
  'stock.filmTooShortForAll.1': numbers,
  'log.wasteTold.1': numbers,
  'log.wasteTold.2': [null, 'Zq'],
  'log.weekTold.2': numbers,
  'log.spoiledTold.0': counts,
  'log.spoiledTold.2': texts,
  'log.spoiledTold.3': counts,
  'log.reasonAt.0': texts,
  'log.plannedTold.0': compared,
  'log.plannedTold.2': numbers,
  'log.plannedFew.0': compared,
  'log.airTold.3': numbers,
  'log.lotTold.0': numbers,
  'recipeForm.temperature.0': ['C', 'F'],
  'recipeForm.question.0': Object.values(questions),
  'recipeForm.question.1': ['C', 'F'],
  'cards.rest.0': [
    { came: ['Zq'], follows: [], waiting: 0 },
    { came: [], follows: ['Zq', 'Zr'], waiting: 1 },
    { came: ['Zq'], follows: ['Zr'], waiting: 1234 },
  ],
  'cards.runFacts.0': counts,
  'cutMap.onPaper.0': [
    { unit: 'mm', locale: 'en-GB' },
    { unit: 'in', locale: 'en-US' },
  ],
  'cutMap.onPaper().due.0': ['2026-12-04', null],
  'cutMap.onPaper().numbers.0': [
    [
      [1, 3],
      [7, 7],
    ],
  ],
  'cutMap.onPaper().facts.0': [
    {
      film: { kind: 'roll', width: fromMm(330), length: fromMm(4870) },
      copies: 2,
      date: new Date('2026-11-26T12:00:00Z'),
    },
  ],
  'cutMap.onPaper().view.0': ['on-screen', 'ink-up'],
  'cutMap.onPaper().view.1': [true, false],
  'cutMap.onPaper().count.0': counts,
  'cutMap.onPaper().scale.0': [1, 2.5],
  'cutMap.onPaper().distance.0': lengths,
  'cutMap.onPaper().otherRuler.0': lengths,
  'cutMap.onPaper().fromStart.0': lengths,
  'cutMap.onPaper().size.0': lengths,
  'cutMap.onPaper().size.1': lengths,
  'cutMap.onPaper().spanDone.1': counts,
  'cutMap.onPaper().spanDone.2': lengths,
  'cutMap.onPaper().pile.0': [[{ code: 'ZQ', count: 2 }]],
  'cutMap.onPaper().totals.0': [
    { kind: 'roll', width: fromMm(330), length: fromMm(4870) },
    { kind: 'sheets', width: fromMm(210), length: fromMm(297), count: 7 },
  ],
  'cutMap.onPaper().sheetSize.0': lengths,
  'cutMap.onPaper().sheetSize.1': lengths,
  'cutMap.onPaper().feed.0': [1.01, 0.99],
  'cutMap.onPaper().feed.1': [1.01],
  'cutMap.onPaper().continuesOn.1': [null, 'Z'],
  'cutMap.onPaper().continuedFrom.1': [null, 'Z'],
  'cutMap.onPaper().tooSmallCopy.1': lengths,
  'cutMap.onPaper().tooSmallCopy.2': lengths,
  'cutMap.onPaper().tooSmallCopy.3': [null, 3],
};

/** Names of a function's parameters as they stand in its source; one taken apart has braces. */
function parametersOf(message: (...args: never[]) => unknown): string[] {
  const source = message.toString();
  const single = /^(\w+)\s*=>/.exec(source)?.[1];
  if (single) return [single];
  const names: string[] = [];
  let depth = 0;
  for (const sign of source.slice(source.indexOf('('))) {
    if ('([{'.includes(sign)) depth += 1;
    if (depth === 1 && (sign === '(' || sign === ',')) names.push('');
    else names[names.length - 1] += sign;
    if (')]}'.includes(sign)) depth -= 1;
    if (depth === 0) break;
  }
  return names.map((name) => name.replace(/\)$/, '').trim()).filter(Boolean);
}

/**
 * Every combination of sample arguments for a message, by the names of its English parameters. One that has no sample is given a
 * text; where it is none, the message says `NaN` or `undefined`, and wants a sample here.
 */
export function argumentsFor(
  place: string,
  english: (...args: never[]) => unknown,
  ways: Ways,
): readonly (readonly unknown[])[] {
  return parametersOf(english).reduce<readonly (readonly unknown[])[]>(
    (lists, name, number) => {
      const values =
        name === 'ways'
          ? [ways]
          : name === 'locale'
            ? [ways.locale]
            : (samples[`${place}.${number}`] ?? samples[name] ?? texts);
      return lists.flatMap((list) => values.map((value) => [...list, value]));
    },
    [[]],
  );
}
