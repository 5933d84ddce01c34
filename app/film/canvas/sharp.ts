import { type Checker, drawnAs, openChecker } from '../../../src/artwork/browser';
import { um } from '../../../src/units';
import { loadArtworkFile } from '../../store/artwork';
import { useShop } from '../../store/shop';

/** Artwork in as many pixels as the screen wants, for what is looked at closely. */
export interface Sharp {
  /** Its picture, not turned, whose longer side is wanted to have so many device pixels; `null` while it is not there. */
  get(artwork: string, longest: number): ImageBitmap | null;
  close(): void;
}

/** All that are kept have no more pixels than this in all: 100 MB. */
const MOST_PIXELS = 25_000_000;

/** Zooming further by less than this makes no new picture. */
const STEP = 1.5;

/** No picture is drawn in more pixels than this: 64 MB. */
const MOST_DRAWN = 16_000_000;

/** Draws the trimmed artwork of the book from its file, in as many pixels as are wanted. */
const drawnFrom =
  (checker: Checker) =>
  async (id: string, longest: number): Promise<ImageBitmap | null> => {
    const artwork = useShop.getState().book.artwork[id];
    const file = await loadArtworkFile(id);
    if (!artwork?.trim || !file) return null;
    const { pixels, trim, kind } = artwork;
    const shape = Math.max(trim.width, trim.height) / Math.min(trim.width, trim.height);
    const most = Math.min(longest, Math.floor(Math.sqrt(MOST_DRAWN * shape)));
    // Nothing is mended in it, so that how large it is printed plays no part.
    const printed = { width: um(trim.width), height: um(trim.height) };
    const drawn = await checker.picture(file, { pixels, trim, printed, drawn: drawnAs(kind) }, most, null);
    return drawn?.picture ?? null;
  };

/**
 * Draws artwork from its file, once for each step of zoom, and lets go of what was looked at longest ago.
 * @param onChange called when one has come in
 */
export function openSharp(onChange: () => void): Sharp {
  const checker = openChecker();
  const load = drawnFrom(checker);
  /** What was asked for of each, the one looked at last at the end. */
  const asked = new Map<string, number>();
  const kept = new Map<string, ImageBitmap>();
  let closed = false;

  const letGo = (): void => {
    let pixels = 0;
    for (const [artwork, picture] of [...kept].toReversed()) {
      pixels += picture.width * picture.height;
      // The latest is kept however large it is.
      if (pixels <= MOST_PIXELS || pixels === picture.width * picture.height) continue;
      picture.close();
      kept.delete(artwork);
      asked.delete(artwork);
    }
  };

  const draw = async (artwork: string, longest: number): Promise<void> => {
    const picture = await load(artwork, longest).catch(() => null);
    if (!picture) return;
    if (closed || asked.get(artwork) !== longest) return picture.close();
    // It has no more pixels than these: more are not asked for again.
    if (Math.max(picture.width, picture.height) < longest - 1) asked.set(artwork, Number.POSITIVE_INFINITY);
    kept.get(artwork)?.close();
    kept.delete(artwork);
    kept.set(artwork, picture);
    letGo();
    onChange();
  };

  return {
    get(artwork, longest) {
      const picture = kept.get(artwork);
      if (picture) {
        kept.delete(artwork);
        kept.set(artwork, picture);
      }
      if ((asked.get(artwork) ?? 0) < longest) {
        const wanted = Math.ceil(longest * STEP);
        asked.set(artwork, wanted);
        void draw(artwork, wanted);
      }
      return picture ?? null;
    },
    close() {
      closed = true;
      checker.close();
      for (const picture of kept.values()) picture.close();
      kept.clear();
    },
  };
}
