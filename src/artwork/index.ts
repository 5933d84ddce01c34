export { type Density, type PngProblem, readPngHeader, withDensity } from './png';
export { effectivePpi, heightOf, physicalSize } from './size';
export { LEAST_ALPHA, type PixelBox, trimBox } from './trim';
