export { type Refusal, refusals } from './check';
export {
  byThrift,
  type Candidate,
  candidateOf,
  type FilmTried,
  filmTried,
  laidBy,
  laidQuickly,
  orderAlone,
  type Trial,
} from './compare';
export { inDueOrder } from './due-order';
export { brokenWishes, faultsOf, holds, type Wish } from './faults';
export {
  areaTaken,
  cleanOffcut,
  copyArea,
  leastOffRoll,
  orderStretch,
  runFigures,
  takenOffRoll,
  wasteOver,
} from './figures';
export { sheetAt, sheetStart } from './film-shape';
export { staysShorter } from './kept';
export {
  type LaidCopy,
  type LaidRun,
  layRun,
  onFilm,
  turnedInPlace,
  turnedTo,
  withCopies,
  withSpans,
} from './laid';
export { type Places, soundLayout, soundPlaces, withPlaces } from './offered';
export {
  copiesToLay,
  fillerProblem,
  type Keep,
  type LeftOut,
  leftOut,
  placesOf,
  problemAgain,
  problemOf,
  problemOfJoining,
  problemOfSome,
  problemOnFilm,
  type RunProblem,
  tooLargeFor,
} from './problem';
export { placeFor } from './put-back';
export { changesLayout, type Savings, savings } from './savings';
export { unfitCopies } from './settle';
export { snap } from './snap';
export { straightCuts } from './straight';
export { isAsked, type Untaken, untakenBy } from './untaken';
