export { type CostedBook, costedOrders } from './costed';
export { type RunCosts, runCosts } from './costs';
export { newDesigns } from './designs';
export { type OrderRuns, orderRuns } from './order-runs';
export { garmentPrice } from './use';
