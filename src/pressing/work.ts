import { copiesWithin, cutOrder, runSpans, uprightSize } from '../cutting';
import type { LaidCopy, LaidRun } from '../layout';
import type { Fabric, Id, Order, PressValues, RunView, Station } from '../model';
import type { Span } from '../packing';
import { fail, fromMm, type Micrometres, ok, type Result } from '../units';
import { type Closing, closingsOf } from './closings';
import { cutKey, packKey } from './keys';
import { bedOf, fitsOn, loadsOf } from './loads';
import { cureRecipe, pressRecipe } from './recipes';
import type { Chain, Due, Resource, ScheduleProblem, Task, Use } from './schedule';
import { pressSeconds } from './starting';

/** What is done to a run from the printer to the bag. `again` is the second press, or the peeling of cold film before it. */
export type JobKind =
  | 'ready'
  | 'print'
  | 'cut-off'
  | 'powder'
  | 'cure'
  | 'line'
  | 'apart'
  | 'press'
  | 'again'
  | 'pack';

/** One task of the bench, as a person would name it. */
export interface Job {
  /** Stays the same while the run is locked: what is ticked names it. */
  readonly key: string;
  readonly kind: JobKind;
  /** Spans of the film, from 0. */
  readonly spans: readonly number[];
  readonly order: Pick<Order, 'id' | 'code' | 'name' | 'tint'> | null;
  /** Those that are pressed at once; none for what is not pressed. */
  readonly transfers: readonly LaidCopy['transfer'][];
  readonly copies: readonly Id<'copy'>[];
  /** What is ticked one by one on the way: when all of it is, the job is done. */
  readonly parts: readonly string[];
  readonly fabric: Fabric | null;
}

/** What does the work; the press cures as well, where nothing else does. */
export type Worker = 'printer' | 'hands' | 'press' | 'oven';

/** A day at the bench: the schedule's problem, and what its tasks and resources are. */
export interface Work {
  readonly problem: ScheduleProblem;
  /** As long as the problem's tasks, in the same order. */
  readonly jobs: readonly Job[];
  readonly workers: readonly Worker[];
  readonly spans: readonly Span[];
  /** Spans larger than what they are cured on, and transfers larger than the press. */
  readonly tooLarge: readonly TooLarge[];
}

type TooLarge =
  | { readonly kind: 'span'; readonly span: number; readonly length: Micrometres }
  | { readonly kind: 'transfer'; readonly transfer: LaidCopy['transfer']; readonly order: Job['order'] };

/** What is ticked while each span is cut apart: its copies, or for straight cuts the cuts. */
const cutPartsOf = (laid: LaidRun, bySpan: readonly (readonly LaidCopy[])[]): string[][] =>
  laid.film.cutting === 'free'
    ? bySpan.map((copies) => copies.map(({ id }) => cutKey.copy(id)))
    : cutOrder(laid).map(({ span, steps }) => {
        const copies = steps.flatMap((step) => (step.kind === 'copy' ? [cutKey.copy(step.copy.id)] : []));
        // Where straight cuts cannot part it, copies are taken out of strips: the last copy ends it.
        return copies.length > 0
          ? copies
          : steps.flatMap((step) => (step.kind === 'cut' ? [cutKey.cut(span, step.number)] : []));
      });

/** What is missing for a schedule. */
export type WorkProblem = 'nothing-laid' | 'not-cut' | 'no-press' | 'no-speed';

/** Two pieces of film on a bed lie so far apart (common practice, no source). */
const APART = fromMm(10);
/** Wet film should not wait for more than one other span. */
const MOST_IN_LOAD = 2;
/** Hands are needed at the printer every few minutes: no lot at the press is longer, unless a single garment is. */
const LOT = 240;
/** Film that is peeled after a wait of this or more is left lying, and the next garment pressed meanwhile. */
const LEAVE = 20;
/** To check, stretch and count an order before it is bagged. */
const CHECK = 30;

