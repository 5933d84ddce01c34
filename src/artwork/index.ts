export type { Spot } from './check';
export type { Contour } from './contour';
export { coverageOf, type InkChange } from './coverage';
export { type FileFacts, fileFacts, plainFacts } from './facts';
export {
  type ArtworkCheck,
  type Finding,
  findingsOf,
  luminance,
  worstGrade,
} from './findings';
export { isJpeg, isWholeJpeg, jpegInks, readJpegHeader } from './jpeg';
export { type Limits, largestSpeck, strokeLimit } from './limits';
export type { MaskRuns } from './mask-runs';
export { isMeant, meantSo, type Verdict, verdictOn } from './meant';
export type { Outline } from './outline';
export { type Density, isPng, isWholePng, readPngHeader, withDensity } from './png';
export { mostLines } from './screening';
export { effectivePpi, heightOf, physicalSize, sameScale } from './size';
export { readSvgHeader, type SvgHeader, type WeightProblem, weighSvg } from './svg';
export { whitePlaces } from './thin-white';
export { LEAST_ALPHA, type PixelBox, trimBox } from './trim';
export { isWebp, isWholeWebp, readWebpHeader } from './webp';
