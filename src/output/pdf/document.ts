import { getDefaultSRGBProfile, PDFDocument, PDFName, PDFString, PrintScaling } from '@cantoo/pdf-lib';

export interface PdfFacts {
  readonly title: string;
  readonly made: Date;
}

const SRGB = 'sRGB IEC61966-2.1';

/** Says that colours are sRGB (ISO 32000-2, 14.11.5; the subtype is the one for a profile of RGB). */
function tagColours({ catalog, context }: PDFDocument): void {
  const profile = context.flateStream(getDefaultSRGBProfile(), { N: 3, Alternate: 'DeviceRGB' });
  const intent = context.obj({
    Type: 'OutputIntent',
    S: 'GTS_PDFA1',
    OutputConditionIdentifier: PDFString.of(SRGB),
    RegistryName: PDFString.of('http://www.color.org'),
    Info: PDFString.of(SRGB),
    DestOutputProfile: context.register(profile),
  });
  catalog.set(PDFName.of('OutputIntents'), context.obj([context.register(intent)]));
}

/** A document without pages in sRGB that viewers print at true size, on paper as large as its pages. */
export async function trueSizeDocument({ title, made }: PdfFacts): Promise<PDFDocument> {
  const document = await PDFDocument.create();
  document.setTitle(title, { showInWindowTitleBar: true });
  document.setCreator('Rollwright');
  document.setProducer('Rollwright');
  document.setCreationDate(made);
  document.setModificationDate(made);
  tagColours(document);
  const preferences = document.catalog.getOrCreateViewerPreferences();
  preferences.setPrintScaling(PrintScaling.None);
  preferences.setPickTrayByPDFSize(true);
  return document;
}
