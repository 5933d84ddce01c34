export type { CoverageOf } from './coverage';
export { type Factor, type Formula, worthOf } from './formula';
export type { CostKind, Gap, SharedBy } from './lines';
export { type FilmSize, inOtherSize, isOfSize, type TradeSize, tradeSize, tradeSizes } from './other-size';
export { type Consumption, consumptionOf, runConsumption, startingRates } from './rates';
export {
  type CostLine,
  type CostShare,
  type CostSheet,
  copyCosts,
  costSheet,
  type OrderCost,
  type TransferCost,
} from './sheet';
export { startingCosts } from './starting';
