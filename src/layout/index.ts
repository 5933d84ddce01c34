export { type Refusal, refusals } from './check';
export { runFigures, wasteOver } from './figures';
export { type LaidCopy, type LaidRun, layRun, withCopy } from './laid';
export { type Keep, type LeftOut, leftOut, placesOf, problemOf, problemOnFilm, tooLargeFor } from './problem';
export { placeFor } from './put-back';
export { unfitCopies } from './settle';
export { snap } from './snap';
