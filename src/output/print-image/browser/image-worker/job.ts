import type { PixelBox } from '../../../../artwork';
import type { Artwork } from '../../../../model';
import type { Micrometres, Result } from '../../../../units';
import type { PixelSize, PrintImage } from '../..';

/** An artwork that copies are printed from. */
export interface ImageSource {
  readonly id: string;
  readonly kind: Artwork['kind'];
  readonly file: Blob;
  /** The size that its trimmed box was found at. */
  readonly pixels: PixelSize;
  readonly trim: PixelBox;
}

/** Draws rows of the trimmed box of an SVG or a PDF at a size, where that can be done. */
export type DrawnBand = (id: string, size: PixelSize, top: number, rows: number) => Promise<ImageBitmap>;

/** Where an image goes: a file that the user chose, or one of the origin's private file system. */
export interface ImageTarget {
  readonly kind: 'chosen' | 'private';
  readonly handle: FileSystemFileHandle;
}

/** The white as a plane of its own: what is taken off it at edges, and what it is called. */
export interface WhiteChoice {
  readonly choke: Micrometres;
  readonly name: string;
}

/** What is to be written, each image to its target, and what the copies are printed from. */
export interface ImageJob {
  readonly images: readonly {
    readonly image: PrintImage;
    readonly target: ImageTarget;
    readonly form: 'png' | 'pdf' | 'tiff';
    /** Of a PDF, what viewers call it. */
    readonly title: string;
    /** The choked white; beside a PNG it is a file of its own. */
    readonly white: WhiteChoice | null;
    readonly whiteTarget: ImageTarget | null;
  }[];
  readonly sources: readonly ImageSource[];
  /** A private file for pixels that memory has no room for. */
  readonly scratch: FileSystemFileHandle | null;
}

/** Why an image was not written. `artwork`: one cannot be decoded any more. */
export type ImageProblem =
  | { readonly code: 'stopped' | 'disk-full' | 'not-written' }
  | { readonly code: 'artwork'; readonly artwork: string };

export interface Printer {
  /**
   * Writes images one after the other. What was begun and not ended is not left behind.
   * @param onProgress told the share of all pixels that is written
   */
  write(
    job: ImageJob,
    onProgress: (share: number) => void,
    drawnBand: DrawnBand,
  ): Promise<Result<void, ImageProblem>>;
  stop(): void;
}
