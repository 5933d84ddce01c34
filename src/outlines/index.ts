export { lyingOutline } from './lying-outline';
export { areNearer, contains } from './near';
export { areaOf, boxRing, type Ring } from './ring';
export { type Room, roomWithin } from './room-within';
export { turned } from './turned';
