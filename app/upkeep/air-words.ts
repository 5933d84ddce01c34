import type { Reading, Station } from '../../src/model';
import { fromDegrees, toDegrees } from '../../src/units';
import { humidityRemark, temperatureRemark } from '../../src/upkeep';
import type { Words } from '../words';
import { number, type Ways, wholePercent } from '../words/format';

/** `23.5 °C, 48%`, whatever of it was read. */
export function airText(
  { temperature, humidity }: Pick<Reading, 'temperature' | 'humidity'>,
  { temperature: unit }: Pick<Station, 'temperature'>,
  ways: Ways,
): string {
  const degrees =
    temperature === null
      ? []
      : [`${number(toDegrees(fromDegrees(temperature, 'C'), unit), ways.locale, 0, 1)} °${unit}`];
  return [...degrees, ...(humidity === null ? [] : [wholePercent(humidity, ways)])].join(', ');
}

/** What is to be said of the air, if anything. */
export function airRemarks(
  { temperature, humidity }: Pick<Reading, 'temperature' | 'humidity'>,
  { remarks }: Words['upkeep'],
): string[] {
  const found = [
    temperature === null ? null : temperatureRemark(temperature),
    humidity === null ? null : humidityRemark(humidity),
  ];
  return found.flatMap((remark) => (remark === null || remark === 'impossible' ? [] : [remarks[remark]]));
}
