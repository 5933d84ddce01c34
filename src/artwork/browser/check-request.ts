import type { Micrometres } from '../../units';
import type { Limits, PixelBox } from '..';

/** What is checked: the trimmed box of an image of so many pixels, at the size it is printed in. */
export interface CheckRequest {
  readonly pixels: { readonly width: number; readonly height: number };
  readonly trim: PixelBox;
  readonly printed: { readonly width: Micrometres; readonly height: Micrometres };
  readonly limits: Limits;
  readonly vector: boolean;
}
