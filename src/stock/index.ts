export { amountOf, entriesOf, itemOf, leftOfFilm, type Stock, sumsOf, unitOf } from './amount';
export { type BlankStock, blankStock } from './blanks';
export {
  counterProblem,
  countersOf,
  type EntryProblem,
  entryProblem,
  isUndone,
  lastOf,
  standing,
} from './counter';
export { type FilmOutlook, filmOutlook, type Shortage, shortages } from './outlook';
export { blanksOfRun, type RunBlanks, type TakenBlanks } from './run-blanks';
export { inUse, isSameBlank, shared, suppliesOf, takenByRun, takenFor } from './supplies';
export { boxOf, type Stocked, stocked, type Warning } from './watch';
