import { copiesWithin, runSpans, uprightSize } from '../cutting';
import type { LaidCopy, LaidRun } from '../layout';
import type { RunView, Station } from '../model';
import { fail, ok, type Result } from '../units';
import { Builder, byHand, type WorkSource } from './builder';
import { platenClosings } from './closings';
import { apartWork, cureWork, cutPartsOf, filmWork } from './film-work';
import type { Job, TooLarge, Work, Worker } from './jobs';
import { fitsOn } from './loads';
import { isOnCap } from './measures';
import { packWork } from './pack-work';
import { pressedOn, pressWork } from './press-work';
import type { Resource } from './schedule';

/** What is missing for a schedule. */
export type WorkProblem = 'nothing-laid' | 'not-cut' | 'no-press' | 'no-speed';

/** What keeps a run from being planned. */
function problemsOf(
  { copies, spans }: LaidRun,
  station: Station,
  pressed: readonly LaidCopy[],
): WorkProblem[] {
  const needsPress = station.curer === 'press' || pressed.length > 0;
  return [
    ...(copies.length === 0 ? (['nothing-laid'] as const) : []),
    ...(copies.length > 0 && spans === null ? (['not-cut'] as const) : []),
    ...(station.printer.perHour <= 0 ? (['no-speed'] as const) : []),
    ...(station.press.count === 0 && needsPress ? (['no-press'] as const) : []),
  ];
}

/** Who does the work, and how many there are of each; a press has to be brought to its temperature. */
function resourcesOf({ curer, hands, press }: Station): Pick<Work, 'workers'> & { resources: Resource[] } {
  const units = (count: number) =>
    Array.from({ length: count }, () => ({ free: 0, setting: null, away: [] }));
  const setup = { cold: press.warmUp, rise: press.rise, fall: press.fall };
  const all: readonly (readonly [Worker, Resource])[] = [
    ['printer', { units: units(1), setup: null }],
    ['hands', { units: units(hands), setup: null }],
    ['press', { units: units(Math.max(1, press.count)), setup }],
    ...(curer === 'oven' ? [['oven', { units: units(1), setup: null }] as const] : []),
  ];
  return { workers: all.map(([worker]) => worker), resources: all.map(([, resource]) => resource) };
}

/** The printer warmed up and its nozzles checked, by hand. */
function readyWork({ station, build, use }: WorkSource): number {
  const { warmUp } = station.printer;
  const check = byHand(station, station.printer.check);
  const duration = warmUp + check;
  const uses = [use('printer', 0, duration), use('hands', warmUp, duration)];
  return build.add({ key: 'ready', kind: 'ready' }, { duration, uses, after: [] });
}

/** Transfers that the press does not take, each once: those larger than it, and those on caps where no platen is made for these. */
function tooLargeFor(
  view: RunView,
  { press }: Station,
  pressed: readonly LaidCopy[],
  run: Job['run'],
): TooLarge[] {
  const seen = new Set<string>();
  return pressed.flatMap((copy): TooLarge[] => {
    const { width, height } = uprightSize(copy);
    const isCap = !press.caps && isOnCap(view, copy);
    if (seen.has(copy.transfer.id) || (!isCap && fitsOn({ width, length: height }, press.platen))) return [];
    seen.add(copy.transfer.id);
    return [{ kind: isCap ? 'cap' : 'transfer', run, transfer: copy.transfer, order: copy.order }];
  });
}

/**
 * The work of a run: warm up and check the nozzles, then for each span print, cut off, powder, cure and cut apart, then for each
 * transfer of it pre-press, press, peel and press again, then check and pack each order. Cutting across stops the printer, unless the
 * run goes through it as a whole; powder follows the first ink, and the cure the powder, within the longest wait, and no more is
 * powdered than there are trays for; a press is brought from one temperature to another in between.
 * @param origin when the work begins: dues are counted from it
 */
export function workOf(laid: LaidRun, station: Station, origin: Date): Result<Work, readonly WorkProblem[]> {
  const { view, film } = laid;
  const isPressed = pressedOn(view);
  const pressed = laid.copies.filter(isPressed);
  const problems = problemsOf(laid, station, pressed);
  if (problems.length > 0) return fail(problems);

  const spans = runSpans(laid);
  const bySpan = spans.map((span) => copiesWithin(laid.copies, span));
  const cutParts = cutPartsOf(laid, bySpan);
  const { workers, resources } = resourcesOf(station);
  const use: WorkSource['use'] = (worker, from, to, setting = 0) => ({
    resource: workers.indexOf(worker),
    from,
    to,
    units: null,
    setting,
  });
  const build = new Builder({ id: laid.id, name: laid.name });
  const source: WorkSource = { view, station, film, spans, bySpan, cutParts, isPressed, build, use };
  const printed = filmWork(source, readyWork(source));
  const { cured, tooLarge } = cureWork(source, printed);
  const closings = platenClosings(view, pressed, station);
  packWork(
    source,
    laid.copies,
    closings,
    pressWork(source, apartWork(source, cured, printed), closings),
    origin,
  );

  const { tasks, jobs, chains, waits, dues } = build;
  return ok({
    problem: { now: 0, tasks, resources, chains, waits, lanes: [], dues },
    jobs,
    workers,
    spans,
    tooLarge: [...tooLarge, ...tooLargeFor(view, station, pressed, build.run)],
  });
}

const known = new WeakMap<LaidRun, Work | null>();

/** The work of a run with the equipment that holds for it, found once a laid run; `null` where it cannot be planned. */
export function workInHand(laid: LaidRun): Work | null {
  const last = known.get(laid);
  if (last !== undefined) return last;
  const { station } = laid.view;
  // When the work begins says when it is due, not what it is.
  const found = station && workOf(laid, station, new Date(0));
  const work = found?.ok ? found.value : null;
  known.set(laid, work);
  return work;
}
