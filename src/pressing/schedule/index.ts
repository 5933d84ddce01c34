export { type ScheduleBound, scheduleBound } from './bounds';
export type { Chain, Due, Resource, Schedule, ScheduleProblem, Task, Use } from './problem';
export { createScheduler } from './search';
export { validateSchedule } from './validate';
