export { boxesWithin, composeRows, type RowsOf, stripRows } from './compose';
export { type Frame, framesBySpan, framesOf, type Part, type Scope } from './frames';
export { type CopyBox, type ImageChoice, imageOf, type MarkBox, PPI, type PrintImage } from './image';
export type { MarkChoice } from './marks';
export { orient, type PixelSize } from './orientation';
export { pngChunk, pngEnd, pngHead } from './png';
export { createResampler } from './resample';
export { filterRows } from './scanlines';
export { type Tile, tileKey, tilesByArtwork } from './tiles';
