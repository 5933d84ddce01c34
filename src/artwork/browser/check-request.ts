import type { Micrometres } from '../../units';
import type { InkChange, Limits, PixelBox } from '..';
import type { Drawn } from './drawings';

/** What is checked: the trimmed box of an image of so many pixels, at the size it is printed in. */
export interface CheckRequest {
  readonly pixels: { readonly width: number; readonly height: number };
  readonly trim: PixelBox;
  readonly printed: { readonly width: Micrometres; readonly height: Micrometres };
  readonly limits: Limits;
  /** What draws it, where it has no pixels of its own. */
  readonly drawn: Drawn | null;
}

/** A printed box for the screen, and what a mend changes in its ink; `null` where none is tried. */
export interface MendedPicture {
  readonly picture: ImageBitmap;
  readonly ink: InkChange | null;
}
