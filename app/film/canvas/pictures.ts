/** A transfer's thumbnail, drawn once for each size and turn it is shown at. */
export interface Pictures {
  /** The picture for a box of some device pixels, or `null` while it is not there. */
  get(artwork: string, turned: boolean, width: number, height: number): CanvasImageSource | null;
}

/** Sizes are rounded up to steps of this ratio, so that zooming makes few pictures. */
const STEP = 1.5;
const MOST_KEPT = 400;

const stepUp = (pixels: number) => STEP ** Math.ceil(Math.log(Math.max(8, pixels)) / Math.log(STEP));

/**
 * Keeps thumbnails ready to be drawn, oriented as the film lies on the screen: an unturned copy has its
 * right side at the top, a turned one (a quarter clockwise) stands upright.
 * @param load the thumbnail of an artwork, `null` if there is none
 * @param onChange called when one has come in
 */
export function createPictures(
  load: (artwork: string) => Promise<Blob | null>,
  onChange: () => void,
): Pictures & { close(): void } {
  const originals = new Map<string, ImageBitmap | 'loading' | 'none'>();
  const drawn = new Map<string, HTMLCanvasElement>();

  const fetchOriginal = async (artwork: string): Promise<void> => {
    originals.set(artwork, 'loading');
    const blob = await load(artwork).catch(() => null);
    const bitmap = blob && (await createImageBitmap(blob).catch(() => null));
    originals.set(artwork, bitmap ?? 'none');
    onChange();
  };

  const draw = (original: ImageBitmap, turned: boolean, width: number, height: number): HTMLCanvasElement => {
    const canvas = document.createElement('canvas');
    canvas.width = Math.round(width);
    canvas.height = Math.round(height);
    const context = canvas.getContext('2d');
    if (context) {
      context.imageSmoothingQuality = 'high';
      if (turned) context.drawImage(original, 0, 0, canvas.width, canvas.height);
      else {
        context.translate(0, canvas.height);
        context.rotate(-Math.PI / 2);
        context.drawImage(original, 0, 0, canvas.height, canvas.width);
      }
    }
    return canvas;
  };

  return {
    get(artwork, turned, width, height) {
      const original = originals.get(artwork);
      if (original === undefined) void fetchOriginal(artwork);
      if (!(original instanceof ImageBitmap)) return null;
      const across = stepUp(width);
      const key = `${artwork} ${turned} ${across}`;
      let picture = drawn.get(key);
      if (!picture) {
        picture = draw(original, turned, across, (across * height) / width);
        drawn.set(key, picture);
        if (drawn.size > MOST_KEPT)
          for (const oldest of [...drawn.keys()].slice(0, MOST_KEPT / 2)) drawn.delete(oldest);
      }
      return picture;
    },
    close() {
      for (const original of originals.values()) if (original instanceof ImageBitmap) original.close();
      originals.clear();
      drawn.clear();
    },
  };
}
