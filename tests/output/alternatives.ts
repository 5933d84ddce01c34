import { decodePDFRawStream, PDFDocument, PDFHexString, PDFRawStream } from '@cantoo/pdf-lib';

/** The texts that stand for what is drawn instead of them (ActualText, ISO 32000-1, 14.9.4), in the order of a document's streams. */
export async function alternatives(pdf: Uint8Array): Promise<string[]> {
  const document = await PDFDocument.load(pdf);
  return document.context
    .enumerateIndirectObjects()
    .flatMap(([, object]) => (object instanceof PDFRawStream ? [object] : []))
    .filter(({ dict }) => !dict.toString().includes('/Image') && !dict.toString().includes('/FontFile'))
    .flatMap((stream) => {
      const content = Buffer.from(decodePDFRawStream(stream).decode()).toString('latin1');
      return [...content.matchAll(/\/ActualText <([0-9A-F]+)>/gi)].map(([, hex = '']) =>
        PDFHexString.of(hex).decodeText(),
      );
    });
}
