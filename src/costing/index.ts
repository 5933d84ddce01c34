export { filmCost } from './film';
