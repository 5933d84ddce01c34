export {
  type AirRemark,
  airOf,
  humidityRemark,
  latestReading,
  parseHumidity,
  temperatureRemark,
  usualAir,
} from './air';
export { type CheckState, checkStates, lastDone, type Standing } from './due';
export { filmSince } from './film-since';
export { checksOf, type ShopCheck, type StartingCheck, startingCheck } from './starting';
