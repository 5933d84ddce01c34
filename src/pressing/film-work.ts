import { cutAround, cutOrder } from '../cutting';
import type { LaidCopy, LaidRun } from '../layout';

import { isCutStraight, type Printer, type Station } from '../model';
import { lengthOf } from '../outlines';

import { asSeconds, fromMm, type Seconds, sum, um } from '../units';
import { byHand, degrees, type WorkSource } from './builder';
import { longestOpen } from './calendar';
import { printerFor, unitsThat } from './crews';
import type { Job, TooLarge } from './jobs';
import { apartKey, cutKey, printKey } from './keys';
import { bedFor, bedsOf, fitTogether, loadsOf, type Sized, widestCured } from './loads';
import { cureRecipe } from './recipes';

/** Two pieces of film on a bed lie so far apart (common practice, no source). */
const APART = fromMm(10);
/** Wet film should not wait for more than one other span. */
const MOST_IN_LOAD = 2;

/** What is ticked while each span is cut apart: its copies, or for straight cuts the cuts. */
export const cutPartsOf = (laid: LaidRun, bySpan: readonly (readonly LaidCopy[])[]): string[][] =>
  !isCutStraight(laid.film)
    ? bySpan.map((copies) => copies.map(({ id }) => cutKey.copy(id)))
    : cutOrder(laid).map(({ span, steps }) => {
        const copies = steps.flatMap((step) => (step.kind === 'copy' ? [cutKey.copy(step.copy.id)] : []));
        // Where straight cuts cannot part it, copies are taken out of strips: the last copy ends it.
        return copies.length > 0
          ? copies
          : steps.flatMap((step) => (step.kind === 'cut' ? [cutKey.cut(span, step.number)] : []));
      });

/** How long a length of film is printed, in seconds. */
const printTime = (printer: Printer, length: number): number =>
  Math.max(1, Math.round((3600 * length) / printer.perHour));

/** Whether all of a run is printed before any of it can be cut off and powdered. */
const isThrough = ({ sends }: Printer, { curer }: Station, film: LaidRun['film']): boolean =>
  film.kind === 'roll' && sends === 'whole-through' && curer !== 'line';

/**
 * How long the first ink of a run lies wet before its powder where the run goes through the printer as a whole; `null` where each span
 * is powdered before the next, or a line powders it.
 */
export function wetWhenWhole(
  laid: Pick<LaidRun, 'film' | 'view' | 'lengthUsed' | 'printedTo'>,
  station: Station,
): Seconds | null {
  const printer = printerFor(laid, station);
  const left = laid.lengthUsed - laid.printedTo;
  if (!isThrough(printer, station, laid.film) || printer.perHour <= 0 || left <= 0) return null;
  return asSeconds(printTime(printer, left) + byHand(station, station.handling.cutOff));
}

/** What is told of a span by each of its jobs. */
const spanJob = ({ bySpan }: WorkSource, span: number): Pick<Job, 'spans' | 'copies'> => ({
  spans: [span],
  copies: (bySpan[span] ?? []).map(({ id }) => id),
});

/** A span printed behind what the printer did before. */
function printSpan(source: WorkSource, span: number, before: number): number {
  const { from, to } = source.spans[span] ?? { from: 0, to: 0 };
  const { printer, station, film, build, use } = source;
  const time = printTime(printer, to - from);
  // Film runs from its printer into a line: two printers at one line take turns.
  const units = unitsThat(station.ovens, ({ bed }) => film.width <= bed.width);
  const line =
    station.curer === 'line' && station.printers.length > 1 ? [use('oven', 0, time, { units })] : [];
  return build.add(
    { key: printKey(span), kind: 'print', ...spanJob(source, span) },
    { duration: time, uses: [use('printer', 0, time), ...line], after: [before] },
  );
}

/** A span cut off the roll: the printer stands still meanwhile. */
function cutOffSpan(source: WorkSource, span: number, after: readonly number[]): number {
  const cutOff = byHand(source.station, source.station.handling.cutOff);
  return source.build.add(
    { key: `cut-off/${span}`, kind: 'cut-off', ...spanJob(source, span) },
    {
      duration: cutOff,
      uses: [source.use('printer', 0, cutOff), source.use('hands', 0, cutOff)],
      after,
    },
  );
}

/** The longest that the printer is warm at a stretch. */
const longestWarm = ({ station: { hours }, printer }: WorkSource): number =>
  longestOpen(hours) - printer.warmUp;

/** Spans printed without a stop between them, if the printer is ever on for so long. */
function printThrough(source: WorkSource, prints: readonly number[]): void {
  const { build, spans, printer } = source;
  const times = spans.map(({ from, to }) => printTime(printer, to - from));
  if (prints.length < 2 || sum(times) > longestWarm(source)) return;
  build.chains.push({ tasks: prints, limit: sum(times.slice(1, -1)) });
}

