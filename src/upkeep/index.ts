export {
  type AirRemark,
  airOf,
  humidityRemark,
  latestReading,
  parseHumidity,
  temperatureRemark,
  usualAir,
} from './air';
export { type CheckState, checkStates, isDueAtPrint, type Standing } from './due';
export { type PastDate, pastDate } from './past-date';
export { printedBy } from './printed';
export { checksOf, type ShopCheck, type StartingCheck, startingCheck } from './starting';
export { isOfPrinter, machinesOf } from './subjects';
