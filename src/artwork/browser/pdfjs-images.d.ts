/** What of pdf.js decodes JPEG, which publishes no types for it. */
declare module 'pdfjs-dist/legacy/image_decoders/pdf.image_decoders.mjs' {
  export class JpegImage {
    readonly width: number;
    readonly height: number;
    parse(bytes: Uint8Array): void;
    /** @param how `isSourcePDF`: figures as they are stored, of luma and chroma brought to inks */
    getData(how: { width: number; height: number; isSourcePDF: true }): Uint8ClampedArray;
  }
}

declare module '*.icc?url' {
  const address: string;
  export default address;
}
