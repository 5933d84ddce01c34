export { allAway, awayBetween, endOver, isColdBetween, switchedOff } from './away';
export { type ScheduleBound, scheduleBound } from './bounds';
export { sequencesFor } from './effort';
export type {
  Available,
  Away,
  Chain,
  Due,
  Lane,
  Resource,
  Schedule,
  ScheduleProblem,
  Setup,
  ShelfLoad,
  Stint,
  Task,
  Use,
  Wait,
} from './problem';
export {
  mayTake,
  setupTime,
} from './problem';
export { createScheduler } from './scheduler';
export { validateSchedule } from './validate';
