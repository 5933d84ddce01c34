import type { Curer, Fabric, Origin, Peel, PressValues, Run, Stage } from '../../src/model';
import type { Bottleneck, FabricCaution, JobKind, Question, Worker, WorkProblem } from '../../src/pressing';
import {
  type DurationProblem,
  type Temperature,
  type TemperatureProblem,
  type TemperatureUnit,
  toDegrees,
} from '../../src/units';
import { benchLength, counted, number, type Ways, whole } from './format';

/** `330 °F`, `165.5 °C` */
const degrees = (value: Temperature, unit: TemperatureUnit, locale: string): string =>
  `${number(Math.round(toDegrees(value, unit)), locale, 0, 0)} °${unit}`;

/** Both scales, the shop's own first: `330 °F (166 °C)`. */
export const bothDegrees = (value: Temperature, unit: TemperatureUnit, locale: string): string =>
  `${degrees(value, unit, locale)} (${degrees(value, unit === 'C' ? 'F' : 'C', locale)})`;

/** A length of time as it is said: `45 s`, `12 min`, `3 h 35 min`. */
export function spoken(seconds: number, { locale }: Pick<Ways, 'locale'>): string {
  const count = (value: number) => number(value, locale, 0, 0);
  if (seconds < 90) return `${count(Math.round(seconds))} s`;
  const minutes = Math.round(seconds / 60);
  if (minutes < 60) return `${count(minutes)} min`;
  const rest = minutes % 60;
  return rest === 0
    ? `${count(Math.floor(minutes / 60))} h`
    : `${count(Math.floor(minutes / 60))} h ${count(rest)} min`;
}

const workers: Record<Worker, string> = { printer: 'Printer', hands: 'Hands', press: 'Press', oven: 'Oven' };

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

const spans = (list: readonly number[], ways: Ways): string =>
  `${list.length > 1 ? 'spans' : 'span'} ${list.map((span) => whole(span + 1, ways)).join(' + ')}`;

