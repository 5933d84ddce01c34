import { daysAlone, type Station } from '../../src/model';
import { numbered } from '../../src/pressing';
import { machineLists, machineNameIn } from '../panels/machine-name';
import type { Reader } from '../parts/fields/codec';
import { type Entry, fieldsIn, formTable, type Problems } from '../parts/fields/form';
import { days, hours, onWeekday } from '../parts/fields/hours';
import { shortLength } from '../parts/fields/lengths';
import { duration, share, whole } from '../parts/fields/numbers';
import { placesIn } from '../parts/fields/place';
import { fieldOf, fieldsOfMachines, type MachineField } from './machine-fields';

const field = fieldsIn(({ station }) => station);
const station = placesIn<Station>();
const handling = station.to('handling');
const loose = station
  .when(({ cutApart }) => cutApart === 'before-powder')
  .to('handling')
  .to('loose');

const open = station.to('hours');
const weekday = (day: number) =>
  field(onWeekday(open.to('week'), day), hours, ({ weekdays }) => weekdays[day] ?? '');

const minutes = duration('min');
const seconds = duration('s');
const size = shortLength('above-zero');
const trays = whole(1, 100, (words) => words.station.traysCount);

const shared = {
  large: field(station.to('large'), size, 'large', { hint: 'largeHint' }),
  wetLimit: field(station.to('wetLimit'), minutes, 'wetLimit'),
  powderLimit: field(station.to('powderLimit'), minutes, 'powderLimit'),
  trays: field(station.to('trays'), trays, 'trays'),
  cutOff: field(handling.to('cutOff'), seconds, 'cutOff'),
  powder: field(handling.to('powder'), seconds, 'powder'),
  load: field(handling.to('load'), seconds, 'load'),
  loose: field(loose, seconds, 'loose'),
  apart: field(handling.to('cutApart'), seconds, 'apart'),
  cutMetre: field(handling.to('cutMetre'), seconds, (words, { unit }) => words.cutMetre[unit]),
  dress: field(handling.to('dress'), seconds, 'dress'),
  place: field(handling.to('place'), seconds, 'place'),
  pack: field(handling.to('pack'), seconds, 'pack'),
  allowance: field(station.to('allowance'), share(), 'allowance', { hint: 'allowanceHint' }),
  monday: weekday(0),
  tuesday: weekday(1),
  wednesday: weekday(2),
  thursday: weekday(3),
  friday: weekday(4),
  saturday: weekday(5),
  sunday: weekday(6),
  closedDays: field(
    open.to('closed'),
    days((words, day) => words.station.noDay(day)),
    'closedDays',
    { hint: 'closedHint' },
  ),
};

type StationField = keyof typeof shared | MachineField;

const weekdayFields = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'] as const;

/** Machines, or people, that are called as another of their kind is. */
function doubles(station: Station, { words }: Reader): Problems<StationField> {
  const found: Partial<Record<StationField, string>> = {};
  for (const { key, kind } of machineLists(station)) {
    const names = new Set<string>();
    for (const machine of numbered(kind, station[key])) {
      const name = machineNameIn(words.station, machine);
      if (names.has(name.toLowerCase())) found[fieldOf(machine.id, 'name')] = words.station.sameName(name);
      names.add(name.toLowerCase());
    }
  }
  return found;
}

/** What the shop works with and how long its hands take: the fields of a record with these machines and people. */
export const stationTable = (record: Station) =>
  formTable<Station, StationField>({
    name: 'station',
    fields: { ...shared, ...fieldsOfMachines(record) },
    problemsOf(read, reader) {
      const { station: words } = reader.words;
      const { week } = read.hours;
      if (week.every((day) => day.length === 0)) return { ...doubles(read, reader), monday: words.neverOpen };
      const alone = daysAlone(week, read.people).map((day) => [
        weekdayFields[day],
        words.nobodyThere(words.weekdays[day] ?? ''),
      ]);
      return { ...doubles(read, reader), ...Object.fromEntries(alone) };
    },
  });

export const stationEntry = (record: Station): Entry<Station, StationField> => ({ record, typed: {} });
