import { type Angle, degreesOf, QUARTER, quartersIn } from '../../../src/units';
import { fetchPart } from '../../offline/part';
import type { Sharp } from './sharp';

/** How a picture lies on the canvas, in its pixels. */
export interface Lies {
  /** How far it is turned on the film, clockwise; on the screen a quarter less. */
  readonly angle: Angle;
  /** Where its left top corner is. */
  readonly corner: { readonly left: number; readonly top: number };
  /** Its size as it stands upright. */
  readonly across: number;
  readonly down: number;
}

/** Draws the picture of an artwork as it lies on the film. */
export interface Pictures {
  /** @returns whether there is one to draw */
  draw(context: CanvasRenderingContext2D, artwork: string, lies: Lies): boolean;
}

/** It stands upright on the screen. */
const STANDING = QUARTER;

/** Sizes are rounded up to steps of this ratio, so that zooming makes few pictures. */
const STEP = 1.5;
const MOST_KEPT = 400;

/** A thumbnail is drawn up to so many times its size before the artwork itself is asked for. */
const ENLARGED = 1.2;

const stepUp = (pixels: number) => STEP ** Math.ceil(Math.log(Math.max(8, pixels)) / Math.log(STEP));

/** A copy that is not turned has its right side at the top of the screen, one turned by a quarter stands upright. */
function drawTurned(
  context: CanvasRenderingContext2D,
  picture: ImageBitmap | HTMLCanvasElement,
  { angle, corner, across, down }: Lies,
): void {
  context.save();
  context.imageSmoothingQuality = 'high';
  context.translate(corner.left, corner.top);
  context.rotate(((degreesOf(angle) - 90) * Math.PI) / 180);
  context.drawImage(picture, 0, 0, across, down);
  context.restore();
}

/** A picture turned by quarters as it lies on the screen, its box at the origin of a canvas of its own. */
function inItsBox({ angle, across, down }: Lies): { lies: Lies; width: number; height: number } {
  const quarters = quartersIn(angle) ?? 0;
  const [width, height] = quarters % 2 === 0 ? [down, across] : [across, down];
  const corner = { left: quarters >= 2 ? width : 0, top: quarters === 0 || quarters === 3 ? height : 0 };
  return { lies: { angle, corner, across, down }, width, height };
}

/**
 * Keeps thumbnails ready to be drawn, once for each size and turn they are shown at; what is looked at more closely than they allow is
 * drawn from the artwork.
 * @param load the thumbnail of an artwork, `null` if there is none
 * @param onChange called when one has come in
 */
export function createPictures(
  load: (artwork: string) => Promise<Blob | null>,
  onChange: () => void,
): Pictures & { close(): void } {
  const thumbnails = new Map<string, ImageBitmap | 'loading' | 'none'>();
  const drawn = new Map<string, HTMLCanvasElement>();
  let sharp: Sharp | 'fetching' | null = null;
  let closed = false;

  /** Fetched when something is first looked at so closely; where it cannot be, thumbnails do. */
  const sharpNow = (): Sharp | null => {
    if (sharp === null) {
      sharp = 'fetching';
      const opened = fetchPart(() => import('./sharp')).then(({ openSharp }) => {
        if (closed) return;
        sharp = openSharp(onChange);
        onChange();
      });
      opened.catch(() => undefined);
    }
    return sharp === 'fetching' ? null : sharp;
  };

  const fetchThumbnail = async (artwork: string): Promise<void> => {
    thumbnails.set(artwork, 'loading');
    const blob = await load(artwork).catch(() => null);
    const bitmap = blob && (await createImageBitmap(blob).catch(() => null));
    thumbnails.set(artwork, bitmap ?? 'none');
    onChange();
  };

  /** A thumbnail turned by quarters, in some steps of sizes. */
  const small = (thumbnail: ImageBitmap, artwork: string, { angle, across, down }: Lies) => {
    const wide = stepUp(across);
    const key = `${artwork} ${angle} ${wide}`;
    const known = drawn.get(key);
    if (known) return known;
    const size = { across: Math.round(wide), down: Math.max(1, Math.round((wide * down) / across)) };
    const { lies, width, height } = inItsBox({ angle, corner: { left: 0, top: 0 }, ...size });
    const canvas = document.createElement('canvas');
    canvas.width = width;
    canvas.height = height;
    const context = canvas.getContext('2d');
    if (context) drawTurned(context, thumbnail, lies);
    drawn.set(key, canvas);
    if (drawn.size > MOST_KEPT)
      for (const oldest of [...drawn.keys()].slice(0, MOST_KEPT / 2)) drawn.delete(oldest);
    return canvas;
  };

  return {
    draw(context, artwork, lies) {
      const thumbnail = thumbnails.get(artwork);
      if (thumbnail === undefined) void fetchThumbnail(artwork);
      if (!(thumbnail instanceof ImageBitmap)) return false;
      const longest = Math.max(lies.across, lies.down) * devicePixelRatio;
      if (longest > ENLARGED * Math.max(thumbnail.width, thumbnail.height)) {
        // What is so large is drawn straight to the canvas: a copy of it for each size would take hundreds of megabytes.
        drawTurned(context, sharpNow()?.get(artwork, longest) ?? thumbnail, lies);
        return true;
      }
      const quarters = quartersIn(lies.angle);
      const picture = small(thumbnail, artwork, {
        ...lies,
        // What lies between quarter turns is turned as it is drawn.
        angle: quarters === null ? STANDING : lies.angle,
        across: lies.across * devicePixelRatio,
        down: lies.down * devicePixelRatio,
      });
      if (quarters === null) drawTurned(context, picture, lies);
      else {
        const box = inItsBox(lies);
        const left = lies.corner.left - box.lies.corner.left;
        context.drawImage(picture, left, lies.corner.top - box.lies.corner.top, box.width, box.height);
      }
      return true;
    },
    close() {
      for (const thumbnail of thumbnails.values()) if (thumbnail instanceof ImageBitmap) thumbnail.close();
      thumbnails.clear();
      drawn.clear();
      closed = true;
      if (sharp !== null && sharp !== 'fetching') sharp.close();
    },
  };
}
