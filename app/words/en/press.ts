import type { Beyond, Curer, Origin, Peel, PressValues, Run } from '../../../src/model';
import type {
  Act,
  Batch,
  Bottleneck,
  FabricCaution,
  JobKind,
  Worker,
  WorkProblem,
} from '../../../src/pressing';
import type { Fabric } from '../../../src/units';
import { counted, type Moment, type Ways, whole } from '../format';
import { figure, type SentencePart, say, stopAfter } from '../format/sentence';
import { when } from './when';

const workers: Record<Worker, string> = {
  printer: 'Printer',
  hands: 'Operator',
  press: 'Press',
  oven: 'Oven',
};

const kinds: Record<JobKind, string> = {
  ready: 'Warm up, check nozzles',
  print: 'Print',
  'cut-off': 'Cut off',
  powder: 'Powder',
  cure: 'Cure',
  line: 'Through the line',
  apart: 'Cut apart',
  press: 'Press',
  again: 'Peel, press again',
  pack: 'Check and pack',
};

/** What the bars of the day's chart mean. */
const legend = {
  ready: 'warm up, check nozzles',
  print: 'print',
  cure: 'powder and cure',
  apart: 'cut apart',
  press: 'press, in the order’s tint',
  pack: 'check and pack',
};

const spans = (list: readonly number[], ways: Ways): string =>
  `${list.length > 1 ? 'spans' : 'span'} ${list.map((span) => whole(span + 1, ways)).join(' + ')}`;

