export { filmCost, runCost } from './film';
