export { lyingOutline } from './lying-outline';
export { areNearer, contains } from './near';
export { areaOf, type Ring } from './ring';
export { turned } from './turned';
