import type { Curer, CureValues, Origin, PressValues, Station } from '../../src/model';
import { parseTemperature, type Temperature, type TemperatureUnit, toDegrees } from '../../src/units';
import { type Codec, told } from '../parts/fields/codec';
import { fieldsIn, formTable } from '../parts/fields/form';
import { shortLength } from '../parts/fields/lengths';
import { seconds } from '../parts/fields/numbers';
import { placesIn } from '../parts/fields/place';
import { text } from '../parts/fields/text';
import { rulerLength } from '../words/format';

/** A recipe as it is, or as it is to be kept. */
export interface Recipe<Values> {
  readonly values: Values;
  readonly origin: Origin;
  readonly notes: string;
}

/** The temperature of a press or an oven, in whole degrees under a label that names the unit. */
const platenTemperature = (unit: TemperatureUnit): Codec<Temperature> => ({
  show: (temperature) => String(Math.round(toDegrees(temperature, unit))),
  read: (typed, { words }) => told(parseTemperature(typed, unit), words.temperatureProblems),
});

const field = fieldsIn(({ recipeForm }) => recipeForm);
const pressing = placesIn<Recipe<PressValues>>();
const curing = placesIn<Recipe<CureValues>>();

/** How a fabric is pressed at a station. */
export const pressTable = ({ temperature: unit, large }: Pick<Station, 'temperature' | 'large'>) => {
  const values = pressing.to('values');
  const time = values.to('seconds');
  return formTable({
    name: 'pressing',
    fields: {
      temperature: field(values.to('temperature'), platenTemperature(unit), (words) =>
        words.temperature(unit),
      ),
      small: field(time.to('small'), seconds, 'small'),
      large: field(time.to('large'), seconds, (words, ways) => words.large(rulerLength(large, ways))),
      prePress: field(values.to('prePress'), seconds, 'prePress'),
      wait: field(values.to('wait'), seconds, 'wait'),
      second: field(values.to('secondPress'), seconds, 'second'),
      notes: field(pressing.to('notes'), text, 'notes'),
    },
  });
};

/** How a way to cure works; a press hovers clear of the film. */
export const cureTable = (unit: TemperatureUnit, by: Curer) => {
  const values = curing.to('values');
  return formTable({
    name: 'curing',
    fields: {
      temperature: field(values.to('temperature'), platenTemperature(unit), (words) =>
        words.temperature(unit),
      ),
      seconds: field(values.to('seconds'), seconds, 'seconds'),
      clear: field(values.when(() => by === 'press').to('clear'), shortLength('zero'), 'clear'),
      notes: field(curing.to('notes'), text, 'notes'),
    },
  });
};
