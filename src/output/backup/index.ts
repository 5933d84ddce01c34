export { type BundleProblem, packBundle, unpackBundle } from './bundle';
