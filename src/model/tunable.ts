import type { Tunable } from './calibration';
import { type Printer, printerOf } from './machines';
import type { Settings } from './records';

/** The settings that closed runs can tell, and those around them. */
export type Tuned = Pick<Settings, 'rates' | 'station' | 'costs'>;

/** How one setting is read and set, of the shop or of one of its printers. */
interface Lens {
  get(settings: Tuned, printer: Printer['id'] | null): number;
  set(settings: Tuned, printer: Printer['id'] | null, value: number): void;
}

const lens = <Name extends string>(
  holder: (settings: Tuned, printer: Printer['id'] | null) => Record<Name, number>,
  name: Name,
): Lens => ({
  get: (settings, printer) => holder(settings, printer)[name],
  set: (settings, printer, value) => {
    holder(settings, printer)[name] = value;
  },
});

const rates = ({ rates }: Tuned) => rates;
const start = ({ costs }: Tuned) => costs.maintenance.start;
const printer = ({ station }: Tuned, id: Printer['id'] | null) =>
  printerOf(station, id === null ? undefined : { printer: id });
const handling = ({ station }: Tuned) => station.handling;

/** Each setting that a rate stands for, by the name that records of changes give it. */
const lenses: Readonly<Record<Tunable, Lens>> = {
  'rates.colour': lens(rates, 'colour'),
  'rates.white': lens(rates, 'white'),
  'rates.powder': lens(rates, 'powder'),
  'start.colour': lens(start, 'colour'),
  'start.white': lens(start, 'white'),
  'printer.perHour': lens(printer, 'perHour'),
  'printer.warmUp': lens(printer, 'warmUp'),
  'handling.cutOff': lens(handling, 'cutOff'),
  'handling.powder': lens(handling, 'powder'),
  'handling.load': lens(handling, 'load'),
  'handling.cutApart': lens(handling, 'cutApart'),
  'handling.dress': lens(handling, 'dress'),
  'handling.place': lens(handling, 'place'),
  'handling.pack': lens(handling, 'pack'),
};

/** @param printer whose setting it is; the first for `null` */
export const tunedTo = (settings: Tuned, setting: Tunable, printer: Printer['id'] | null): number =>
  lenses[setting].get(settings, printer);

/** Sets a setting in place. */
export const tune = (settings: Tuned, setting: Tunable, printer: Printer['id'] | null, value: number): void =>
  lenses[setting].set(settings, printer, value);
