export { type Change, changesFor, presentRate } from './change';
export { FEWEST_RUNS, type Finding, findRates, type Rate, type RunPoint, toldQuantities } from './finding';
export type { Untold } from './runs';
