import { laidSize, orient, type PixelSize } from './orientation';
import { slanted } from './slant';
import type { Tile } from './tiles';

/** The pixels of a tile as it lies in the image, from its upright picture, and how many are in a row. */
export function lyingTile(
  picture: Uint32Array<ArrayBuffer>,
  { upright, slant, orientation }: Pick<Tile, 'upright' | 'slant' | 'orientation'>,
): { readonly width: number; readonly pixels: Uint32Array<ArrayBuffer> } {
  const size: PixelSize = slant ? slant.box : upright;
  const turned = slant ? slanted(picture, upright, slant) : picture;
  return { width: laidSize(size, orientation).width, pixels: orient(turned, size, orientation) };
}
