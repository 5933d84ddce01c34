export {
  type AirRemark,
  airOf,
  humidityRemark,
  latestReading,
  temperatureRemark,
  usualAir,
} from './air';
export { type CheckState, checkStates, lastDone, type Standing } from './due';
export { filmSince } from './film-since';
export { checksOf, isStarting, type ShopCheck, type StartingCheck } from './starting';