/** The press side's part of the catalogue. */
export const pressWords = {
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
    other: 'something else',
  } satisfies Record<Fabric, string>,
  wants: 'The customer gets',
  wantsOf: { garments: 'pressed garments', transfers: 'transfers only' },
  workers,
  worker: (worker: Worker, unit: number, of: number) =>
    of > 1 ? `${workers[worker]} ${unit + 1}` : workers[worker],
  kinds,
  job: (
    job: {
      kind: JobKind;
      spans: readonly number[];
      code: string | null;
      transfer: string | null;
      copies: number;
    },
    ways: Ways,
  ): string => {
    switch (job.kind) {
      case 'ready':
        return kinds.ready;
      case 'press':
      case 'again':
        return `${kinds[job.kind]} ${job.code ?? ''} ${job.transfer ?? ''}, ${counted(job.copies, 'copy', 'copies', ways)}, ${spans(job.spans, ways)}`;
      case 'pack':
        return `${kinds.pack} ${job.code ?? ''}, ${counted(job.copies, 'copy', 'copies', ways)}`;
      default:
        return `${kinds[job.kind]} ${spans(job.spans, ways)}`;
    }
  },
  sentence: (end: string, length: string) => ({
    before: 'Done by ',
    end,
    after: `, ${length} from the start.`,
  }),
  doneBy: (time: string) => time,
  working: 'Working out the day…',
  missing: {
    'nothing-laid': 'Nothing lies on this run’s film yet. Lay it out first, then its day can be worked out.',
    'not-cut': 'No straight cuts can part this layout into spans short enough. Lay it out again first.',
    'no-press':
      'There is no press to press on, or to cure under. Say in “Equipment” how many presses there are.',
    'no-speed': 'The printer’s speed is zero. Say in “Equipment” how much film it prints in an hour.',
  } satisfies Record<WorkProblem, string>,
  bound: (least: string, over: string) =>
    `No order of work ends before ${least}; this one is ${over} over that.`,
  proven: 'No order of work ends sooner.',
  bottleneck: (of: Bottleneck, busy: string): string =>
    of.kind === 'worker'
      ? `What holds the day up: ${workers[of.worker].toLowerCase()}, at work ${busy}.`
      : `What holds the day up: one thing after the other, from ${kinds[of.through[0] ?? 'ready'].toLowerCase()} to ${kinds[of.through.at(-1) ?? 'pack'].toLowerCase()}.`,
  tooWet: (time: string) =>
    `Wet print waits ${time} too long in all. Shorter spans, more hands or a longer wait in “Equipment” would mend it.`,
  changes: (count: number, ways: Ways) =>
    count === 0
      ? 'One press temperature all day.'
      : `${counted(count, 'change', 'changes', ways)} of press temperature.`,
  tooLargeSpan: (span: number, length: string, ways: Ways) =>
    `Span ${whole(span + 1, ways)} (${length}) is larger than what it is cured on. Allow shorter spans, or cure it in parts.`,
  tooLargeTransfer: (code: string, name: string) =>
    `${code} ${name} is larger than the press. It has to be pressed in two goes, or made smaller.`,
  orders: 'Orders',
  orderDone: 'done',
  due: 'due',
  noDue: 'no date',
  late: (time: string) => `${time} late`,
  inTime: 'in time',
  start: 'Begin the run',
  startNote: 'The clock of this run has begun. Tick what is done, and the rest is planned anew.',
  next: 'What comes next',
  nextHint: 'Tick what is done. What it waited for is taken as done too.',
  doneJobs: (count: number, of: number, ways: Ways) => `${whole(count, ways)} of ${whole(of, ways)} done`,
  undoTick: (job: string) => `Not done after all: ${job}`,
  undoShort: 'not done after all',
  lastDone: 'Done last',
  advance: { printed: 'All cured', cured: 'All pressed', pressed: 'Close the run' } as Partial<
    Record<Run['state'], string>
  >,
  back: (state: string) => `Back to ${state}`,
  closedNote: 'The run is closed. Its spare copies are on the shelf.',
  lockFirst: 'This run is a draft. Lock it for print in the Film room, then begin it here.',
  toFilm: 'To the Film room',
  equipment: 'Equipment',
  recipes: 'Recipes',
  cards: 'Cards to print',
  handOver: 'Hand over',
  spoil: 'A copy is spoiled',
  chart: 'The day',
  zoom: 'Zoom',
  zooms: { fit: 'whole day', double: 'larger', four: 'largest' },
  now: 'now',
  chartLabel: 'Time chart of the run: printer, hands, presses',
  from: 'From',
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
    wait === 0 ? `peel ${peel}` : `peel ${peel}, after ${whole(wait, ways)} s`,
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
    clear === null ? `${temperature}, ${time}` : `${temperature}, ${time}, ${clear} clear of the film`,
  cureLooks: [
    'Good: glossy, with a texture like orange peel.',
    'Too little: grainy and dull, powder can be rubbed off. Cure on.',
    'Too much: yellowed and brittle. Print it anew.',
    'An oily surface means moisture: dry the film, powder and room.',
  ],
  fabricCautions: {
    'try-on-scrap': 'Try it on a scrap of this fabric first.',
    'dye-migrates': 'Dye may rise into the print: keep it cool and short, look again a day later.',
    coated: 'A coating may keep the print from holding: ask for a data sheet.',
    shrinks: 'May shrink or shine: press it short, under a cover.',
    moisture: 'Holds moisture: pre-press it well.',
  } satisfies Record<FabricCaution, string>,
  cautions: {
    press:
      'Hot platen and hot film: keep hands clear, wear gloves, let the garment cool before it is folded.',
    cure: 'Hot platen: nothing may touch it. Open a window, keep your face away from the fumes.',
    powder:
      'Powder: shake it off away from people and flames, wear a mask, ventilate. Nuisance dust limits: 29 CFR 1910.1000, Table Z-1.',
    'cut-off':
      'Blade in the slot, film held flat, no scissors near the print head: lifted film can touch it.',
    apart: 'Blades are sharp: cut away from the hand that holds the film.',
    print: 'Ink and cleaning fluid: read their safety data sheets, wear gloves.',
  } as Partial<Record<JobKind, string>>,
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
    hands: 'one more pair of hands',
    spans: 'shorter spans, two thirds as long',
  },
  shelf: 'On the shelf',
  shelfItem: (code: string, name: string, size: string) => `${code} ${name}, ${size}`,
  shelfCured: (day: string) => `cured ${day}`,
  draw: (count: number, ways: Ways) => `Use ${whole(count, ways)} for orders that wait`,
  drawn: (count: number, ways: Ways) =>
    `${counted(count, 'copy needs', 'copies need', ways)} no film now: taken from the shelf.`,
  spoiled: {
    title: 'A copy is spoiled',
    copy: 'Copy',
    stage: 'Spoiled',
    stages: {
      print: 'in print',
      powder: 'in powder',
      cure: 'in cure',
      cut: 'in cutting',
      press: 'at the press',
    } satisfies Record<Stage, string>,
    reason: 'Why',
    reasonNeeded: 'Say why in a word or two, so that it can be mended.',
    garment: 'The garment is spoiled too',
    save: 'Print it again',
    note: (name: string) => `${name} is back on the list for another run.`,
    onlyPrinted:
      'Copies can be spoiled once the run is printed. Until then use “Spoiled from – to” in the Film room.',
  },
  station: {
    title: 'Equipment and handling',
    hint: 'Starting values are common practice, without a source. Time yourself once and put in your own.',
    temperature: 'Temperatures in',
    units: { C: 'degrees Celsius', F: 'degrees Fahrenheit' },
    cutApart: 'Copies are cut apart',
    cutAparts: { 'after-cure': 'after powder and cure', 'before-powder': 'before powder and cure' },
    perHour: 'Printed in an hour',
    warmUp: 'Printer’s warm-up',
    check: 'Nozzle check',
    hands: 'Pairs of hands',
    presses: 'Presses',
    platenWidth: 'Platen, width',
    platenLength: 'Platen, length',
    pressWarmUp: 'Press’s warm-up',
    rise: 'Seconds for each °C up',
    fall: 'Seconds for each °C down',
    curer: 'Powder is cured',
    ovenWidth: 'Oven, width',
    ovenLength: 'Oven, length',
    wetLimit: 'Wet print waits for powder at most',
    cutOff: 'Cut off a span',
    powder: 'Powder a span',
    load: 'Load or unload a cure',
    apart: 'Cut a copy out',
    dress: 'Garment on and off the press',
    place: 'Place a transfer, peel it',
    pack: 'Stretch, check, bag a garment',
    closes: 'The day’s orders are due at',
    count: 'Write a whole number from 0 to 20.',
    handsCount: 'Write a whole number from 1 to 20.',
  },
  recipeForm: {
    title: 'Recipes',
    film: 'Film peels',
    which: 'For',
    pressing: 'Pressing',
    curing: 'Curing',
    temperature: (unit: TemperatureUnit) => `Temperature (°${unit})`,
    pressure: 'Pressure',
    small: 'Seconds, small transfers',
    large: 'Seconds, 200 mm and larger',
    wait: 'Wait before peeling, seconds',
    prePress: 'Pre-press, seconds',
    second: 'Second press, seconds',
    cover: 'Cover sheet',
    seconds: 'Seconds',
    clear: 'Clear of the film',
    origin: 'These values are',
    notes: 'Notes',
    save: 'Save this recipe',
    keepAnyway: 'Keep it all the same',
    saved: 'The recipe is saved; what it was before is in its history.',
    history: 'Before',
    until: (when: string) => `until ${when}`,
    questioned: 'Is this meant?',
  },
  question: (question: Question, unit: TemperatureUnit, ways: Ways): string => {
    const temperature = (value: Temperature) => bothDegrees(value, unit, ways.locale);
    switch (question.code) {
      case 'other-unit':
        return `That figure looks like the other scale: ${temperature(question.meant)} is what presses are set to. Check the unit.`;
      case 'scorches':
        return `Above ${temperature(question.most)} this may scorch, glaze or yellow.`;
      case 'dye-migrates':
        return `Above ${temperature(question.most)} the dye of polyester may rise into the print.`;
      case 'melts-nothing':
        return `Below ${temperature(question.least)} the powder hardly melts and will not hold.`;
      case 'too-short':
        return `Less than ${whole(question.least, ways)} s is hardly enough for the powder to flow.`;
      case 'too-long':
        return `More than ${whole(question.most, ways)} s is longer than is usual and may harm print and fabric.`;
      case 'pre-press-long':
        return `A pre-press of more than ${whole(question.most, ways)} s dries nothing further and may scorch.`;
      case 'second-press-long':
        return `A second press of more than ${whole(question.most, ways)} s is longer than is usual.`;
      case 'wait-long':
        return `Film is cold after ${whole(question.most, ways)} s; a longer wait only costs time.`;
      case 'clear-off':
        return `A platen hovers ${benchLength(question.least, ways)} to ${benchLength(question.most, ways)} above the film: nearer it may touch, further it hardly heats.`;
    }
  },
  temperatureProblems: {
    empty: 'Type a temperature, such as 160 C or 320 F.',
    unreadable: 'This is not a temperature. Type a number with or without C or F.',
    impossible: 'No press or oven gets there. Check the figure.',
  } satisfies Record<TemperatureProblem, string>,
  durationProblems: {
    empty: 'Type a time, such as 15 s or 2.5 min.',
    unreadable: 'This is not a length of time. Type a number with or without s or min.',
    'too-long': 'That is longer than a day. Check the figure.',
  } satisfies Record<DurationProblem, string>,
  cut: {
    title: 'Cut',
    span: (span: number, of: number, ways: Ways) => `Span ${whole(span + 1, ways)} of ${whole(of, ways)}`,
    spanChoice: 'Span',
    copyOf: (index: number, of: number, ways: Ways) => `Copy ${whole(index, ways)} of ${whole(of, ways)}`,
    cutOf: (index: number, of: number, ways: Ways) => `Cut ${whole(index, ways)} of ${whole(of, ways)}`,
    across: (length: string) => `Across, ${length} from the front edge of the piece in your hand`,
    along: (length: string) => `Lengthwise, ${length} from its near side`,
    off: (count: number, ways: Ways) => `${counted(count, 'copy', 'copies', ways)} on what comes off`,
    frees: (names: string) => `sets free ${names}`,
    take: (name: string) => `Take out ${name}`,
    done: 'Done, next',
    back: 'One back',
    allCut: (count: number, ways: Ways) => `This span is cut: ${counted(count, 'copy', 'copies', ways)}.`,
    nextSpan: 'Next span',
    pile: 'What the pile must hold',
    pileOf: (code: string, cut: number, of: number, ways: Ways) =>
      `${code}: ${whole(cut, ways)} of ${whole(of, ways)}`,
    pileAll: 'The pile of the whole run',
    map: 'Cut map',
    nothing: 'Nothing lies on this run’s film yet, so there is nothing to cut.',
    draft: 'This run is still a draft: its layout may change. Lock it for print before you cut.',
    before: 'Cut apart before the powder: keep the wet ink from touching anything.',
    after: 'Cut apart after the cure.',
    plan: 'The span; what is to be cut now is marked',
  },
} as const;
