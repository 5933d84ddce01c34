import type { Page } from '../../src/output/cut-map';
import { notify } from '../store/view';
import { cutMapWords } from '../words/cut-map';
import { fontFiles } from './fonts';

/** Hands a file to the browser's downloads. */
function download(bytes: Uint8Array<ArrayBuffer>, fileName: string): void {
  const url = URL.createObjectURL(new Blob([bytes], { type: 'application/pdf' }));
  const link = document.createElement('a');
  link.href = url;
  link.download = fileName;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}

/** A name that every file system takes. */
const safe = (name: string): string => name.replace(/[\\/:*?"<>|]+/g, ' ').trim();

/** Makes the PDF, for which its library is loaded, and saves it. */
export async function savePdf(pages: readonly Page[], runName: string, made: Date): Promise<void> {
  try {
    const [{ cutMapPdf }, fonts] = await Promise.all([import('../../src/output/cut-map/pdf'), fontFiles()]);
    const title = cutMapWords.fileName(runName);
    const pdf = await cutMapPdf(pages, fonts, { title, language: navigator.language, made });
    const fileName = `${safe(title)}.pdf`;
    download(new Uint8Array(pdf), fileName);
    notify('plain', cutMapWords.saved(fileName));
  } catch {
    notify('error', cutMapWords.saveFailed);
  }
}
