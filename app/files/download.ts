import { freeLater } from './object-url';

/** Hands a file to the browser's downloads. */
export function download(file: Blob, fileName: string): void {
  const url = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = url;
  link.download = fileName;
  link.click();
  freeLater(url);
}
