export { amountOf, itemOf, leftOfFilm, sumsOf, unitOf } from './amount';
export { counterProblem, countersOf, entryProblem, lastOf, standing } from './counter';
export { blanksOfRun, type TakenBlanks } from './run-blanks';
export { inUse, shared, takenByRun } from './supplies';
export { boxOf } from './watch';
