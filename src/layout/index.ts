export { type Refusal, refusals } from './check';
export { type RunFigures, runFigures, wasteOver } from './figures';
export { footprint, type LaidCopy, type LaidRun, layCopy, layRun, withCopy } from './laid';
export { type Keep, type LeftOut, leftOut, placesOf, problemOf, problemOnFilm, tooLargeFor } from './problem';
export { placeFor } from './put-back';
export { unfitCopies } from './settle';
export { snap } from './snap';
