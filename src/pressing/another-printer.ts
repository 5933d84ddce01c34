import type { Printer, Station } from '../model';
import { sum } from '../units';
import { printerFor } from './crews';
import type { OpenRun } from './day';
import { BEGUN } from './keys';

/** How long a run still takes of its printer, in hours. */
const hoursLeft = ({ laid, station }: OpenRun): number =>
  Math.max(0, laid.lengthUsed - laid.printedTo) / Math.max(1, printerFor(laid, station).perHour);

/**
 * The day, had the shop one more printer like its busiest: what is not begun there is shared out between the two, the longest first to
 * the one that has less (Graham's rule of the longest first, 1969).
 * @param id of the other printer
 */
export function withAnotherPrinter(
  open: readonly OpenRun[],
  station: Station,
  id: Printer['id'],
): { readonly open: readonly OpenRun[]; readonly station: Station } {
  const runsOf = (printer: Printer) => open.filter(({ laid }) => printerFor(laid, station).id === printer.id);
  const [first, ...others] = station.printers;
  const busiest = others.reduce(
    (most, printer) =>
      sum(runsOf(printer).map(hoursLeft)) > sum(runsOf(most).map(hoursLeft)) ? printer : most,
    first,
  );
  const more: Station = { ...station, printers: [...station.printers, { ...busiest, id, name: '' }] };
  const load = { here: 0, there: 0 };
  const moved = new Set<OpenRun>();
  for (const own of runsOf(busiest).sort((a, b) => hoursLeft(b) - hoursLeft(a))) {
    const goes = !own.done.has(BEGUN) && load.there < load.here;
    if (goes) moved.add(own);
    load[goes ? 'there' : 'here'] += hoursLeft(own);
  }
  return {
    station: more,
    open: open.map((own) => ({
      ...own,
      station: own.station === station ? more : own.station,
      laid: moved.has(own) ? { ...own.laid, film: { ...own.laid.film, printer: id } } : own.laid,
    })),
  };
}
