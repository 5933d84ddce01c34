import { fail, ok, parseTemperature, type TemperatureUnit, toDegrees } from '../../src/units';
import { parseHumidity, temperatureRemark } from '../../src/upkeep';
import { humidity, roomTemperature } from '../parts/fields/air';
import { type Codec, told } from '../parts/fields/codec';

/** The temperature of a room that people work in. */
export const workroomTemperature = (unit: TemperatureUnit): Codec<number> => ({
  ...roomTemperature(unit),
  read(text, { words }) {
    const read = parseTemperature(text, unit);
    const sentences = { ...words.temperatureProblems, impossible: words.upkeep.noRoom };
    if (!read.ok) return fail(sentences[read.problem]);
    const celsius = toDegrees(read.value, 'C');
    return temperatureRemark(celsius) === 'impossible' ? fail(sentences.impossible) : ok(celsius);
  },
});

/** The relative humidity of such a room. */
export const workroomHumidity: Codec<number> = {
  ...humidity,
  read: (text, { words }) => told(parseHumidity(text), words.upkeep.humidityProblems),
};
