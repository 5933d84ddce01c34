import { asId, type Check, type Hazard, type Interval, type Settings, type Subject } from '../model';
import { fromUnit } from '../units';

/** The checks that a shop begins with, by the name they have in the catalogue. */
const startingChecks = [
  'white-stirred',
  'circulated',
  'stood-still',
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

/** How often each is due, what can hurt at it, and what it is of: common practice, no source; the makers' manuals prevail. */
const starting = (
  unit: Settings['unit'],
): Readonly<Record<StartingCheck, readonly [Interval, Hazard, Subject]>> => ({
  'white-stirred': [day, 'ink', 'printer'],
  circulated: [{ kind: 'pause', hours: 4 }, 'ink', 'printer'],
  'stood-still': [{ kind: 'idle', days: 3 }, 'ink', 'printer'],
  nozzles: [day, 'none', 'printer'],
  'film-square': [day, 'none', 'printer'],
  'powder-dry': [day, 'powder', 'shop'],
  blade: [day, 'blade', 'printer'],
  room: [day, 'none', 'shop'],
  // White ink settles and dries at the head: daily, and parked over night.
  capping: [day, 'ink', 'printer'],
  parked: [day, 'none', 'printer'],
  filters: [week, 'powder', 'shop'],
  platen: [week, 'heat', 'press'],
  'waste-ink': [week, 'ink', 'printer'],
  rollers: [rollers[unit], 'none', 'printer'],
  'deep-clean': [deepClean[unit], 'ink', 'printer'],
});

/** Checks that are one act at different times: who has done one of them has done the others. */
const alike: readonly (readonly StartingCheck[])[] = [['white-stirred', 'circulated']];

/** Which of the checks to start with an id names; `null` for one of the shop's own. */
export const startingCheck = (id: string): StartingCheck | null =>
  startingChecks.find((each) => each === id) ?? null;

/** The checks that are done with one: itself, and those that are the same act. */
export const doneWith = (id: string): readonly string[] =>
  alike.find((same) => same.some((each) => each === id)) ?? [id];

/** A check as the shop does it: one of its own, or one to start with as the shop has changed it. */
export type ShopCheck = Pick<Check, 'id' | 'name' | 'interval' | 'of' | 'hazard' | 'archived'>;

/** All checks of a shop, those that are no longer done too: those to start with, then its own, the oldest first. */
export function checksOf(own: Readonly<Record<string, Check>>, unit: Settings['unit']): ShopCheck[] {
  const begun = starting(unit);
  const first = startingChecks.map((id): ShopCheck => {
    const [interval, hazard, of] = begun[id];
    return own[id] ?? { id: asId(id), name: '', interval, of, hazard, archived: false };
  });
  return [...first, ...Object.values(own).filter(({ id }) => startingCheck(id) === null)];
}
