export { spanCorners } from './corners';
export { type Cut, copiesWithin, knifeCuts, measured, runSpans } from './cuts';
export { cutAround, liesWithin } from './holes';
export { nameRoom } from './name-room';
export { type CutStep, cutOrder, type FilmPart, type SpanOrder } from './order';
export { copiesByStretch, type Stretch, stretches } from './stretches';
export { fewestGarments, type Tally, tallyByOrder, tallyByTransfer, uprightSize } from './tally';
export { acrossMap, isMirrored, type MapView } from './view';
