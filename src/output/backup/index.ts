export { type Bundle, type BundleProblem, packBundle, unpackBundle } from './bundle';
