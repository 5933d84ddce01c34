import type { LaidRun } from '../layout';
import { firstOf, type Press, type Printer, printerOf, type Station } from '../model';
import { asSeconds, type Seconds } from '../units';
import type { Machine, MachineKind, Worker } from './jobs';
import type { Setup } from './schedule';
import { startingHeatPress } from './starting';

/** What does one kind of work, each of which may be had by itself; it is a resource of the schedule. */
export interface Crew {
  readonly worker: Worker;
  /** At least one. */
  readonly machines: readonly Machine[];
}

/** Machines of a kind, or people, each with its number. */
export const numbered = (
  kind: MachineKind,
  list: readonly { readonly id: string; readonly name: string }[],
): Machine[] =>
  list.map(({ id, name }, at) => ({ kind, id, name: name.trim(), number: at + 1, of: list.length }));

/** What cures where no press does, by its kind. */
export const ovenKind = ({ curer }: Pick<Station, 'curer'>): MachineKind =>
  curer === 'line' ? 'line' : 'oven';

/** The printer that a run is printed on, with some equipment. */
export const printerFor = ({ film, view }: Pick<LaidRun, 'film' | 'view'>, station: Station): Printer =>
  printerOf(station, film, view.printer ?? null);

/** A printer among those of the shop; one that the shop has no more takes the place of its first. */
export function printerAmong(station: Station, id: string): Machine {
  const all = numbered('printer', station.printers);
  const own = all.find((machine) => machine.id === id) ?? all[0];
  return own ?? { kind: 'printer', id, name: '', number: 1, of: 1 };
}

/** Whether printers stand in line for what cures their film as it comes out. */
const sharesLine = ({ curer, printers }: Station): boolean => curer === 'line' && printers.length > 1;

/** The presses of a shop; where nothing is pressed, one stands for what the day would lack. */
const pressesOf = ({ presses }: Pick<Station, 'presses'>): readonly Press[] =>
  presses.length > 0 ? presses : [startingHeatPress(firstOf('press'))];

/** All that do work beside the printers. */
export function crewsBeside(station: Station): Crew[] {
  const { curer, people, ovens } = station;
  return [
    { worker: 'hands', machines: numbered('person', people) },
    { worker: 'press', machines: numbered('press', pressesOf(station)) },
    ...(curer === 'oven' || sharesLine(station)
      ? [{ worker: 'oven' as const, machines: numbered(ovenKind(station), ovens) }]
      : []),
  ];
}

/** How each press is brought to its temperature. */
export const setupsOfPresses = (station: Pick<Station, 'presses'>): readonly Setup[] =>
  pressesOf(station).map(({ warmUp, rise, fall }) => ({ cold: warmUp, rise, fall }));

/** How long a press warms up; of several the slowest. */
export const longestWarmUp = (station: Pick<Station, 'presses'>): Seconds =>
  asSeconds(Math.max(...pressesOf(station).map(({ warmUp }) => warmUp)));

/**
 * Which of some machines may take something; `null` where any may, and where none can: then it is told, and planned all the same.
 */
export function unitsThat<One>(all: readonly One[], takes: (one: One) => boolean): readonly number[] | null {
  const found = all.flatMap((one, at) => (takes(one) ? [at] : []));
  return found.length === 0 || found.length === all.length ? null : found;
}