/** What is printed without a stop is powdered before the shop closes, if it is ever open for so long. */
function powderThrough(source: WorkSource, first: number, powders: readonly number[]): void {
  const { build } = source;
  const lasts = sum(build.tasks.slice(first).map(({ duration }) => duration));
  if (lasts <= longestWarm(source)) build.stints.push({ first, tasks: powders });
}

/** In micrometres. */
const METRE = 1_000_000;

/** How long it takes to cut the copies of a span out; along their lines, unless a blade cuts straight from edge to edge. */
function cuttingTime({ station: { handling }, bySpan, film }: WorkSource, span: number): number {
  const copies = bySpan[span] ?? [];
  const line = isCutStraight(film) ? 0 : sum(copies.map((copy) => lengthOf(cutAround(copy, copies))));
  return copies.length * handling.cutApart + (line / METRE) * handling.cutMetre;
}

/** A span cut apart and powdered behind its cut: the last task, and its cutting apart if that comes first. */
function powderSpan(
  source: WorkSource,
  span: number,
  before: number,
): { readonly powder: number; readonly apart: number | null } {
  const { station, cutParts, build, use } = source;
  const { handling } = station;
  const own = spanJob(source, span);
  const count = own.copies.length;
  const early = station.cutApart === 'before-powder';
  const cutting = byHand(station, cuttingTime(source, span));
  const apart = early
    ? build.add(
        { key: apartKey(span), kind: 'apart', parts: cutParts[span] ?? [], ...own },
        { duration: cutting, uses: [use('hands', 0, cutting)], after: [before] },
      )
    : null;
  const duration = byHand(station, handling.powder + (early ? count * handling.loose : 0));
  const powder = build.add(
    { key: `powder/${span}`, kind: 'powder', ...own },
    { duration, uses: [use('hands', 0, duration)], after: [apart ?? before] },
  );
  return { powder, apart };
}

/** What becomes of each span on its way to the cure. */
interface FilmWork {
  /** The last task of each. */
  readonly powdered: readonly number[];
  /** Its cutting apart, if that comes before the powder. */
  readonly cutEarly: readonly (number | null)[];
}

/** Film that a line powders and cures as it comes out of the printer. */
function lineWork(source: WorkSource, ready: number): FilmWork {
  const { view, spans, build } = source;
  const { seconds } = cureRecipe(view, 'line').values;
  let before = ready;
  const powdered = spans.map((_, span) => {
    before = printSpan(source, span, before);
    return build.add(
      { key: `line/${span}`, kind: 'line', ...spanJob(source, span) },
      { duration: seconds, uses: [], after: [before] },
    );
  });
  return { powdered, cutEarly: spans.map(() => null) };
}

/**
 * Film up to the powder, in the order in which it comes out. Its wet time counts from the first ink of a span: what is left of it once
 * the span is printed is what its powder may wait.
 */
export function filmWork(source: WorkSource, ready: number): FilmWork {
  const { station, printer, spans, bySpan, film, build } = source;
  if (station.curer === 'line') return lineWork(source, ready);
  const through = isThrough(printer, station, film);
  const powdered: number[] = [];
  const cutEarly: (number | null)[] = [];
  let before = ready;
  const printNext = (span: number): number => {
    before = printSpan(source, span, before);
    return before;
  };
  const whole = through ? spans.map((_, span) => printNext(span)) : null;
  if (whole) printThrough(source, whole);
  spans.forEach(({ from, to }, span) => {
    const print = whole?.[span] ?? printNext(span);
    const first = build.tasks.length;
    if (film.kind === 'roll') before = cutOffSpan(source, span, [print, before]);
    // Film that bears nothing, such as what was spoiled, is cut off and thrown away.
    if ((bySpan[span] ?? []).length === 0) {
      powdered.push(before);
      cutEarly.push(null);
      return;
    }
    const { powder, apart } = powderSpan(source, span, before);
    powdered.push(powder);
    cutEarly.push(apart);
    const limit = station.wetLimit - printTime(printer, to - from);
    if (through) build.waits.push({ from: print, to: powder, limit });
    else {
      const behind = Array.from({ length: build.tasks.length - first }, (_, at) => first + at);
      build.chains.push({ tasks: [print, ...behind], limit });
    }
  });
  if (whole?.[0] !== undefined) powderThrough(source, whole[0], powdered);
  return { powdered, cutEarly };
}

/** How often a bed is loaded for a piece that is larger than it, laid in the better of both ways. */
function goesOn({ width, length }: Sized, bed: Sized): number {
  const goes = (across: number, along: number) =>
    Math.ceil(across / bed.width) * Math.ceil(along / bed.length);
  return Math.min(goes(width, length), goes(length, width));
}

/**
 * Film of a run is cured in the order in which it is powdered: a span waits for a tray that one so many before it lay on. That other
 * runs have trays, too, the shelf tells; a run's own order need not be searched for.
 */
