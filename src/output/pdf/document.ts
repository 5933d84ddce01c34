import { PDFDocument, PrintScaling } from '@cantoo/pdf-lib';

export interface PdfFacts {
  readonly title: string;
  readonly made: Date;
}

/** A document without pages that viewers print at true size, on paper as large as its pages. */
export async function trueSizeDocument({ title, made }: PdfFacts): Promise<PDFDocument> {
  const document = await PDFDocument.create();
  document.setTitle(title, { showInWindowTitleBar: true });
  document.setCreator('Rollwright');
  document.setProducer('Rollwright');
  document.setCreationDate(made);
  document.setModificationDate(made);
  const preferences = document.catalog.getOrCreateViewerPreferences();
  preferences.setPrintScaling(PrintScaling.None);
  preferences.setPickTrayByPDFSize(true);
  return document;
}
