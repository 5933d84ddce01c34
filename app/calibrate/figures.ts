import type { Driver, Quantity, Tunable } from '../../src/model';
import { massRate, number, printSpeed, volumeRate, type Ways, wholePercent, workTime } from '../words/format';

/** A measured amount, or how far it is off, in the unit it is noted in. */
export function amountText(quantity: Quantity, value: number, ways: Ways): string {
  if (quantity === 'printer' || quantity === 'hands') return workTime(value, ways);
  return `${number(value, ways.locale, 1, 1)} ${quantity === 'powder' ? 'g' : 'ml'}`;
}

/** What an area printed in full takes, of microlitres or milligrams for a square metre. */
const areaRate = (quantity: Quantity, value: number, ways: Ways): string =>
  (quantity === 'powder' ? massRate : volumeRate)(value, ways);

/** A rate in the unit it is set in: film in an hour, where seconds for a metre were found. */
export function rateText(quantity: Quantity, driver: Driver, value: number, ways: Ways): string {
  if (driver === 'length') return value > 0 ? printSpeed(value, ways) : '–';
  if (driver === 'area') return areaRate(quantity, 1000 * value, ways);
  return driver === 'plan' ? wholePercent(value, ways) : amountText(quantity, value, ways);
}

const SECONDS_MICROMETRES = 3600 * 1_000_000;

/** The value of a setting that a change stands for. */
export function settingText(setting: Tunable, value: number, ways: Ways): string {
  if (setting === 'printer.perHour') return printSpeed(SECONDS_MICROMETRES / value, ways);
  if (setting === 'rates.powder') return areaRate('powder', value, ways);
  if (setting.startsWith('rates.')) return areaRate('colour', value, ways);
  return setting.startsWith('start.') ? amountText('colour', value / 1000, ways) : workTime(value, ways);
}
