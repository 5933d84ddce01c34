import type { Station } from '../../src/model';
import { type Entry, fieldsIn, formTable } from '../parts/fields/form';
import { days, hours, onWeekday } from '../parts/fields/hours';
import { filmLength, shortLength } from '../parts/fields/lengths';
import { duration, share, whole } from '../parts/fields/numbers';
import { placesIn } from '../parts/fields/place';

const field = fieldsIn(({ station }) => station);
const station = placesIn<Station>();
const printer = station.to('printer');
const press = station.to('press');
const oven = station.when(({ curer }) => curer !== 'press').to('oven');
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
const hands = whole(1, 20, (words) => words.station.handsCount);
const trays = whole(1, 100, (words) => words.station.traysCount);
const presses = whole(0, 20, (words) => words.station.count);

/** What the shop works with and how long its hands take, in the order it is asked for. */
export const stationTable = formTable({
  name: 'station',
  fields: {
    perHour: field(printer.to('perHour'), filmLength('above-zero'), 'perHour'),
    hands: field(station.to('hands'), hands, 'hands'),
    presses: field(press.to('count'), presses, 'presses'),
    platenWidth: field(press.to('platen').to('width'), size, 'platenWidth'),
    platenLength: field(press.to('platen').to('length'), size, 'platenLength'),
    large: field(press.to('large'), size, 'large', { hint: 'largeHint' }),
    ovenWidth: field(oven.to('width'), size, 'ovenWidth'),
    ovenLength: field(oven.to('length'), size, 'ovenLength'),
    warmUp: field(printer.to('warmUp'), minutes, 'warmUp'),
    check: field(printer.to('check'), minutes, 'check'),
    pressWarmUp: field(press.to('warmUp'), minutes, 'pressWarmUp'),
    wetLimit: field(station.to('wetLimit'), minutes, 'wetLimit'),
    powderLimit: field(station.to('powderLimit'), minutes, 'powderLimit'),
    trays: field(station.to('trays'), trays, 'trays'),
    rise: field(press.to('rise'), seconds, 'rise'),
    fall: field(press.to('fall'), seconds, 'fall'),
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
  },
  problemsOf({ hours: { week } }, { words }) {
    const isOpen = week.some((day) => day.length > 0);
    return isOpen ? {} : { monday: words.station.neverOpen };
  },
});

type StationField = keyof typeof stationTable.fields;

export const stationEntry = (record: Station): Entry<Station, StationField> => ({ record, typed: {} });
