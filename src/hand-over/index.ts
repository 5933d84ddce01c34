export { type CodeProblem, type Collected, codesOf, collect, MOST_CODES, missing, wholeOf } from './codes';
export { type HandOver, type Picture, type Records, readHandOver, writeHandOver } from './content';
export { type Carried, handBackTicks, handOverRun, recordsOf } from './gather';
export { merged } from './merge';
export { type Hash, isSealed, type SealProblem } from './sealed';
