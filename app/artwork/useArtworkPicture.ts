import { useEffect, useRef, useState } from 'react';
import type { InkChange } from '../../src/artwork';
import { type Checker, drawnAs, openChecker } from '../../src/artwork/browser';
import type { Artwork, Mend, Transfer } from '../../src/model';
import type { Micrometres } from '../../src/units';
import { loadArtworkFile } from '../store/artwork';

/** The longer side of the picture in the window, in pixels: enough to be looked at eight times as large. */
const LONGEST = 1600;

export type Picture = ImageBitmap | 'loading' | 'missing';

interface Shown {
  readonly picture: Picture;
  /** What the mend that is tried changes in ink; `null` while that is not known. */
  readonly ink: InkChange | null;
}

/**
 * The trimmed artwork for the screen, mended as soon as that is tried. While a slider moves, only the last of what it asked for
 * is drawn.
 * @param choke where the white is shown instead, taken in by so much
 */
export function useArtworkPicture(
  transfer: Transfer,
  artwork: Artwork,
  mend: Mend | null,
  choke: Micrometres | null,
): Shown {
  const { width, height } = transfer;
  const [shown, setShown] = useState<Shown>({ picture: 'loading', ink: null });
  const wanted = useRef({ mend, choke });
  const drawing = useRef<{ checker: Checker; busy: boolean; closed: boolean } | null>(null);

  useEffect(() => {
    const own = { checker: openChecker(), busy: false, closed: false };
    drawing.current = own;
    return () => {
      own.closed = true;
      own.checker.close();
    };
  }, []);

  useEffect(() => {
    wanted.current = { mend, choke };
    const own = drawing.current;
    if (!own || own.busy) return;
    const draw = async (): Promise<void> => {
      own.busy = true;
      const asked = wanted.current;
      const file = await loadArtworkFile(artwork.id).catch(() => null);
      const of = artwork.trim && {
        pixels: artwork.pixels,
        trim: artwork.trim,
        printed: { width, height },
        drawn: drawnAs(artwork.kind),
      };
      const drawn =
        file &&
        of &&
        (await own.checker
          .picture(file, of, LONGEST, asked.mend)
          .then(async (drawn) =>
            drawn && asked.choke !== null
              ? { ...drawn, picture: await own.checker.white(drawn.picture, of.printed, asked.choke) }
              : drawn,
          )
          .catch(() => null));
      own.busy = false;
      if (own.closed) return;
      setShown(drawn ?? { picture: 'missing', ink: null });
      if (wanted.current !== asked) void draw();
    };
    void draw();
  }, [artwork, width, height, mend, choke]);

  return shown;
}
