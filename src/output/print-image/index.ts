export { boxesWithin, composeRows, stripRows } from './compose';
export { framesBySpan, framesOf, type Part, type Scope } from './frames';
export {
  type CopyBox,
  fitsPdf,
  fitsTiff,
  type ImageChoice,
  imageOf,
  LONGEST_PAGE,
  type MarkBox,
  PPI,
  type PrintImage,
} from './image';
export { lyingTile } from './lying-tile';
export type { PixelSize } from './orientation';
export { filteredBytes, planesOf } from './planes';
export { pngEnd, pngHead } from './png';
export { createResampler } from './resample';
export { filterRows } from './scanlines';
export { isSpotName } from './spot-name';
export { tiffDirectory, tiffHead, tiffStrip, tiffStripRows } from './tiff';
export { createTileStore, DiskFull, type TileStore } from './tile-store';
export { type Tile, tileKey, tilesByArtwork } from './tiles';
export { createWhitePlane } from './white-plane';
