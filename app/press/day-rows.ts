import type { Entry, Job, JobKind, Machine } from '../../src/pressing';
import type { DayAxis } from './day-axis';

const filmSteps = ['ready', 'print', 'cure', 'apart'] as const;
type FilmStep = (typeof filmSteps)[number];

/** What a lot is of: a step of the film, pressing, or checking and packing. */
type LotKind = FilmStep | 'press' | 'pack';

/** What is done at one go: jobs of a kind and a run that follow one another so closely that they look like one. */
export interface Lot {
  readonly kind: LotKind;
  readonly run: Job['run'];
  readonly from: number;
  readonly to: number;
  readonly isDone: boolean;
  readonly jobs: readonly Job[];
  /** Where, as far as there are several of a kind. */
  readonly machines: readonly Machine[];
}

/** A row of the day's chart: a step that the film takes as a whole, or what an order takes from then on. */
export interface DayRow {
  readonly of: FilmStep | NonNullable<Job['order']>;
  /** Of several printers the one whose row it is. */
  readonly printer: Machine | null;
  /** The earliest first. */
  readonly lots: readonly Lot[];
}

/** The row of what is done to the film, and what a lot of it is called. */
const stepOf: Partial<Record<JobKind, FilmStep>> = {
  ready: 'ready',
  print: 'print',
  'cut-off': 'cure',
  powder: 'cure',
  cure: 'cure',
  line: 'cure',
  apart: 'apart',
};

/** The second press belongs to the first. */
const shownAs = (kind: JobKind): LotKind => stepOf[kind] ?? (kind === 'pack' ? 'pack' : 'press');

/** Each machine once. */
const distinct = (machines: readonly Machine[]): Machine[] => [
  ...new Map(machines.map((machine) => [machine.id, machine])).values(),
];

/** The machines that a job takes, as far as there are several of their kind. */
export const machinesOf = ({ takes }: Pick<Entry, 'takes'>): readonly Machine[] =>
  distinct(takes.flatMap(({ machine }) => machine ?? []));

/** Joins what follows within some seconds; what is done stays apart from what is not. */
function joined(entries: readonly Entry[], within: number): Lot[] {
  const lots: Lot[] = [];
  for (const entry of entries.toSorted((a, b) => a.start - b.start)) {
    const { job, start, end, state } = entry;
    const machines = machinesOf(entry);
    const kind = shownAs(job.kind);
    const isDone = state === 'done';
    const at = lots.findLastIndex((lot) => lot.kind === kind && lot.run.id === job.run.id);
    const last = lots[at];
    if (last && last.isDone === isDone && start - last.to <= within) {
      lots[at] = {
        ...last,
        to: Math.max(last.to, end),
        jobs: [...last.jobs, job],
        machines: distinct([...last.machines, ...machines]),
      };
    } else lots.push({ kind, run: job.run, from: start, to: end, isDone, jobs: [job], machines });
  }
  return lots;
}

/**
 * The day as rows: the steps of the film first, those of each printer by itself, then its orders by the time at which they begin.
 * @param within two lots of a kind no further apart than this are one, in seconds
 */
export function dayRows(entries: readonly Entry[], within: number): readonly DayRow[] {
  const rows = new Map<string, Pick<DayRow, 'of' | 'printer'> & { entries: Entry[] }>();
  const put = (key: string, { of, printer }: Pick<DayRow, 'of' | 'printer'>, entry: Entry) => {
    const row = rows.get(key) ?? { of, printer, entries: [] };
    row.entries.push(entry);
    rows.set(key, row);
  };
  for (const entry of entries) {
    const { kind, order } = entry.job;
    const step = stepOf[kind];
    if (step === 'ready' || step === 'print') {
      const printer = machinesOf(entry).find((machine) => machine.kind === 'printer') ?? null;
      put(`${step} ${printer?.id}`, { of: step, printer }, entry);
    } else if (step) put(step, { of: step, printer: null }, entry);
    else if (order) put(order.id, { of: order, printer: null }, entry);
  }
  const byNumber = (a: Pick<DayRow, 'printer'>, b: Pick<DayRow, 'printer'>) =>
    (a.printer?.number ?? 0) - (b.printer?.number ?? 0);
  const steps = filmSteps.flatMap((step) =>
    [...rows.values()].filter(({ of }) => of === step).sort(byNumber),
  );
  const orders = [...rows.values()]
    .filter(({ of }) => typeof of !== 'string')
    .toSorted((a, b) => startOf(a.entries) - startOf(b.entries));
  return [...steps, ...orders].map(({ of, printer, entries: own }) => ({
    of,
    printer,
    lots: joined(own, within),
  }));
}

const startOf = (entries: readonly Entry[]): number => Math.min(...entries.map(({ start }) => start));

/** A mark of the axis, in seconds from midnight. */
export interface AxisMark {
  readonly time: number;
  /** The mark before it, if there is one: what it says of the day need not be said again. */
  readonly before: number | undefined;
}

const MINUTES = [5, 10, 15, 30, 60, 120, 240, 360, 720];
const DAY = 1440;

/**
 * Marks at whole steps of the clock, no nearer to each other than their figures need.
 * @param axis the day, its seconds counted from midnight
 * @param pixels pixels a second
 * @param figure pixels that the figures of a mark need
 */
export function axisMarks(
  axis: Pick<DayAxis, 'from' | 'to' | 'shown' | 'nights'>,
  pixels: number,
  figure: number,
): readonly AxisMark[] {
  const minute = 60 * pixels;
  const minutes = MINUTES.find((step) => step * minute >= figure) ?? DAY * Math.ceil(figure / (DAY * minute));
  const step = 60 * minutes;
  const marks: AxisMark[] = [];
  for (let time = step * Math.ceil(axis.from / step); time <= axis.to; time += step) {
    const before = marks.at(-1)?.time;
    const isClosed = axis.nights.some(({ from, to }) => from < time && time < to);
    const isFree = before === undefined || (axis.shown(time) - axis.shown(before)) * pixels >= figure;
    if (!isClosed && isFree) marks.push({ time, before });
  }
  return marks;
}

/**
 * How long nothing else of its row lies over a lot, from its beginning: there is room for its name. Checking and packing lies lower.
 * @returns seconds; 0 where another that began before still goes on
 */
export function clearOf({ from, to }: Lot, lots: readonly Lot[]): number {
  const others = lots.filter((lot) => lot.kind !== 'pack' && (lot.from !== from || lot.to !== to));
  if (others.some((lot) => lot.from <= from && lot.to > from)) return 0;
  return Math.min(to, ...others.flatMap((lot) => (lot.from > from ? [lot.from] : []))) - from;
}

/** The longest of some texts, the fullest first, that fits; `null` where none does. */
export const fittingText = (
  texts: readonly string[],
  room: number,
  widthOf: (text: string) => number,
): string | null => texts.find((text) => text !== '' && widthOf(text) <= room) ?? null;

/**
 * Where the time at which a row is done stands: behind its last lot, or before its first where there is no room behind it.
 * @param width pixels that it needs
 */
export function endLabel(
  { from, to }: { readonly from: number; readonly to: number },
  width: number,
  chart: { readonly left: number; readonly right: number },
): { readonly x: number; readonly anchor: 'start' | 'end' } | null {
  if (to + 6 + width <= chart.right) return { x: to + 6, anchor: 'start' };
  return from - 6 - width >= chart.left ? { x: from - 6, anchor: 'end' } : null;
}
