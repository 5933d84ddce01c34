import { copiesWithin, runSpans } from '../cutting';
import type { LaidCopy, LaidRun } from '../layout';
import type { RunView, Station } from '../model';
import { fail, ok, onceFor, type Result } from '../units';
import { Builder, byHand, type WorkSource } from './builder';
import { platenClosings } from './closings';
import { type Crew, crewsBeside, printerAmong, printerFor, setupsOfPresses } from './crews';
import { apartWork, cureWork, cutPartsOf, filmWork } from './film-work';
import type { Job, TooLarge, Work } from './jobs';
import { READY } from './keys';
import { isOnCap } from './measures';
import { packWork } from './pack-work';
import { pressesFor } from './press-takes';
import { pressWork } from './press-work';
import { pressedOn } from './pressed-on';
import type { Resource } from './schedule';

/** What is missing for a schedule. */
export type WorkProblem = 'nothing-laid' | 'not-cut' | 'no-press' | 'no-speed';

/** What keeps a run from being planned. */
function problemsOf(laid: LaidRun, station: Station, pressed: readonly LaidCopy[]): WorkProblem[] {
  const { copies, spans } = laid;
  const needsPress = station.curer === 'press' || pressed.length > 0;
  return [
    ...(copies.length === 0 ? (['nothing-laid'] as const) : []),
    ...(copies.length > 0 && spans === null ? (['not-cut'] as const) : []),
    ...(printerFor(laid, station).perHour <= 0 ? (['no-speed'] as const) : []),
    ...(station.presses.length === 0 && needsPress ? (['no-press'] as const) : []),
  ];
}

/** Who does the work of a run, and how many there are of each; a press has to be brought to its temperature. */
function crewsOf(laid: LaidRun, station: Station): { crews: readonly Crew[]; resources: Resource[] } {
  const crews: Crew[] = [
    { worker: 'printer', machines: [printerAmong(station, printerFor(laid, station).id)] },
    ...crewsBeside(station),
  ];
  const setups = setupsOfPresses(station);
  const resources = crews.map(({ worker, machines }) => ({
    units: machines.map((_, at) => ({
      free: 0,
      setup: worker === 'press' ? (setups[at] ?? null) : null,
      setting: null,
      warmed: 0,
      away: [],
    })),
  }));
  return { crews, resources };
}

/** The printer warmed up and its nozzles checked, by hand. */
function readyWork({ station, printer, build, use }: WorkSource): number {
  const { warmUp } = printer;
  const check = byHand(station, printer.check);
  const duration = warmUp + check;
  const uses = [use('printer', 0, duration), use('hands', warmUp, duration)];
  return build.add({ key: READY, kind: 'ready' }, { duration, uses, after: [] });
}

/** Transfers that no press takes, each once: those larger than all, and those on caps where no platen is made for these. */
function tooLargeFor(
  view: RunView,
  { presses }: Station,
  pressed: readonly LaidCopy[],
  run: Job['run'],
): TooLarge[] {
  const seen = new Set<string>();
  return pressed.flatMap((copy): TooLarge[] => {
    if (seen.has(copy.transfer.id) || pressesFor(view, presses, copy).length > 0) return [];
    seen.add(copy.transfer.id);
    const isCap = isOnCap(view, copy) && presses.every(({ caps }) => !caps);
    return [{ kind: isCap ? 'cap' : 'transfer', run, transfer: copy.transfer, order: copy.order }];
  });
}

/** Until a day is told, what is due is counted from here. */
const EPOCH = new Date(0);

/**
 * The work of a run: warm up and check the nozzles, then for each span print, cut off, powder, cure and cut apart, then for each
 * transfer of it pre-press, press, peel and press again, then check and pack each order. Cutting across stops the printer, unless the
 * run goes through it as a whole; powder follows the first ink, and the cure the powder, within the longest wait, and no more is
 * powdered than there are trays for; a press is brought from one temperature to another in between.
 */
function workAtAnyTime(laid: LaidRun, station: Station): Result<Work, readonly WorkProblem[]> {
  const { view, film } = laid;
  const isPressed = pressedOn(view);
  const pressed = laid.copies.filter(isPressed);
  const problems = problemsOf(laid, station, pressed);
  if (problems.length > 0) return fail(problems);

  const spans = runSpans(laid);
  const bySpan = spans.map((span) => copiesWithin(laid.copies, span));
  const cutParts = cutPartsOf(laid, bySpan);
  const { crews, resources } = crewsOf(laid, station);
  const workers = crews.map(({ worker }) => worker);
  const use: WorkSource['use'] = (worker, from, to, { setting = 0, units = null } = {}) => ({
    resource: workers.indexOf(worker),
    units,
    from,
    to,
    setting,
  });
  const printer = printerFor(laid, station);
  const build = new Builder({ id: laid.id, name: laid.name });
  const source: WorkSource = { view, station, printer, film, spans, bySpan, cutParts, isPressed, build, use };
  const printed = filmWork(source, readyWork(source));
  const { cured, tooLarge } = cureWork(source, printed);
  const closings = platenClosings(view, pressed, station);
  packWork(
    source,
    laid.copies,
    closings,
    pressWork(source, apartWork(source, cured, printed), closings),
    EPOCH,
  );

  const { tasks, jobs, chains, waits, powdered, stints, dues } = build;
  const shelves = [{ places: station.trays, loads: powdered }];
  return ok({
    problem: { now: 0, tasks, resources, chains, waits, lanes: [], shelves, stints, dues },
    jobs,
    workers,
    machines: crews.map(({ machines }) => machines),
    spans,
    tooLarge: [...tooLarge, ...tooLargeFor(view, station, pressed, build.run)],
  });
}

const known = onceFor((laid: LaidRun) => onceFor((station: Station) => workAtAnyTime(laid, station)));

/**
 * The work of a run, see {@link workAtAnyTime}: found once a laid run and equipment.
 * @param origin when the work begins: dues are counted from it
 */
export function workOf(laid: LaidRun, station: Station, origin: Date): Result<Work, readonly WorkProblem[]> {
  const found = known(laid)(station);
  if (!found.ok) return found;
  const { problem } = found.value;
  const begin = origin.getTime() / 1000;
  const dues = problem.dues.map((due) =>
    due.at === null ? due : { ...due, at: Math.round(due.at - begin) },
  );
  return ok({ ...found.value, problem: { ...problem, dues } });
}

/** The work of a run with the equipment that holds for it; `null` where it cannot be planned. */
export function workInHand(laid: LaidRun): Work | null {
  const { station } = laid.view;
  const found = station && workOf(laid, station, EPOCH);
  return found?.ok ? found.value : null;
}