/** Whether a copy of a run is pressed here: a spare one is not, nor is one that the customer presses. */
export const pressedOn =
  ({ order, copy }: Pick<RunView, 'order' | 'copy'>) =>
  ({ id, order: { id: of } }: LaidCopy): boolean =>
    order[of]?.wants !== 'transfers' && copy[id]?.role !== 'over';

/** Seconds from an origin to the time at which an order is due; `null` if it has no date. */
function dueIn(order: Order, station: Station, origin: Date): number | null {
  if (order.due === null) return null;
  const [year = 0, month = 1, day = 1] = order.due.split('-').map(Number);
  const [hours = 0, minutes = 0] = (order.dueTime ?? station.closes).split(':').map(Number);
  return Math.round((new Date(year, month - 1, day, hours, minutes).getTime() - origin.getTime()) / 1000);
}

class Builder {
  readonly tasks: Task[] = [];
  readonly jobs: Job[] = [];
  readonly chains: Chain[] = [];
  readonly dues: Due[] = [];

  add(
    job: Pick<Job, 'key' | 'kind'> & Partial<Job>,
    task: { duration: number; uses: readonly Use[]; after: readonly (number | null)[]; lag?: number },
  ): number {
    const { duration, uses, after, lag = 0 } = task;
    const before = [...new Set(after)].filter((index) => index !== null);
    this.tasks.push({
      duration,
      uses: uses.filter(({ from, to }) => to > from),
      after: before.map((index) => ({ task: index, lag })),
      fixed: null,
    });
    this.jobs.push({ spans: [], order: null, transfers: [], copies: [], parts: [], fabric: null, ...job });
    return this.tasks.length - 1;
  }
}

/** A list in parts of so many. */
const inParts = <Item>(items: readonly Item[], size: number): Item[][] =>
  Array.from({ length: Math.ceil(items.length / size) }, (_, part) =>
    items.slice(part * size, (part + 1) * size),
  );

/** A whole degree is the step of a press's setting. */
const degrees = (temperature: number): number => Math.round(temperature / 10);

/** What the work of a run is made from, and what it is put down in. */
interface Bench {
  readonly view: RunView;
  readonly station: Station;
  readonly film: LaidRun['film'];
  readonly spans: readonly Span[];
  readonly bySpan: readonly (readonly LaidCopy[])[];
  /** What is ticked while each span is cut apart. */
  readonly cutParts: readonly (readonly string[])[];
  readonly isPressed: (copy: LaidCopy) => boolean;
  readonly build: Builder;
  readonly use: (worker: Worker, from: number, to: number, setting?: number) => Use;
}

/** Film up to the powder, in the order in which it comes out: the last task of each span, and its cutting apart if that comes first. */
function filmWork(bench: Bench, ready: number): { powdered: number[]; cutEarly: (number | null)[] } {
  const { view, station, spans, bySpan, film, build, use } = bench;
  const { handling, printer } = station;
  const powdered: number[] = [];
  const cutEarly: (number | null)[] = [];
  let before = ready;
  spans.forEach((span, index) => {
    const own = { spans: [index], copies: (bySpan[index] ?? []).map(({ id }) => id) };
    const count = own.copies.length;
    const time = Math.max(1, Math.round((3600 * (span.to - span.from)) / printer.perHour));
    const print = build.add(
      { key: `print/${index}`, kind: 'print', ...own },
      { duration: time, uses: [use('printer', 0, time)], after: [before] },
    );
    before = print;
    if (station.curer === 'line') {
      const cure = cureRecipe(view, 'line').values.seconds;
      powdered.push(
        build.add(
          { key: `line/${index}`, kind: 'line', ...own },
          { duration: cure, uses: [], after: [print] },
        ),
      );
      cutEarly.push(null);
      return;
    }
    const chain = [print];
    if (film.kind === 'roll') {
      before = build.add(
        { key: `cut-off/${index}`, kind: 'cut-off', ...own },
        {
          duration: handling.cutOff,
          uses: [use('printer', 0, handling.cutOff), use('hands', 0, handling.cutOff)],
          after: [print],
        },
      );
      chain.push(before);
    }
    const early = station.cutApart === 'before-powder' && count > 0;
    const apart = early
      ? build.add(
          { key: `apart/${index}`, kind: 'apart', parts: bench.cutParts[index] ?? [], ...own },
          {
            duration: count * handling.cutApart,
            uses: [use('hands', 0, count * handling.cutApart)],
            after: [before],
          },
        )
      : null;
    if (apart !== null) chain.push(apart);
    cutEarly.push(apart);
    const powder = build.add(
      { key: `powder/${index}`, kind: 'powder', ...own },
      { duration: handling.powder, uses: [use('hands', 0, handling.powder)], after: [apart ?? before] },
    );
    chain.push(powder);
    powdered.push(powder);
    build.chains.push({ tasks: chain, limit: station.wetLimit });
  });
  return { powdered, cutEarly };
}

