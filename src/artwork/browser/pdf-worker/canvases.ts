type Drawing = OffscreenCanvasRenderingContext2D;

function context(width: number, height: number): Drawing {
  const drawing = new OffscreenCanvas(width, height).getContext('2d', { willReadFrequently: true });
  if (!drawing) throw new Error('no 2d context');
  return drawing;
}

interface Canvas {
  canvas: OffscreenCanvas | null;
  context: Drawing | null;
}

/** A mask that the library has made of a group, by what alpha it gives: of 256 figures, or each its own where there is none. */
type Mask = { readonly of: 'luminosity' | 'alpha'; readonly map: ArrayLike<number> | null };

const masks: Mask[] = [];
const MARK = 'mask ';

/** Share of each channel in how bright a colour is (ISO 32000-2, 11.5.3 by 10.4.2.2: NTSC). */
const [RED, GREEN, BLUE] = [0.3, 0.59, 0.11];

/** A picture whose alpha is what a mask gives. */
function masked(picture: CanvasImageSource, [x, y, width, height]: readonly number[], { of, map }: Mask) {
  const drawing = context(width as number, height as number);
  drawing.drawImage(picture, -(x as number), -(y as number));
  const pixels = drawing.getImageData(0, 0, width as number, height as number);
  const { data } = pixels;
  for (let at = 0; at < data.length; at += 4) {
    const [red, green, blue, alpha] = [data[at], data[at + 1], data[at + 2], data[at + 3]] as [
      number,
      number,
      number,
      number,
    ];
    const value =
      of === 'alpha' ? alpha : Math.round(((RED * red + GREEN * green + BLUE * blue) * alpha) / 255);
    data[at + 3] = map ? Math.round(Number(map[value])) : value;
  }
  drawing.putImageData(pixels, 0, 0);
  return drawing.canvas;
}

/**
 * A canvas's context that lays soft masks by its pixels. The library asks for them as a filter of SVG, which workers have not:
 * it gets the name of a mask instead ({@link Masks}), and the one way it uses it is drawing a stretch of a canvas where it lies.
 */
function withMasks(drawing: Drawing): Drawing {
  let mask: Mask | null = null;
  const saved: (Mask | null)[] = [];
  const own = {
    save: drawing.save.bind(drawing),
    restore: drawing.restore.bind(drawing),
    drawImage: drawing.drawImage.bind(drawing) as (...args: unknown[]) => void,
  };
  Object.defineProperties(drawing, {
    filter: {
      configurable: true,
      get: () => 'none',
      set: (value: string) => {
        mask = value.startsWith(MARK) ? (masks[Number(value.slice(MARK.length))] ?? null) : null;
      },
    },
    save: {
      configurable: true,
      writable: true,
      value: () => {
        saved.push(mask);
        own.save();
      },
    },
    restore: {
      configurable: true,
      writable: true,
      value: () => {
        mask = saved.pop() ?? null;
        own.restore();
      },
    },
    drawImage: {
      configurable: true,
      writable: true,
      value: (picture: CanvasImageSource, ...places: number[]) => {
        if (!mask || places.length !== 8) return own.drawImage(picture, ...places);
        const [, , width = 0, height = 0, x, y] = places;
        own.drawImage(masked(picture, places.slice(0, 4), mask), 0, 0, width, height, x, y, width, height);
      },
    },
  });
  return drawing;
}

/** A canvas of a page, clear. */
export const pageContext = (width: number, height: number): Drawing => withMasks(context(width, height));

/** Where the library takes its canvases from. */
export class Canvases {
  create(width: number, height: number): Canvas {
    const drawing = pageContext(width, height);
    return { canvas: drawing.canvas, context: drawing };
  }
  reset({ canvas }: Canvas, width: number, height: number): void {
    if (canvas) Object.assign(canvas, { width, height });
  }
  destroy(canvas: Canvas): void {
    this.reset(canvas, 0, 0);
    canvas.canvas = null;
    canvas.context = null;
  }
}

const named = (mask: Mask): string => `${MARK}${masks.push(mask) - 1}`;

/** Where the library asks for filters: masks have names here, all else stays as it is. */
export class Masks {
  addFilter = (): string => 'none';
  addHCMFilter = (): string => 'none';
  addHighlightHCMFilter = (): string => 'none';
  addAlphaFilter = (map: ArrayLike<number>): string => named({ of: 'alpha', map });
  addLuminosityFilter = (map: ArrayLike<number> | null): string => named({ of: 'luminosity', map });
  destroy(): void {
    masks.length = 0;
  }
}
