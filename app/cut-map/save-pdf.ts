import type { Page } from '../../src/output/cut-map';
import { download } from '../files/download';
import { safeName } from '../files/file-name';
import { fetchPart } from '../offline/part';
import type { Thumbnail } from '../panels/useThumbnails';
import { sayFailed } from '../store/failures';
import { notify } from '../store/view';
import { allWordsNow, localeNow } from '../words';
import { drawText } from './draw-text';
import { fontFiles } from './fonts';

/** Makes the PDF, for which its library is loaded, and saves it. */
export async function savePdf(
  pages: readonly Page[],
  runName: string,
  made: Date,
  thumbnails: ReadonlyMap<string, Thumbnail>,
): Promise<void> {
  try {
    const [{ cutMapPdf }, fonts] = await fetchPart(() =>
      Promise.all([import('../../src/output/cut-map/pdf'), fontFiles()]),
    );
    const title = allWordsNow().cutMap.fileName(runName);
    const pictures = new Map<string, Uint8Array>();
    for (const [id, { file }] of thumbnails) pictures.set(id, new Uint8Array(await file.arrayBuffer()));
    const pdf = await cutMapPdf(pages, { fonts, drawText }, { title, language: localeNow(), made }, pictures);
    const fileName = `${safeName(title)}.pdf`;
    download(new Blob([new Uint8Array(pdf)], { type: 'application/pdf' }), fileName);
    notify('plain', allWordsNow().cutMap.saved(fileName));
  } catch (error) {
    sayFailed('pdf', error);
  }
}
