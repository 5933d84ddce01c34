import type { Micrometres } from '../../units';
import type { Limits, PixelBox } from '..';
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