/** The press side's part of the catalogue. */
export const press = {
  title: 'Press',
  run: 'Run',
  states: {
    draft: 'draft',
    locked: 'locked for print',
    printed: 'printed',
    cured: 'cured',
    pressed: 'pressed',
    closed: 'closed',
  } satisfies Record<Run['state'], string>,
  stateAt: (state: string, when: string) => `${state} ${when}`,
  history: 'So far',
  peel: 'Peels',
  peels: { hot: 'hot, at once', warm: 'warm', cold: 'cold' } satisfies Record<Peel, string>,
  fabric: 'Fabric',
  fabrics: {
    cotton: 'cotton',
    blend: 'cotton and polyester blend',
    polyester: 'polyester',
    nylon: 'nylon',
    rayon: 'rayon, viscose',
    canvas: 'canvas',
    leather: 'treated leather',
    acrylic: 'acrylic',
    elastane: 'stretch, with elastane',
    'non-woven': 'non-woven polypropylene',
    shell: 'coated shell',
    other: 'something else',
  } satisfies Record<Fabric, string>,
  untold: 'not told',
  severalFabrics: 'several',
  fabricOfLines: 'Fabric of all lines',
  untoldCaution:
    'Nobody has told the fabric: ask before it is pressed. Until then it is planned cool enough for all.',
  wants: 'The customer gets',
  wantsOf: { garments: 'pressed garments', transfers: 'transfers only' },
  workers,
  kinds,
  job: (
    job: {
      kind: JobKind;
      spans: readonly number[];
      code: string | null;
      transfers: readonly string[];
      copies: number;
    },
    ways: Ways,
  ): string => {
    switch (job.kind) {
      case 'ready':
        return kinds.ready;
      case 'press':
      case 'again':
        return `${kinds[job.kind]} ${job.code ?? ''} ${job.transfers.join(' + ')}, ${counted(job.copies, 'copy', 'copies', ways)}, ${spans(job.spans, ways)}`;
      case 'pack':
        return `${kinds.pack} ${job.code ?? ''}, ${counted(job.copies, 'copy', 'copies', ways)}`;
      default:
        return `${kinds[job.kind]} ${spans(job.spans, ways)}`;
    }
  },
  sentence: (end: Moment, runs: number, ways: Ways): SentencePart[] => [
    say('Done by '),
    figure(when(end)),
    runs > 1 ? say(`, all ${counted(runs, 'open run', 'open runs', ways)}.`) : stopAfter(when(end)),
  ],
  notPlanned: (run: string) => `${run} is not in this plan. Look at it here to see why.`,
  inRuns: 'runs',
  runOrder: 'Which run first',
  orderFound: 'Least is late, a rush comes next, and all is done soonest.',
  orderByHand: 'Moved by hand.',
  orderAgain: 'Let it be found again',
  allPrinted: 'all printed',
  printsAt: (time: string) => `printed from ${time}`,
  doneAt: (time: string) => `done ${time}`,
  sooner: 'Sooner',
  moveRun: (run: string) => `Move ${run}`,
  soonerOf: (run: string) => `Print ${run} sooner`,
  doNow: 'Do this now',
  done: 'Done',
  startOf: (run: string) => `Begin ${run}`,
  restFromTo: (from: string, to: string) => `Break from ${from} to ${to}`,
  dueAt: (time: string) => `Due at ${time}`,
  working: 'Working out the day…',
  missing: {
    'nothing-laid': 'Nothing lies on this run’s film yet. Lay it out first, then its day can be worked out.',
    'not-cut': 'No straight cuts can part this layout into spans short enough. Lay it out again first.',
    'no-press':
      'There is no press to press on, or to cure under. Say in “Equipment” how many presses there are.',
    'no-speed': 'The printer’s speed is zero. Say in “Equipment” how much film it prints in an hour.',
  } satisfies Record<WorkProblem, string>,
  bound: (least: Moment, over: string) =>
    `Earliest possible finish ${when(least)}; this one is ${over} later.`,
  proven: 'No order of work ends sooner.',
  bottleneck: (of: Bottleneck, busy: string, machine: string | null): string => {
    switch (of.kind) {
      case 'worker':
        return `What holds the day up: ${machine ?? workers[of.worker].toLowerCase()}, at work ${busy}.`;
      case 'trays':
        return 'What holds the day up: too few trays for powdered film.';
      case 'path':
        return `What holds the day up: one thing after the other, from ${kinds[of.through[0] ?? 'ready'].toLowerCase()} to ${kinds[of.through.at(-1) ?? 'pack'].toLowerCase()}.`;
    }
  },
  tooWet: (time: string) =>
    `Wet print waits ${time} too long in all. Shorter spans, more operators or a longer wait in “Equipment” would mend it.`,
  wetOverClosing: (powdered: Moment) =>
    `Film lies wet until ${when(powdered)}, over closing time. Powder it before you go, or print it later.`,
  tooLongPowdered: (time: string) =>
    `Powdered film waits ${time} too long for its cure in all. Another oven or press, or shorter spans, would mend it.`,
  liesWet: (run: string, time: string, limit: string) =>
    `${run} is sent without a pause: its first ink lies wet for ${time}, not ${limit} at most. Send it span by span, or a shorter run.`,
  askSends: 'Say in “Equipment” how runs are sent to the printer: one job, or one a span.',
  changes: (count: number, ways: Ways) =>
    count === 0
      ? 'One press temperature all day.'
      : `${counted(count, 'change', 'changes', ways)} of press temperature.`,
  orders: 'Orders',
  orderDone: 'done',
  due: 'due',
  noDue: 'no date',
  beyond: ({ waiting, elsewhere }: Beyond, ways: Ways): string =>
    `without ${[
      ...(waiting > 0 ? [`${counted(waiting, 'copy that waits', 'copies that wait', ways)}`] : []),
      ...(elsewhere > 0 ? [`${counted(elsewhere, 'copy', 'copies', ways)} on other runs`] : []),
    ].join(' and ')}`,
  inTime: 'in time',
  start: 'Begin the run',
  startNote: 'The clock of this run has begun. Tick what is done, and the rest is planned again.',
  next: 'What comes next',
  nextHint: 'Tick what is done. Earlier steps are ticked too.',
  doneJobs: (count: number, of: number, ways: Ways) => `${whole(count, ways)} of ${whole(of, ways)} done`,
  doneOn: (job: string) => `Done on, for ${job}`,
  undoTick: (job: string) => `Untick: ${job}`,
  undoShort: 'Untick',
  lastDone: 'Done last',
  jobs: (count: number, ways: Ways) => counted(count, 'job', 'jobs', ways),
  together: 'Several at once',
  batch: (batch: Batch, ways: Ways): string => {
    const all = `all ${whole(batch.jobs.length, ways)}`;
    switch (batch.by) {
      case 'kind':
        return `${kinds[batch.kind]}: ${all}`;
      case 'span':
        return `Span ${whole(batch.span + 1, ways)} until it is cut apart: ${all}`;
      case 'order':
        return `${batch.order.code} until it is packed: ${all}`;
    }
  },
  togetherDone: 'All of these are done',
  back: (state: string) => `Back to ${state}`,
  lockFirst: 'This run is a draft. Lock it for print in the Film room, then begin it here.',
  closed: 'This run is closed. What it took is kept in the log.',
  equipment: 'Equipment',
  recipes: 'Recipes',
  cards: 'Cards to print',
  handOver: 'Pass to another device',
  spoil: 'A copy is spoiled',
  chart: 'The day',
  zoom: 'Zoom',
  zooms: { fit: 'whole day', double: 'larger', four: 'largest' },
  nowAt: (time: string) => `now, ${time}`,
  chartLabel: 'Time chart of the day: what is done to the film of all runs, and each order',
  filmSteps: { ready: 'Warm up', print: 'Print', cure: 'Powder and cure', apart: 'Cut apart' },
  shortSteps: { ready: 'Warm', print: 'Print', cure: 'Cure', apart: 'Cut' },
  legend,
  legendDone: 'done already',
  lot: (what: string, count: number, ways: Ways) => `${what}, ${counted(count, 'step', 'steps', ways)}`,
  from: 'From',
  by: 'By',
  initials: 'Your initials',
  initialsHint: 'They go with every tick; this device remembers them.',
  nozzlesFailed: 'The nozzle check failed',
  to: 'To',
  what: 'What',
  asTable: 'The day as a table',
  loads: 'Together',
  recipe: 'Recipe',
  pressing: 'How to press',
  line: (values: PressValues, temperature: string, ways: Ways): string =>
    [
      temperature,
      `${values.seconds.small === values.seconds.large ? whole(values.seconds.small, ways) : `${whole(values.seconds.small, ways)}–${whole(values.seconds.large, ways)}`} s`,
      `${values.pressure} pressure`,
    ].join(', '),
  prePress: (seconds: number, ways: Ways) => `pre-press ${whole(seconds, ways)} s`,
  peelAfter: (peel: Peel, wait: number, ways: Ways) =>
    wait === 0
      ? `peel ${peel}`
      : `peel ${peel}, ${peel === 'cold' ? 'cool to the touch, ' : ''}after ${whole(wait, ways)} s`,
  secondPress: (seconds: number, ways: Ways) => `then ${whole(seconds, ways)} s more`,
  cover: (cover: PressValues['cover']) =>
    ({
      none: 'no cover sheet',
      paper: 'under parchment paper',
      silicone: 'under a silicone sheet',
      fabric: 'under a cotton sheet',
    })[cover],
  covers: {
    none: 'none',
    paper: 'parchment paper',
    silicone: 'silicone sheet',
    fabric: 'cotton sheet',
  } satisfies Record<PressValues['cover'], string>,
  pressures: { light: 'light', medium: 'medium', firm: 'firm' } satisfies Record<
    PressValues['pressure'],
    string
  >,
  origins: {
    'common-practice': 'common practice: ask the film maker’s data sheet',
    'data-sheet': 'from the data sheet',
    own: 'the shop’s own',
  } satisfies Record<Origin, string>,
  curers: {
    press: 'under the hovering press',
    oven: 'in an oven',
    line: 'on a shaker line',
  } satisfies Record<Curer, string>,
  curing: 'How to cure',
  cureLine: (temperature: string, time: string, clear: string | null) =>
    clear === null ? `${temperature}, ${time}` : `${temperature}, ${time}, hover gap ${clear}`,
  cureLooks: [
    'Good: glossy, with a texture like orange peel.',
    'Too little: grainy and dull, powder can be rubbed off. Cure on.',
    'Too much: yellowed and brittle. Reprint it.',
    'An oily surface means moisture: dry the film, powder and room.',
  ],
  fabricCautions: {
    'try-on-scrap': 'Try it on a scrap of this fabric first.',
    'dye-migrates': 'Dye may rise into the print: keep it cool and short, look again a day later.',
    coated: 'A coating may keep the print from holding: ask for a data sheet.',
    shrinks: 'May shrink or shine: press it short, under a cover.',
    melts: 'Softens at little heat: press it cool and short, under a cover.',
    moisture: 'Holds moisture: pre-press it well.',
  } satisfies Record<FabricCaution, string>,
  cautions: {
    print: 'Ink and cleaning fluid: nitrile gloves and eye protection. Read their safety data sheets first.',
    'cut-off':
      'Blade in the slot, film held flat, no scissors near the print head: lifted film can touch it.',
    apart: 'Blades are sharp: cut away from the hand that holds the film.',
    powder:
      'Powder flies: wear an N95 or FFP2 mask. Shake it off away from people and flames, under extraction.',
    'cure-press':
      'Hot platen over the film: nothing may touch it. Heat-resistant gloves; thin ones melt. Extract fumes at the press: an open window lets damp air in.',
    'cure-oven':
      'Hot chamber and trays: heat-resistant gloves; thin ones melt. Extract fumes at the oven: an open window lets damp air in.',
    line: 'Moving and hot parts: keep hands, hair and sleeves out while it runs. Fill powder with an N95 or FFP2 mask on. Extraction runs for powder and fumes.',
    press:
      'Hot platen and hot film: hands clear, heat-resistant gloves; thin ones melt. Extraction at the press. Let the garment cool before it is folded.',
    again:
      'Second press: the platen is as hot, the print lies bare. Cover on, hands clear, heat-resistant gloves.',
  } satisfies Record<Act, string>,
  acts: {
    print: 'Print',
    'cut-off': 'Cut off',
    apart: 'Cut apart',
    powder: 'Powder',
    'cure-press': 'Cure',
    'cure-oven': 'Cure',
    line: 'Shaker line',
    press: 'Press',
    again: 'Press again',
  } satisfies Record<Act, string>,
  dustLimits: 'Limits for dust',
  dust: 'Nuisance dust over 8 hours: 15 mg/m³ in all, 5 mg/m³ of it respirable (US, 29 CFR 1910.1000, Table Z-1). Your country may have others.',
  deference:
    'The makers’ data sheets, local codes and your shop’s own licensed or trained practice come before anything on this sheet.',
  whatIf: 'What would help',
  whatIfHint: 'Each is tried by itself, with all else as it is.',
  tryThem: 'Work it out',
  gains: (time: string) => `${time} sooner`,
  noGain: 'no sooner',
  notPossible: 'not possible for this layout',
  whatIfs: {
    oven: 'an oven of its own for curing',
    press: 'one more press',
    hands: 'one more operator',
    printer: 'one more printer, runs shared out between both',
    earlier: 'opening an hour earlier',
    spans: 'shorter spans, two thirds as long',
  },
  shelf: 'On the shelf',
  shelfFirst: 'Use what lies here first, when copies are added or laid out',
  shelfItem: (code: string, name: string, size: string) => `${code} ${name}, ${size}`,
  shelfCured: (day: string) => `cured ${day}`,
  draw: (count: number, ways: Ways) => `Use ${whole(count, ways)} for orders that wait`,
  drawn: (count: number, ways: Ways) =>
    `${counted(count, 'copy needs', 'copies need', ways)} no film now: taken from the shelf.`,
};
