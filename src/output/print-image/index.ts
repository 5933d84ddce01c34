export { boxesWithin, composeRows, stripRows } from './compose';
export { framesBySpan, framesOf, type Part, type Scope } from './frames';
export { type CopyBox, type ImageChoice, imageOf, type MarkBox, PPI, type PrintImage } from './image';
export { orient, type PixelSize } from './orientation';
export { pngChunk, pngEnd, pngHead } from './png';
export { createResampler } from './resample';
export { filterRows } from './scanlines';
export { type Tile, tileKey, tilesByArtwork } from './tiles';
