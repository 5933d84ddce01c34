import type { Station, Week } from '../../src/model';
import { withPrinter } from '../../src/model';
import { type FormField, fieldsIn } from '../parts/fields/form';
import { hours, onWeekday } from '../parts/fields/hours';
import { filmLength, shortLength } from '../parts/fields/lengths';
import { duration } from '../parts/fields/numbers';
import { place } from '../parts/fields/place';
import { text } from '../parts/fields/text';

/** A field of one machine or person, by its id. */
export type MachineField = `machine/${string}`;

/** What is asked of each kind. */
export const machineFields = {
  printers: ['name', 'perHour', 'warmUp', 'check'],
  presses: ['name', 'platenWidth', 'platenLength', 'warmUp', 'rise', 'fall'],
  ovens: ['name', 'ovenWidth', 'ovenLength'],
  people: ['name', 'day0', 'day1', 'day2', 'day3', 'day4', 'day5', 'day6'],
} as const;

type Fields = Record<MachineField, FormField<Station>>;

export const fieldOf = (id: string, name: string): MachineField => `machine/${id}/${name}`;

const field = fieldsIn(({ station }) => station);
const minutes = duration('min');
const seconds = duration('s');
const size = shortLength('above-zero');

const printerOf = (id: string) =>
  place<Station, Station['printers'][number]>(
    ({ printers }) => printers.find((printer) => printer.id === id),
    (station, own) => ({ ...station, printers: withPrinter(station.printers, own) }),
  );

/** One of a list, by its id. */
const ofList = <Key extends 'presses' | 'ovens' | 'people'>(key: Key, id: string) =>
  place<Station, Station[Key][number]>(
    (station) => station[key].find((one) => one.id === id),
    (station, own) => ({ ...station, [key]: station[key].map((one) => (one.id === id ? own : one)) }),
  );

const printerFields = (id: string): Fields => {
  const printer = printerOf(id);
  return {
    [fieldOf(id, 'name')]: field(printer.to('name'), text, 'name'),
    [fieldOf(id, 'perHour')]: field(printer.to('perHour'), filmLength('above-zero'), 'perHour'),
    [fieldOf(id, 'warmUp')]: field(printer.to('warmUp'), minutes, 'warmUp'),
    [fieldOf(id, 'check')]: field(printer.to('check'), minutes, 'check'),
  };
};

const pressFields = (id: string): Fields => {
  const press = ofList('presses', id);
  return {
    [fieldOf(id, 'name')]: field(press.to('name'), text, 'name'),
    [fieldOf(id, 'platenWidth')]: field(press.to('platen').to('width'), size, 'platenWidth'),
    [fieldOf(id, 'platenLength')]: field(press.to('platen').to('length'), size, 'platenLength'),
    [fieldOf(id, 'warmUp')]: field(press.to('warmUp'), minutes, 'warmUp'),
    [fieldOf(id, 'rise')]: field(press.to('rise'), seconds, 'rise'),
    [fieldOf(id, 'fall')]: field(press.to('fall'), seconds, 'fall'),
  };
};

const ovenFields = (id: string): Fields => {
  const bed = ofList('ovens', id).to('bed');
  return {
    [fieldOf(id, 'name')]: field(ofList('ovens', id).to('name'), text, 'name'),
    [fieldOf(id, 'ovenWidth')]: field(bed.to('width'), size, 'ovenWidth'),
    [fieldOf(id, 'ovenLength')]: field(bed.to('length'), size, 'ovenLength'),
  };
};

const personFields = (id: string): Fields => {
  const person = ofList('people', id);
  const week = person.to('hours').only((own): own is Week => own !== null);
  return {
    [fieldOf(id, 'name')]: field(person.to('name'), text, 'personName'),
    ...Object.fromEntries(
      [0, 1, 2, 3, 4, 5, 6].map((day) => [
        fieldOf(id, `day${day}`),
        field(onWeekday(week, day), hours, ({ weekdays }) => weekdays[day] ?? ''),
      ]),
    ),
  };
};

/** The fields of all machines and people of a station. */
export const fieldsOfMachines = ({ printers, presses, ovens, people }: Station): Fields =>
  Object.assign(
    {},
    ...printers.map(({ id }) => printerFields(id)),
    ...presses.map(({ id }) => pressFields(id)),
    ...ovens.map(({ id }) => ovenFields(id)),
    ...people.map(({ id }) => personFields(id)),
  );
