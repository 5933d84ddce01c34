import type { Reading } from '../../src/model';
import type { TemperatureUnit } from '../../src/units';
import { optional } from '../parts/fields/codec';
import { type Entry, fieldsIn, formTable } from '../parts/fields/form';
import { placesIn } from '../parts/fields/place';
import { workroomHumidity, workroomTemperature } from './workroom';

/** The air of the room as someone reads it, one of the two figures at least. */
export type Air = Pick<Reading, 'temperature' | 'humidity'>;

const field = fieldsIn(({ upkeep }) => upkeep);
const air = placesIn<Air>();

export const airTable = (unit: TemperatureUnit) =>
  formTable({
    name: 'air',
    fields: {
      temperature: field(air.to('temperature'), optional(workroomTemperature(unit)), (words) =>
        words.temperature(`°${unit}`),
      ),
      humidity: field(air.to('humidity'), optional(workroomHumidity), 'humidity'),
    },
    problemsOf: ({ temperature, humidity }, { words }) =>
      temperature === null && humidity === null ? { temperature: words.upkeep.airNeeded } : {},
  });

/** Nothing read yet. */
export const airEntry: Entry<Air, keyof ReturnType<typeof airTable>['fields']> = {
  record: { temperature: null, humidity: null },
  typed: {},
};
