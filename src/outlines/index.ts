export { type AsTurned, asTurned } from './as-turned';
export { areNearer, contains } from './near';
export { areaOf, boxRing, isOuter, type Ring } from './ring';
export { type Room, roomWithin } from './room-within';
export { turned, turnOf } from './turned';
