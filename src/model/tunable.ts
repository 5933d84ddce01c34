import type { Tunable } from './calibration';
import type { Settings } from './records';

/** The settings that closed runs can tell, and those around them. */
export type Tuned = Pick<Settings, 'rates' | 'station' | 'costs'>;

/** How one setting is read and set. */
interface Lens {
  get(settings: Tuned): number;
  set(settings: Tuned, value: number): void;
}

const lens = <Name extends string>(holder: (settings: Tuned) => Record<Name, number>, name: Name): Lens => ({
  get: (settings) => holder(settings)[name],
  set: (settings, value) => {
    holder(settings)[name] = value;
  },
});

const rates = ({ rates }: Tuned) => rates;
const start = ({ costs }: Tuned) => costs.maintenance.start;
const printer = ({ station }: Tuned) => station.printer;
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

export const tunedTo = (settings: Tuned, setting: Tunable): number => lenses[setting].get(settings);

/** Sets a setting in place. */
export const tune = (settings: Tuned, setting: Tunable, value: number): void =>
  lenses[setting].set(settings, value);
