import type { LaidCopy } from '../layout';
import type { OrderOnRun, Station } from '../model';
import { groupBy, sum } from '../units';
import { byHand, type WorkSource } from './builder';
import { closingOf } from './calendar';
import type { PlatenClosing } from './closings';
import { packKey } from './keys';

/** To check and count an order before it is bagged. */
const CHECK = 30;
/** To count a transfer that goes with it unpressed (common practice, no source). */
const COUNT = 2;
/** So much more than that of another order a minute counts by which one in a rush is late (a judgement, no source). */
const RUSH = 3;

/** Seconds from an origin to the time at which an order is due, when its day closes if it has none; `null` if it has no date. */
function dueIn(order: OrderOnRun, station: Station, origin: Date): number | null {
  if (order.due === null) return null;
  const [year = 0, month = 1, day = 1] = order.due.split('-').map(Number);
  const date = new Date(year, month - 1, day);
  const [hours = 0, minutes = 0] = (order.dueTime ?? '').split(':').map(Number);
  const at =
    order.dueTime === null ? closingOf(station.hours, date) : new Date(year, month - 1, day, hours, minutes);
  return Math.round((at.getTime() - origin.getTime()) / 1000);
}

/**
 * Each order checked and packed behind its last tasks, garment by garment however many prints each bears, and when it is due: one in a
 * rush as soon as it can be, too.
 * @param closings what is pressed, closing by closing
 */
export function packWork(
  source: WorkSource,
  copies: readonly LaidCopy[],
  closings: readonly PlatenClosing[],
  endsOf: ReadonlyMap<string, readonly number[]>,
  origin: Date,
): void {
  const { view, station, build, use } = source;
  const copiesOf = groupBy(copies, (copy) => copy.order.id);
  const closingsOf = groupBy(closings, ({ copies: [first] }) => first.order.id);
  for (const [id, after] of endsOf) {
    const order = view.order[id];
    if (!order) continue;
    const own = copiesOf.get(order.id) ?? [];
    const pressed = closingsOf.get(order.id) ?? [];
    const garments = pressed.filter(({ isFirst }) => isFirst).length;
    const unpressed = own.length - sum(pressed.map((closing) => closing.copies.length));
    const duration = byHand(station, CHECK + garments * station.handling.pack + unpressed * COUNT);
    const pack = build.add(
      { key: packKey(id), kind: 'pack', order, copies: own.map((copy) => copy.id) },
      { duration, uses: [use('hands', 0, duration)], after, pauses: true },
    );
    const at = dueIn(order, station, origin);
    if (at !== null) build.dues.push({ task: pack, at, weight: order.rush ? RUSH : 1 });
    if (order.rush) build.dues.push({ task: pack, at: null, weight: 1 });
  }
}
