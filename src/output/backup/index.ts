export { bytesOf, type Part, rangeOf, type Source } from './archive';
export { type Bundle, type BundleProblem, packBundle, unpackBundle } from './bundle';
export { dailyName, surplus } from './daily';
