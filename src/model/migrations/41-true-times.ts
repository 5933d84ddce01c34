import { changeRecords, inReceived, inSettings } from './change-records';
import { isObject } from './stored';

/** What the hands took to start with. A shop that has put in no time of its own begins with those of now. */
const STARTED = { cutOff: 30, powder: 75, load: 20, cutApart: 10, dress: 15, place: 8, pack: 15 };
const ALLOWANCE = 0.12;

/** Times that the shop has measured hold its rests already, and its copies as it cuts them out. */
function completedStation(station: unknown): unknown {
  if (!isObject(station) || !isObject(station.handling)) return station;
  const { handling } = station;
  const isStarted = Object.entries(STARTED).every(([name, seconds]) => handling[name] === seconds);
  const cutting = handling.cutApart === STARTED.cutApart ? { cutApart: 5, cutMetre: 10 } : { cutMetre: 0 };
  return { ...station, handling: { ...handling, ...cutting }, allowance: isStarted ? ALLOWANCE : 0 };
}

const withNobody = (tick: unknown): unknown => (isObject(tick) ? { ...tick, by: '' } : tick);

/** What was handed over and waits to be taken in. */
const completedAside = (aside: Record<string, unknown>): Record<string, unknown> => ({
  ...aside,
  ...(Array.isArray(aside.ticks) ? { ticks: aside.ticks.map(withNobody) } : {}),
});

/**
 * Version 41 counts rest and hitches, and the line along which copies are cut out, knows who ticked what, and what a check that failed
 * took.
 */
export const timeTruly = changeRecords({
  settings: (settings) => inSettings(settings, completedStation),
  run: (run) => inReceived(run, completedStation),
  tick: withNobody,
  aside: completedAside,
  upkeep: (check) => ({ ...check, failed: null }),
});
