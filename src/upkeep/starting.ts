import { asId, type Check, type Hazard, type Interval, type Settings } from '../model';
import { fromUnit } from '../units';

/** The checks that a shop begins with, by the name they have in the catalogue. */
const startingChecks = [
  'white-stirred',
  'nozzles',
  'film-square',
  'powder-dry',
  'blade',
  'room',
  'capping',
  'parked',
  'filters',
  'platen',
  'waste-ink',
  'rollers',
  'deep-clean',
] as const;

export type StartingCheck = (typeof startingChecks)[number];

const day: Interval = { kind: 'day' };
const week: Interval = { kind: 'days', days: 7 };

/** So much film, in round figures of the shop's unit. */
const film = (metres: number, feet: number): Readonly<Record<Settings['unit'], Interval>> => ({
  mm: { kind: 'film', length: fromUnit(metres, 'm') },
  in: { kind: 'film', length: fromUnit(feet, 'ft') },
});
const rollers = film(50, 150);
const deepClean = film(150, 500);

/** How often each is due, and what can hurt at it: common practice, no source; the makers' manuals prevail. */
const starting = (unit: Settings['unit']): Readonly<Record<StartingCheck, readonly [Interval, Hazard]>> => ({
  'white-stirred': [day, 'ink'],
  nozzles: [day, 'none'],
  'film-square': [day, 'none'],
  'powder-dry': [day, 'powder'],
  blade: [day, 'blade'],
  room: [day, 'none'],
  // White ink settles and dries at the head: daily, and parked over night.
  capping: [day, 'ink'],
  parked: [day, 'none'],
  filters: [week, 'powder'],
  platen: [week, 'heat'],
  'waste-ink': [week, 'ink'],
  rollers: [rollers[unit], 'none'],
  'deep-clean': [deepClean[unit], 'ink'],
});

/** Which of the checks to start with an id names; `null` for one of the shop's own. */
export const startingCheck = (id: string): StartingCheck | null =>
  startingChecks.find((each) => each === id) ?? null;

/** A check as the shop does it: one of its own, or one to start with as the shop has changed it. */
export type ShopCheck = Pick<Check, 'id' | 'name' | 'interval' | 'hazard' | 'archived'>;

/** All checks of a shop, those that are no longer done too: those to start with, then its own, the oldest first. */
export function checksOf(own: Readonly<Record<string, Check>>, unit: Settings['unit']): ShopCheck[] {
  const begun = starting(unit);
  const first = startingChecks.map((id): ShopCheck => {
    const [interval, hazard] = begun[id];
    return own[id] ?? { id: asId(id), name: '', interval, hazard, archived: false };
  });
  return [...first, ...Object.values(own).filter(({ id }) => startingCheck(id) === null)];
}
