export { filmCost, runCost } from './film';
export { type Consumption, consumptionOf, startingRates } from './rates';