/** Cures, each of the spans that lie together on the bed: the cure of each span, and the spans that are larger than the bed. */
function cureWork(
  bench: Bench,
  powdered: readonly number[],
): { cured: readonly number[]; tooLarge: TooLarge[] } {
  const { view, station, spans, bySpan, film, build, use } = bench;
  if (station.curer === 'line') return { cured: powdered, tooLarge: [] };
  const { handling } = station;
  const sizes = spans.map(({ from, to }) => ({ width: film.width, length: (to - from) as Micrometres }));
  const bed = bedOf(station);
  const { loads, tooLarge } = loadsOf(sizes, bed, { apart: APART, most: MOST_IN_LOAD });
  const cured = [...powdered];
  const recipe = cureRecipe(view, station.curer).values;
  const beds = [...loads, ...tooLarge.map((index) => [index])].sort((a, b) => (a[0] ?? 0) - (b[0] ?? 0));
  for (const load of beds) {
    // What is larger than the bed is cured in as many goes as it takes.
    const goes = Math.max(
      ...load.map((index) =>
        tooLarge.includes(index) ? Math.ceil((sizes[index]?.length ?? 0) / bed.length) : 1,
      ),
    );
    const each = recipe.seconds + 2 * handling.load;
    const duration = goes * each;
    const cure = build.add(
      {
        key: `cure/${load[0]}`,
        kind: 'cure',
        spans: load,
        copies: load.flatMap((index) => (bySpan[index] ?? []).map(({ id }) => id)),
      },
      {
        duration,
        uses: [
          station.curer === 'press'
            ? use('press', 0, duration, degrees(recipe.temperature))
            : use('oven', 0, duration),
          use('hands', 0, handling.load),
          use('hands', duration - handling.load, duration),
        ],
        after: load.map((index) => powdered[index] ?? null),
      },
    );
    for (const index of load) cured[index] = cure;
  }
  return {
    cured,
    tooLarge: tooLarge.map((span) => ({
      kind: 'span',
      span,
      length: sizes[span]?.length ?? (0 as Micrometres),
    })),
  };
}

/** Copies taken out of each cured span: the last task of it. */
function apartWork(
  bench: Bench,
  cured: readonly number[],
  cutEarly: readonly (number | null)[],
): readonly number[] {
  const { station, bySpan, film, build, use } = bench;
  const { handling } = station;
  return cured.map((cure, index) => {
    const copies = bySpan[index] ?? [];
    const isEarly = cutEarly[index] !== null && cutEarly[index] !== undefined;
    if (copies.length === 0 || isEarly) return cure;
    // A line cures before anything is cut.
    const first = station.curer === 'line' && film.kind === 'roll' ? handling.cutOff : 0;
    const duration = first + copies.length * handling.cutApart;
    return build.add(
      {
        key: `apart/${index}`,
        kind: 'apart',
        spans: [index],
        copies: copies.map(({ id }) => id),
        parts: bench.cutParts[index] ?? [],
      },
      { duration, uses: [use('hands', 0, duration)], after: [cure] },
    );
  });
}

/** Closings that are alike: the same transfers, out of the same spans, all of them pre-pressed or none. */
interface Alike {
  readonly name: string;
  readonly spans: readonly number[];
  readonly isFirst: boolean;
  readonly closings: Closing[];
}

