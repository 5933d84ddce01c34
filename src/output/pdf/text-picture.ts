import { PDFHexString, PDFName, PDFOperator, PDFOperatorNames, type PDFPage } from '@cantoo/pdf-lib';

/** A text as a picture, for scripts that the embedded fonts lack. Lengths are in the unit of its size. */
export interface TextPicture {
  readonly png: Uint8Array;
  /** From where the text starts to where another would go on. */
  readonly advance: number;
  /** From where the text starts to the picture's left edge, and from its baseline up to the upper one. */
  readonly left: number;
  readonly ascent: number;
  readonly width: number;
  readonly height: number;
}

/** Draws on a page, and says of what is drawn which text it stands for (ActualText, ISO 32000-1, 14.9.4). */
export function drawnAsText(page: PDFPage, text: string, draw: () => void): void {
  const meant = `<</ActualText ${PDFHexString.fromText(text)}>>`;
  page.pushOperators(
    PDFOperator.of(PDFOperatorNames.BeginMarkedContentSequence, [PDFName.of('Span'), meant]),
  );
  draw();
  page.pushOperators(PDFOperator.of(PDFOperatorNames.EndMarkedContent));
}
