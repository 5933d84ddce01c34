import type { DrawingName } from '../drawings/boards';

/** What the drawing worker does. */
export interface Artist {
  /** The font the drawings are lettered in; without it they are drawn in the system's. */
  letterWith(url: string): Promise<void>;
  /**
   * Draws one piece of artwork.
   * @param widthMm printed width of the drawing without its margin
   * @param ppi pixels per printed inch
   * @returns a PNG with its physical size
   */
  draw(name: DrawingName, size: { widthMm: number; ppi: number }): Promise<Blob>;
}
