import type { Check, Interval } from '../../src/model';
import { fromUnit, ok } from '../../src/units';
import type { StartingCheck } from '../../src/upkeep';
import type { Codec } from '../parts/fields/codec';
import { type Entry, fieldsIn, formTable } from '../parts/fields/form';
import { bareFilmLength } from '../parts/fields/lengths';
import { whole } from '../parts/fields/numbers';
import { placesIn } from '../parts/fields/place';
import { someText } from '../parts/fields/text';
import { bulkUnits, type Ways } from '../words/format';

/** What a shop says of a check. */
export type CheckFields = Pick<Check, 'name' | 'interval' | 'of' | 'hazard'>;

const field = fieldsIn(({ upkeep }) => upkeep);
const check = placesIn<CheckFields>();
const interval = check.to('interval');
const someName = someText(({ upkeep }) => upkeep.nameNeeded);
const days = whole(2, 366, ({ upkeep }) => upkeep.daysProblem);
const idleDays = whole(1, 366, ({ upkeep }) => upkeep.idleProblem);
const pauseHours = whole(1, 168, ({ upkeep }) => upkeep.pauseProblem);

/** A name that is left as the catalogue has it stays in every language: it is kept empty. */
const nameOf = (starting: StartingCheck | null): Codec<string> => ({
  show: (name, { words }) => (name === '' && starting ? words.upkeep.checks[starting] : name),
  read(text, reader) {
    const read = someName.read(text, reader);
    return read.ok && starting && read.value === reader.words.upkeep.checks[starting] ? ok('') : read;
  },
});

/** A check of the shop's own, or one of those to start with. */
export const checkTable = (starting: StartingCheck | null) =>
  formTable({
    name: 'check',
    fields: {
      name: field(check.to('name'), nameOf(starting), 'name'),
      days: field(interval.only((each) => each.kind === 'days').to('days'), days, 'days'),
      film: field(
        interval.only((each) => each.kind === 'film').to('length'),
        bareFilmLength('above-zero'),
        (words, ways) => words.film(bulkUnits(ways).length),
      ),
      idleDays: field(interval.only((each) => each.kind === 'idle').to('days'), idleDays, 'idleDays'),
      pauseHours: field(interval.only((each) => each.kind === 'pause').to('hours'), pauseHours, 'pauseHours'),
    },
  });

type CheckField = keyof ReturnType<typeof checkTable>['fields'];

/** A check that is known, or one that is about to be typed. */
export const checkEntry = (known: CheckFields | null): Entry<CheckFields, CheckField> =>
  known
    ? {
        record: { name: known.name, interval: known.interval, of: known.of, hazard: known.hazard },
        typed: {},
      }
    : {
        record: { name: '', interval: { kind: 'day' }, of: 'shop', hazard: 'none' },
        typed: { name: '' },
      };

/** Another kind of interval; what there was before comes back when it is chosen again. */
export function intervalOf(kind: Interval['kind'], opened: Interval, ways: Ways): Interval {
  if (kind === opened.kind) return opened;
  switch (kind) {
    case 'day':
      return { kind };
    case 'days':
      return { kind, days: 7 };
    case 'film':
      return { kind, length: fromUnit(50, bulkUnits(ways).length) };
    case 'idle':
      return { kind, days: 3 };
    case 'pause':
      return { kind, hours: 4 };
  }
}
