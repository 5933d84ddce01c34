import { cutMap } from '../../../app/words/en/cut-map';
import type { CutMapOptions, Page } from '../../../src/output/cut-map';
import { cutMapPdf } from '../../../src/output/cut-map/pdf';
import { drawText, fonts, measure } from '../fonts';
import { type ReadPage, readPdf } from '../read-pdf';

const date = new Date('2026-11-25T12:00:00Z');

/** What a map is made of where a test asks for nothing else, in a unit of length. */
export const usual = (unit: CutMapOptions['unit'] = 'mm'): CutMapOptions => ({
  form: { paper: 'a4', landscape: false, large: false, perSpan: false },
  view: 'ink-up',
  printer: { inkUp: 'mirrored', imageMirrored: false },
  nameOf: (order) => order,
  pictures: new Set(),
  garments: [],
  words: cutMap.onPaper({ unit, locale: 'en-GB' }),
  unit,
  date,
  measure,
});

export const written = (pages: readonly Page[]): Promise<Uint8Array> =>
  cutMapPdf(pages, { fonts, drawText }, { title: 'cut map', language: 'en', made: date });

/** The pages as another reads them back from their PDF. */
export const readBack = async (pages: readonly Page[]): Promise<ReadPage[]> => readPdf(await written(pages));
