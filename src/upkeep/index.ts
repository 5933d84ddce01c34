export {
  type AirRemark,
  airOf,
  humidityRemark,
  latestReading,
  parseHumidity,
  temperatureRemark,
  usualAir,
} from './air';
export { type CheckState, checkStates, type Standing } from './due';
export { filmSince } from './film-since';
export { type PastDate, pastDate } from './past-date';
export { checksOf, type ShopCheck, type StartingCheck, startingCheck } from './starting';
