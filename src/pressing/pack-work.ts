import type { LaidCopy } from '../layout';
import type { Order, Station } from '../model';
import type { WorkSource } from './builder';
import { closingOf } from './calendar';
import { packKey } from './keys';

/** To check, stretch and count an order before it is bagged. */
const CHECK = 30;

/** Seconds from an origin to the time at which an order is due, when its day closes if it has none; `null` if it has no date. */
function dueIn(order: Order, station: Station, origin: Date): number | null {
  if (order.due === null) return null;
  const [year = 0, month = 1, day = 1] = order.due.split('-').map(Number);
  const date = new Date(year, month - 1, day);
  const [hours = 0, minutes = 0] = (order.dueTime ?? '').split(':').map(Number);
  const at =
    order.dueTime === null ? closingOf(station.hours, date) : new Date(year, month - 1, day, hours, minutes);
  return Math.round((at.getTime() - origin.getTime()) / 1000);
}

/** Each order checked and packed behind its last tasks, and when it is due. */
export function packWork(
  source: WorkSource,
  copies: readonly LaidCopy[],
  endsOf: ReadonlyMap<string, readonly number[]>,
  origin: Date,
): void {
  const { view, station, build, use } = source;
  for (const [id, after] of endsOf) {
    const order = view.order[id];
    if (!order) continue;
    const own = copies.filter((copy) => copy.order.id === id);
    const duration = CHECK + own.length * station.handling.pack;
    const pack = build.add(
      { key: packKey(id), kind: 'pack', order, copies: own.map((copy) => copy.id) },
      { duration, uses: [use('hands', 0, duration)], after, pauses: true },
    );
    const at = dueIn(order, station, origin);
    if (at !== null) build.dues.push({ task: pack, at, weight: order.rush ? 3 : 1 });
  }
}
