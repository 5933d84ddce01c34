import {
  concatTransformationMatrix,
  drawObject,
  PDFName,
  type PDFObject,
  type PDFRef,
  popGraphicsState,
  pushGraphicsState,
  setGraphicsState,
} from '@cantoo/pdf-lib';
import { toInches } from '../../units';
import { type PdfFacts, trueSizeDocument } from '../pdf';
import type { PrintImage } from './image';

const POINTS_PER_INCH = 72;

/** Rows of each plane, each behind its filter type, as one zlib stream: RGB, alpha, and the white with the name of its ink. */
interface PdfPlanes {
  readonly colours: Uint8Array;
  readonly alpha: Uint8Array;
  readonly white: { readonly name: string; readonly coverage: Uint8Array } | null;
}

/**
 * An image as a PDF (ISO 32000-2) of one page that is as large as its film. The pixels lie at their true size from the page's
 * upper left corner, with their alpha as a soft mask (11.6.5.2). The white is an ink of its own (8.6.6.4), whose tint is how much of it
 * covers. It overprints (8.6.7) and is multiplied (11.3.5.2), so that no plate takes anything out of another, and what knows no inks
 * shows the colours as they are.
 */
export async function imagePdf(
  { width, height, ppi, film }: PrintImage,
  planes: PdfPlanes,
  facts: PdfFacts,
): Promise<Uint8Array<ArrayBuffer>> {
  const document = await trueSizeDocument(facts);
  const { context } = document;
  const register = (
    bytes: Uint8Array,
    samples: number,
    more: { ColorSpace: string | PDFObject; SMask?: PDFRef },
  ) =>
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
  const mask = register(planes.alpha, 1, { ColorSpace: 'DeviceGray' });
  const colours = register(planes.colours, 3, { ColorSpace: 'DeviceRGB', SMask: mask });
  const size = [film.width, film.length].map((side) => toInches(side) * POINTS_PER_INCH) as [number, number];
  const page = document.addPage(size);
  page.setTrimBox(0, 0, ...size);
  const [across, along] = [(width / ppi) * POINTS_PER_INCH, (height / ppi) * POINTS_PER_INCH];
  const lay = (image: PDFRef) => [
    concatTransformationMatrix(across, 0, 0, along, 0, size[1] - along),
    drawObject(page.node.newXObject('Image', image)),
  ];
  page.pushOperators(pushGraphicsState(), ...lay(colours), popGraphicsState());
  if (planes.white) {
    const { name, coverage } = planes.white;
    const paper = [1, 1, 1];
    const tint = context.obj({ FunctionType: 2, Domain: [0, 1], C0: paper, C1: paper, N: 1 });
    const ink = context.obj(['Separation', PDFName.of(name), 'DeviceRGB', context.register(tint)]);
    const overprint = context.obj({ Type: 'ExtGState', OP: true, op: true, OPM: 0, BM: 'Multiply' });
    page.pushOperators(
      pushGraphicsState(),
      setGraphicsState(page.node.newExtGState('Overprint', context.register(overprint))),
      ...lay(register(coverage, 1, { ColorSpace: context.register(ink) })),
      popGraphicsState(),
    );
  }
  return new Uint8Array(await document.save());
}
