import type { CopyBox, PrintImage } from './image';
import type { Orientation, PixelSize } from './orientation';
import type { Slant } from './slant';

/** An artwork at one printed size and lying one way: the pixels of every copy that looks so. */
export interface Tile {
  readonly key: string;
  readonly upright: PixelSize;
  readonly slant: Slant | null;
  readonly orientation: Orientation;
  /** Rows of all images, counted on from one to the next, before which it is not needed, and from which no more. */
  readonly needed: number;
  readonly done: number;
}

export const tileKey = ({
  artwork,
  upright,
  slant,
  orientation: { quarters, half, mirrored },
}: Pick<CopyBox, 'artwork' | 'upright' | 'slant' | 'orientation'>): string =>
  [artwork, upright.width, upright.height, quarters, half, mirrored, JSON.stringify(slant)].join(' ');

/** The tiles that images are made of, by artwork, so that each artwork is decoded once and each size of it made once. */
export function tilesByArtwork(images: readonly PrintImage[]): Map<string, Tile[]> {
  const tiles = new Map<string, Tile & { artwork: string }>();
  let before = 0;
  for (const { copies, height } of images) {
    for (const box of copies) {
      if (box.artwork === null) continue;
      const key = tileKey(box);
      const known = tiles.get(key);
      const [begins, ends] = [before + box.y, before + box.y + box.height];
      tiles.set(key, {
        key,
        artwork: box.artwork,
        upright: box.upright,
        slant: box.slant,
        orientation: box.orientation,
        needed: Math.min(known?.needed ?? begins, begins),
        done: Math.max(known?.done ?? 0, ends),
      });
    }
    before += height;
  }
  const byArtwork = new Map<string, Tile[]>();
  for (const { artwork, ...tile } of tiles.values()) {
    const own = byArtwork.get(artwork);
    if (own) own.push(tile);
    else byArtwork.set(artwork, [tile]);
  }
  return byArtwork;
}