function takeTurns(
  { station, build }: WorkSource,
  bearing: readonly number[],
  powdered: readonly number[],
  laidDown: ReadonlyMap<number, { readonly cure: number; readonly behindEnd: number }>,
): void {
  bearing.forEach((span, at) => {
    const before = laidDown.get(bearing[at - station.trays] ?? -1);
    if (before) build.startAfter(powdered[span] ?? 0, before.cure, before.behindEnd);
  });
}

/** Cures, each of the spans that lie together on the bed: the cure of each span, and the spans that are larger than the bed. */
export function cureWork(
  source: WorkSource,
  { powdered, cutEarly }: FilmWork,
): { cured: readonly number[]; tooLarge: TooLarge[] } {
  const { view, station, spans, bySpan, film, build, use } = source;
  const { takes, machine } = widestCured(station);
  const tooWide: TooLarge[] =
    film.width > takes ? [{ kind: 'film', run: build.run, width: film.width, takes, machine }] : [];
  if (station.curer === 'line') return { cured: powdered, tooLarge: tooWide };
  const { handling, trays } = station;
  const sizes = spans.map(({ from, to }) => ({ width: film.width, length: um(to - from) }));
  const beds = bedsOf(station);
  const bed = bedFor(film.width, beds);
  const bearing = spans.flatMap((_, index) => ((bySpan[index] ?? []).length > 0 ? [index] : []));
  const found = loadsOf(
    bearing.flatMap((index) => sizes[index] ?? []),
    bed,
    { apart: APART, most: Math.min(MOST_IN_LOAD, trays) },
  );
  const spansOf = (pieces: readonly number[]) => pieces.flatMap((piece) => bearing[piece] ?? []);
  const tooLarge = spansOf(found.tooLarge);
  const cured = [...powdered];
  const laidDown = new Map<number, { cure: number; behindEnd: number }>();
  const recipe = cureRecipe(view, station.curer).values;
  const loads = [...found.loads.map(spansOf), ...tooLarge.map((index) => [index])].sort(
    (a, b) => (a[0] ?? 0) - (b[0] ?? 0),
  );
  for (const load of loads) {
    const copies = load.flatMap((index) => spanJob(source, index).copies);
    const loose = load.some((index) => cutEarly[index] !== null) ? copies.length * handling.loose : 0;
    const hands = byHand(station, handling.load + loose);
    // What is larger than the bed is cured in as many goes as it takes.
    const pieces = load.flatMap((index) => sizes[index] ?? []);
    const isLarger = load.some((index) => tooLarge.includes(index));
    const goesFor = (own: Sized) => Math.max(...pieces.map((piece) => goesOn(piece, own)));
    const goes = isLarger ? Math.min(...beds.map(goesFor)) : 1;
    const units = unitsThat(beds, (own) =>
      isLarger ? goesFor(own) === goes : fitTogether(pieces, own, APART),
    );
    const duration = goes * (recipe.seconds + 2 * hands);
    const cure = build.add(
      { key: `cure/${load[0]}`, kind: 'cure', spans: load, copies },
      {
        duration,
        uses: [
          station.curer === 'press'
            ? use('press', 0, duration, { setting: degrees(recipe.temperature), units })
            : use('oven', 0, duration, { units }),
          use('hands', 0, hands),
          use('hands', duration - hands, duration),
        ],
        after: load.map((index) => powdered[index] ?? null),
      },
    );
    for (const index of load) {
      cured[index] = cure;
      laidDown.set(index, { cure, behindEnd: hands - duration });
      build.waits.push({ from: powdered[index] ?? 0, to: cure, limit: station.powderLimit });
    }
    // Each of its spans lies on a tray until it is laid down.
    build.powdered.push({ fills: load.map((index) => powdered[index] ?? 0), clearedBy: cure, lag: hands });
  }
  takeTurns(source, bearing, powdered, laidDown);
  if (tooWide.length > 0) return { cured, tooLarge: tooWide };
  return {
    cured,
    tooLarge: tooLarge.map((span) => ({
      kind: 'span',
      run: build.run,
      span,
      length: sizes[span]?.length ?? um(0),
    })),
  };
}

/** Copies taken out of each cured span: the last task of it. */
export function apartWork(
  source: WorkSource,
  cured: readonly number[],
  { cutEarly }: FilmWork,
): readonly number[] {
  const { station, bySpan, film, build, use } = source;
  const { handling } = station;
  return cured.map((cure, index) => {
    const copies = bySpan[index] ?? [];
    const isEarly = cutEarly[index] !== null && cutEarly[index] !== undefined;
    if (copies.length === 0 || isEarly) return cure;
    // A line cures before anything is cut.
    const first = station.curer === 'line' && film.kind === 'roll' ? handling.cutOff : 0;
    const duration = byHand(station, first + cuttingTime(source, index));
    return build.add(
      {
        key: apartKey(index),
        kind: 'apart',
        spans: [index],
        copies: copies.map(({ id }) => id),
        parts: source.cutParts[index] ?? [],
      },
      { duration, uses: [use('hands', 0, duration)], after: [cure], pauses: true },
    );
  });
}
