import { fetchPart } from '../../offline/part';
import type { Sharp } from './sharp';

/** Draws the picture of an artwork into a box of the canvas, oriented as the film lies on the screen. */
export interface Pictures {
  /** @returns whether there is one to draw */
  draw(
    context: CanvasRenderingContext2D,
    artwork: string,
    turned: boolean,
    box: { readonly left: number; readonly top: number; readonly width: number; readonly height: number },
  ): boolean;
}

/** Sizes are rounded up to steps of this ratio, so that zooming makes few pictures. */
const STEP = 1.5;
const MOST_KEPT = 400;

/** A thumbnail is drawn up to so many times its size before the artwork itself is asked for. */
const ENLARGED = 1.2;

const stepUp = (pixels: number) => STEP ** Math.ceil(Math.log(Math.max(8, pixels)) / Math.log(STEP));

/** An unturned copy has its right side at the top, a turned one (a quarter clockwise) stands upright. */
function drawTurned(
  context: CanvasRenderingContext2D,
  picture: ImageBitmap,
  turned: boolean,
  { left, top, width, height }: Parameters<Pictures['draw']>[3],
): void {
  context.imageSmoothingQuality = 'high';
  if (turned) {
    context.drawImage(picture, left, top, width, height);
    return;
  }
  context.save();
  context.translate(left, top + height);
  context.rotate(-Math.PI / 2);
  context.drawImage(picture, 0, 0, height, width);
  context.restore();
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

  const small = (thumbnail: ImageBitmap, artwork: string, turned: boolean, width: number, height: number) => {
    const across = stepUp(width);
    const key = `${artwork} ${turned} ${across}`;
    const known = drawn.get(key);
    if (known) return known;
    const canvas = document.createElement('canvas');
    canvas.width = Math.round(across);
    canvas.height = Math.round((across * height) / width);
    const context = canvas.getContext('2d');
    if (context)
      drawTurned(context, thumbnail, turned, { left: 0, top: 0, width: canvas.width, height: canvas.height });
    drawn.set(key, canvas);
    if (drawn.size > MOST_KEPT)
      for (const oldest of [...drawn.keys()].slice(0, MOST_KEPT / 2)) drawn.delete(oldest);
    return canvas;
  };

  return {
    draw(context, artwork, turned, box) {
      const thumbnail = thumbnails.get(artwork);
      if (thumbnail === undefined) void fetchThumbnail(artwork);
      if (!(thumbnail instanceof ImageBitmap)) return false;
      const [width, height] = [box.width * devicePixelRatio, box.height * devicePixelRatio];
      const longest = Math.max(width, height);
      if (longest > ENLARGED * Math.max(thumbnail.width, thumbnail.height)) {
        // What is so large is drawn straight to the canvas: a copy of it for each size would take hundreds of megabytes.
        drawTurned(context, sharpNow()?.get(artwork, longest) ?? thumbnail, turned, box);
      } else {
        const picture = small(thumbnail, artwork, turned, width, height);
        context.drawImage(picture, box.left, box.top, box.width, box.height);
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
