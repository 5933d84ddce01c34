import {
  concatTransformationMatrix,
  drawObject,
  type PDFRef,
  popGraphicsState,
  pushGraphicsState,
} from '@cantoo/pdf-lib';
import { toInches } from '../../units';
import { type PdfFacts, trueSizeDocument } from '../pdf';
import type { PrintImage } from './image';

const POINTS_PER_INCH = 72;

/**
 * An image as a PDF (ISO 32000-1) of one page that is as large as its film. The pixels lie at their true size from the page's
 * upper left corner, with their alpha as a soft mask (11.6.5.3).
 * @param colours rows of RGB, each behind its filter type, as one zlib stream
 * @param alpha the same of alpha
 */
export async function imagePdf(
  { width, height, ppi, film }: PrintImage,
  colours: Uint8Array,
  alpha: Uint8Array,
  facts: PdfFacts,
): Promise<Uint8Array<ArrayBuffer>> {
  const document = await trueSizeDocument(facts);
  const { context } = document;
  const register = (bytes: Uint8Array, samples: number, more: { ColorSpace: string; SMask?: PDFRef }) =>
    context.register(
      context.stream(bytes, {
        Type: 'XObject',
        Subtype: 'Image',
        Width: width,
        Height: height,
        BitsPerComponent: 8,
        Filter: 'FlateDecode',
        // Each row tells its PNG filter.
        DecodeParms: { Predictor: 15, Colors: samples, BitsPerComponent: 8, Columns: width },
        ...more,
      }),
    );
  const mask = register(alpha, 1, { ColorSpace: 'DeviceGray' });
  const image = register(colours, 3, { ColorSpace: 'DeviceRGB', SMask: mask });
  const size = [film.width, film.length].map((side) => toInches(side) * POINTS_PER_INCH) as [number, number];
  const page = document.addPage(size);
  page.setTrimBox(0, 0, ...size);
  const name = page.node.newXObject('Image', image);
  const [across, along] = [(width / ppi) * POINTS_PER_INCH, (height / ppi) * POINTS_PER_INCH];
  page.pushOperators(
    pushGraphicsState(),
    concatTransformationMatrix(across, 0, 0, along, 0, size[1] - along),
    drawObject(name),
    popGraphicsState(),
  );
  return new Uint8Array(await document.save());
}