function alike(bench: Bench, closings: readonly Closing[]): Alike[] {
  const spanOf = new Map(
    bench.bySpan.flatMap((copies, span) => copies.map(({ id }) => [id as string, span] as const)),
  );
  const groups = new Map<string, Alike>();
  for (const closing of closings) {
    const { copies, isFirst } = closing;
    const spans = [...new Set(copies.map(({ id }) => spanOf.get(id) ?? 0))].sort((a, b) => a - b);
    const name = `${copies.map(({ transfer }) => transfer.id).join('+')}/${spans.join('+')}`;
    const key = `${name} ${isFirst}`;
    const group = groups.get(key);
    if (group) group.closings.push(closing);
    else groups.set(key, { name, spans, isFirst, closings: [closing] });
  }
  // What can be pressed first comes first.
  const last = ({ spans }: Alike) => spans.at(-1) ?? 0;
  return [...groups.values()].sort((a, b) => last(a) - last(b));
}

/** How long one closing takes of hands and press: all of it, or what is before the wait and what is behind it. */
function closingTimes(
  { handling }: Station,
  values: PressValues,
  { copies: [first, ...others] }: Closing,
  isFirst: boolean,
): { cycle: number; second: number | null } {
  const place = handling.place * (1 + others.length);
  const seconds = Math.max(...[first, ...others].map((copy) => pressSeconds(values, uprightSize(copy))));
  const closed = handling.dress + (isFirst ? values.prePress : 0) + place + seconds;
  if (values.wait < LEAVE) return { cycle: closed + values.wait + place + values.secondPress, second: null };
  const more = handling.place * others.length;
  return {
    cycle: closed,
    second: more + (values.secondPress > 0 ? handling.dress + values.secondPress : handling.place),
  };
}

/** Copies onto the garments: the last tasks of each order. */
function pressWork(bench: Bench, apart: readonly number[]): ReadonlyMap<string, readonly number[]> {
  const { view, station, bySpan, film, isPressed, build, use } = bench;
  const endsOf = new Map<string, number[]>();
  const note = (order: string, task: number) => {
    const tasks = endsOf.get(order);
    if (tasks) tasks.push(task);
    else endsOf.set(order, [task]);
  };
  bySpan.forEach((copies, index) => {
    for (const copy of copies) if (!isPressed(copy)) note(copy.order.id, apart[index] ?? 0);
  });
  const parts = new Map<string, number>();
  for (const { name, spans, isFirst, closings } of alike(
    bench,
    closingsOf(view, bySpan.flat().filter(isPressed), station),
  )) {
    const [some] = closings;
    if (!some) continue;
    const [{ order }] = some.copies;
    const fabric = view.order[order.id]?.fabric ?? 'other';
    const { values } = pressRecipe(view, film.peel, fabric);
    const setting = degrees(values.temperature);
    const { cycle, second } = closingTimes(station, values, some, isFirst);
    for (const lot of inParts(closings, Math.max(1, Math.floor(LOT / cycle)))) {
      const part = parts.get(name) ?? 0;
      parts.set(name, part + 1);
      const own = {
        spans,
        order,
        transfers: some.copies.map(({ transfer }) => transfer),
        copies: lot.flatMap(({ copies }) => copies.map(({ id }) => id)),
        fabric,
      };
      const duration = lot.length * cycle;
      let last = build.add(
        { key: `press/${name}/${part}`, kind: 'press', ...own },
        {
          duration,
          uses: [use('hands', 0, duration), use('press', 0, duration, setting)],
          after: spans.map((span) => apart[span] ?? null),
        },
      );
      if (second !== null) {
        const time = lot.length * second;
        last = build.add(
          { key: `again/${name}/${part}`, kind: 'again', ...own },
          {
            duration: time,
            uses: [
              use('hands', 0, time),
              ...(values.secondPress > 0 ? [use('press', 0, time, setting)] : []),
            ],
            after: [last],
            lag: values.wait,
          },
        );
      }
      note(order.id, last);
    }
  }
  return endsOf;
}

