export { factorOf, marginOf, markupOf } from './earned';
export { at, type BreakEven, breakEven, type MakeOrBuy, makeOrBuy } from './make-or-buy';
export { orderPrice } from './order';
export { marginsAround, type Price, type Print, priceOf } from './price';
export { startingPricing } from './starting';
