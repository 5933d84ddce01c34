import type { Station, Subject } from '../model';
import { type Machine, numbered, ovenKind } from '../pressing';
import type { ShopCheck } from './starting';

/** Whether an interval is counted from what a printer has printed, so that its check can be of nothing else. */
export const isOfPrinter = ({ kind }: ShopCheck['interval']): boolean => kind === 'idle' || kind === 'pause';

/** What a check is of. */
export const subjectOf = ({ of, interval }: Pick<ShopCheck, 'of' | 'interval'>): Subject =>
  isOfPrinter(interval) ? 'printer' : of;

/** The machines of a kind; where a press cures, there is neither oven nor line. */
export function machinesOf(station: Station, of: Exclude<Subject, 'shop'>): Machine[] {
  switch (of) {
    case 'printer':
      return numbered('printer', station.printers);
    case 'press':
      return numbered('press', station.presses);
    case 'oven':
      return station.curer === 'press' ? [] : numbered(ovenKind(station), station.ovens);
  }
}