/** Each order checked and packed behind its last tasks, and when it is due. */
function packWork(
  bench: Bench,
  copies: readonly LaidCopy[],
  endsOf: ReadonlyMap<string, readonly number[]>,
  origin: Date,
): void {
  const { view, station, build, use } = bench;
  for (const [id, after] of endsOf) {
    const order = view.order[id];
    if (!order) continue;
    const own = copies.filter((copy) => copy.order.id === id);
    const duration = CHECK + own.length * station.handling.pack;
    const pack = build.add(
      { key: packKey(id), kind: 'pack', order, copies: own.map((copy) => copy.id) },
      { duration, uses: [use('hands', 0, duration)], after },
    );
    const at = dueIn(order, station, origin);
    if (at !== null) build.dues.push({ task: pack, at, weight: order.rush ? 3 : 1 });
  }
}

/**
 * The work of a run: warm up and check the nozzles, then for each span print, cut off, powder, cure and cut apart, then for each
 * transfer of it pre-press, press, peel and press again, then check and pack each order. Cutting across stops the printer; powder
 * follows print within the longest wait; a press is brought from one temperature to another in between.
 * @param origin when the work begins: dues are counted from it
 */
export function workOf(laid: LaidRun, station: Station, origin: Date): Result<Work, readonly WorkProblem[]> {
  const spans = runSpans(laid);
  const problems: WorkProblem[] = [];
  if (laid.copies.length === 0) problems.push('nothing-laid');
  else if (laid.spans === null) problems.push('not-cut');
  if (station.printer.perHour <= 0) problems.push('no-speed');
  const { view } = laid;
  const isPressed = pressedOn(view);
  const pressed = laid.copies.filter(isPressed);
  const curesOnPress = station.curer === 'press';
  if (station.press.count === 0 && (curesOnPress || pressed.length > 0)) problems.push('no-press');
  if (problems.length > 0) return fail(problems);

  const { printer, press } = station;
  const unit = { free: 0, setting: null };
  const workers: Worker[] = [
    'printer',
    'hands',
    'press',
    ...(station.curer === 'oven' ? ['oven' as const] : []),
  ];
  const numberOf = (worker: Worker) => workers.indexOf(worker);
  const resources: Resource[] = [
    { units: [unit], setup: null },
    { units: Array.from({ length: station.hands }, () => unit), setup: null },
    {
      units: Array.from({ length: Math.max(1, press.count) }, () => unit),
      setup: { cold: press.warmUp, rise: press.rise, fall: press.fall },
    },
    ...(station.curer === 'oven' ? [{ units: [unit], setup: null }] : []),
  ];
  const use = (worker: Worker, from: number, to: number, setting = 0): Use => ({
    resource: numberOf(worker),
    from,
    to,
    setting,
  });

  const build = new Builder();
  const ready = build.add(
    { key: 'ready', kind: 'ready' },
    {
      duration: printer.warmUp + printer.check,
      uses: [
        use('printer', 0, printer.warmUp + printer.check),
        use('hands', printer.warmUp, printer.warmUp + printer.check),
      ],
      after: [],
    },
  );

  const bySpan = spans.map((span) => copiesWithin(laid.copies, span));
  const cutParts = cutPartsOf(laid, bySpan);
  const bench = {
    view,
    station,
    film: laid.film,
    spans,
    bySpan,
    cutParts,
    isPressed,
    build,
    use,
  };
  const { powdered, cutEarly } = filmWork(bench, ready);
  const { cured, tooLarge } = cureWork(bench, powdered);
  packWork(bench, laid.copies, pressWork(bench, apartWork(bench, cured, cutEarly)), origin);

  const { tasks, jobs, chains, dues } = build;
  const seen = new Set<string>();
  const transfersTooLarge = pressed.flatMap((copy): TooLarge[] => {
    const { width, height } = uprightSize(copy);
    if (seen.has(copy.transfer.id) || fitsOn({ width, length: height }, press.platen)) return [];
    seen.add(copy.transfer.id);
    return [{ kind: 'transfer', transfer: copy.transfer, order: copy.order }];
  });
  return ok({
    problem: { now: 0, tasks, resources, chains, dues },
    jobs,
    workers,
    spans,
    tooLarge: [...tooLarge, ...transfersTooLarge],
  });
}
