export { isJpeg, readJpegHeader } from './jpeg';
export { type Density, isPng, readPngHeader, withDensity } from './png';
export { effectivePpi, heightOf, physicalSize } from './size';
export { readSvgHeader } from './svg';
export { LEAST_ALPHA, type PixelBox, trimBox } from './trim';
export { isWebp, readWebpHeader } from './webp';
