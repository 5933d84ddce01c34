/** What plans the day, in a part of its own: fetched once the film is on the screen. */
export { dayWork } from '../../src/pressing';
export { findAgain, followSchedule } from './schedules';
