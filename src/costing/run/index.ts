export { type OrderRuns, orderRuns, type RunCosts, runCosts } from './costs';
export { newDesigns } from './designs';
export { garmentPrice } from './use';
