export { amountOf, entriesOf, itemOf, leftOfFilm, sumsOf, unitOf } from './amount';
export { blankStock } from './blanks';
export {
  counterProblem,
  countersOf,
  type EntryProblem,
  entryProblem,
  isUndone,
  lastOf,
  standing,
} from './counter';
export { filmOutlook, shortages } from './outlook';
export { blanksAgain, blanksOfRun, blanksTaken, type TakenBlanks } from './run-blanks';
export { inUse, isSameBlank, shared, suppliesOf, takenBlanks, takenByRun } from './supplies';
export { unsummed } from './unsummed';
export { boxOf, putAway, type Stocked, stocked, type Warning } from './watch';
