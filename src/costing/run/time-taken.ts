import type { Printer, RunUse, Station } from '../../model';
import { type Job, type JobKind, longestWarmUp, type Work } from '../../pressing';
import { asSeconds, countBy, type Seconds } from '../../units';

type Labour = keyof RunUse['transfers'][number]['seconds'];

/** Where hands do each kind of job. */
const labourOf: Readonly<Record<JobKind, Labour>> = {
  ready: 'printing',
  print: 'printing',
  'cut-off': 'printing',
  powder: 'printing',
  cure: 'printing',
  line: 'printing',
  apart: 'cutting',
  press: 'pressing',
  again: 'pressing',
  pack: 'packing',
};

/** Time of hands by room and of a press, for each transfer, and of each machine. */
export interface TimeTaken {
  readonly hands: ReadonlyMap<string, Readonly<Record<Labour, number>>>;
  readonly pressed: ReadonlyMap<string, number>;
  readonly machines: NonNullable<RunUse['machines']>;
}

/** How long a worker is held by a task. */
function heldBy(work: Work, task: number, worker: Work['workers'][number]): number {
  const resource = work.workers.indexOf(worker);
  return (work.problem.tasks[task]?.uses ?? []).reduce(
    (sum, use) => sum + (use.resource === resource ? use.to - use.from : 0),
    0,
  );
}

/**
 * Adds up a run's work. A job's hands are shared equally among its copies; a press that is used warms up once, and so does an oven,
 * as long as a press does.
 */
export function timeTaken(
  work: Work,
  station: Station,
  printer: Printer,
  transferOf: (copy: Job['copies'][number]) => string | undefined,
): TimeTaken {
  const hands = new Map<string, Record<Labour, number>>();
  const pressed = new Map<string, number>();
  const busy = { printer: 0, oven: 0, press: 0 };
  const line = { printed: 0, cure: 0 };
  let ready = 0;
  work.jobs.forEach((job, task) => {
    const time = { hands: heldBy(work, task, 'hands'), press: heldBy(work, task, 'press') };
    for (const machine of ['printer', 'oven', 'press'] as const) busy[machine] += heldBy(work, task, machine);
    if (job.kind === 'ready') ready = time.hands;
    if (job.kind === 'print') line.printed += work.problem.tasks[task]?.duration ?? 0;
    if (job.kind === 'line') line.cure = work.problem.tasks[task]?.duration ?? 0;
    const room = labourOf[job.kind];
    for (const [transfer, copies] of countBy(job.copies, transferOf)) {
      const share = copies / job.copies.length;
      let own = hands.get(transfer);
      if (!own) {
        own = { printing: 0, cutting: 0, pressing: 0, packing: 0 };
        hands.set(transfer, own);
      }
      own[room] += time.hands * share;
      pressed.set(transfer, (pressed.get(transfer) ?? 0) + time.press * share);
    }
  });
  const pressWarmUp = longestWarmUp(station);
  const warm = (on: number, warmUp: Seconds) => ({
    on: asSeconds(on > 0 ? on + warmUp : 0),
    warmUp: on > 0 ? warmUp : asSeconds(0),
  });
  // A line runs on while the printer does, and until its last film is through.
  const oven = station.curer === 'line' ? line.printed + line.cure : busy.oven;
  return {
    hands,
    pressed,
    machines: {
      // Its warm-up and nozzle check are a job of the printer's own.
      printer: { on: asSeconds(busy.printer), warmUp: printer.warmUp },
      oven: warm(oven, pressWarmUp),
      press: warm(busy.press, pressWarmUp),
      ready: asSeconds(ready),
    },
  };
}
