export { type Change, changesFor, presentRate } from './change';
export { type Finding, findRates, type Rate, type RunPoint, SPARE_RUNS } from './finding';
export { LATEST, type Untold } from './runs';
