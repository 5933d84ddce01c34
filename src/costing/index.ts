export type { CoverageOf } from './coverage';
export { filmCost, runCost } from './film';
export { type Counted, type Factor, type Formula, type Term, worthOf } from './formula';
export { type CostKind, costKinds, type Gap, type SharedBy } from './lines';
export { type Consumption, consumptionOf, startingRates } from './rates';
export {
  type CostLine,
  type CostShare,
  type CostSheet,
  costSheet,
  type OrderCost,
  type TransferCost,
} from './sheet';
export { startingCosts } from './starting';
