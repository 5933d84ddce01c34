import type { Closing } from '../model';
import { BEGUN, type JobKind, type Work, type Worker } from '../pressing';
import { asSeconds, type Seconds } from '../units';

type Time = Closing['planned']['time'];

const none: Time = { printer: asSeconds(0), hands: asSeconds(0), press: asSeconds(0), oven: asSeconds(0) };

/** How long each worker is busy with a run, by the work's own times. */
export function plannedTime(work: Work): Time {
  const time: Record<Worker, number> = { ...none };
  for (const { uses } of work.problem.tasks) {
    for (const { resource, from, to } of uses) {
      const worker = work.workers[resource];
      if (worker) time[worker] += to - from;
    }
  }
  return time as Time;
}

/** What the printer does while hands do something else. */
const byItself: ReadonlySet<JobKind> = new Set(['ready', 'print', 'line']);

/**
 * How long each worker was busy, as far as ticks tell: the printer from the start to its last span; the press and the one pair of
 * hands from each tick of theirs to the next. `null` where nothing was ticked, and for what ticks cannot tell: several pairs of
 * hands, an oven that is left alone.
 * @param done when each job was ticked, by its key; see `ticked`
 */
export function tickedTime(
  work: Work,
  done: ReadonlyMap<string, string>,
  hands: number,
): Closing['actual']['time'] {
  const begun = done.get(BEGUN);
  const noOven = work.workers.includes('oven') ? null : asSeconds(0);
  if (begun === undefined) return { printer: null, hands: null, press: null, oven: noOven };
  const start = Date.parse(begun);
  const since = (at: number): Seconds => asSeconds(Math.max(0, Math.round((at - start) / 1000)));
  const press = work.workers.indexOf('press');
  let printed: number | null = null;
  const byHand: { at: number; onPress: boolean }[] = [];
  work.jobs.forEach(({ key, kind }, index) => {
    const tick = done.get(key);
    if (tick === undefined) return;
    const at = Date.parse(tick);
    if (kind === 'print') printed = Math.max(printed ?? 0, at);
    if (byItself.has(kind)) return;
    const onPress = work.problem.tasks[index]?.uses.some(({ resource }) => resource === press) ?? false;
    if (kind !== 'cure' || onPress) byHand.push({ at, onPress });
  });
  byHand.sort((a, b) => a.at - b.at);
  let pressed = 0;
  let before = start;
  for (const { at, onPress } of byHand) {
    if (onPress) pressed += at - before;
    before = at;
  }
  const isOne = hands === 1 && byHand.length > 0;
  return {
    printer: printed === null ? null : since(printed),
    hands: isOne ? since(before) : null,
    press: byHand.some(({ onPress }) => onPress) ? asSeconds(Math.round(pressed / 1000)) : null,
    oven: noOven,
  };
}
