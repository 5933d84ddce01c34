export { type ScheduleBound, scheduleBound } from './bounds';
export type { Chain, Due, Resource, Schedule, ScheduleProblem, Setup, Task, Use } from './problem';
export { createScheduler, type Scheduler } from './search';
export { type ScheduleFault, validateSchedule } from './validate';
