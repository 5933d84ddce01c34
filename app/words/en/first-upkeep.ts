import type { StartingCheck } from '../../../src/upkeep';
import { counted, type Ways } from '../format';

/** Checks of printer, press and room, and the air. */
export const upkeep = {
  checks: {
    'white-stirred': 'White ink stirred or circulated',
    nozzles: 'Nozzle check printed and looked at',
    'film-square': 'Film square in the feed',
    'powder-dry': 'Powder dry and free of lumps',
    blade: 'Blade sharp, its slot clean',
    room: 'Temperature and humidity of the room read',
    capping: 'Capping station and wiper cleaned',
    parked: 'Print head parked and capped for the night',
    filters: 'Filters and fans free of powder',
    platen: 'Platen temperature checked with a probe',
    'waste-ink': 'Waste ink emptied',
    rollers: 'Feed rollers wiped',
    'deep-clean': 'Around the print head cleaned',
  } satisfies Record<StartingCheck, string>,
  /** Before a run is locked, and at the head of the day. */
  line: (list: string, more: number, ways: Ways) =>
    `Maintenance due: ${list}${more > 0 ? `; and ${counted(more, 'more', 'more', ways)}` : ''}.`,
  lineNever: 'No maintenance is noted yet.',
  pastDate: (list: string) => `Past best before: ${list}.`,
  open: 'Maintenance',
};
