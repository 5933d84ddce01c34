export { type AsTurned, asTurned } from './as-turned';
export { areNearer, contains, type Lying } from './near';
export { areNearerOnce } from './near-once';
export { areaOf, boxRing, isOuter, lengthOf, type Ring } from './ring';
export { type Room, roomWithin } from './room-within';
export { type SweepTurn, sweptInto } from './sweep';
export { turned, turnOf } from './turned';
