/** Readers look for a PDF's first mark within so many bytes, as much is written before it. */
const HEAD = 1024;
const MARK = '%PDF-';
/** A comment (ISO 32000-2, 7.2.4) behind the end of the file, which readers pass over. */
const NOTE = /\n%artwork-page (\d{1,6})\n$/;
const LONGEST_NOTE = 32;

/** Bytes as the characters of Latin-1. */
const textOf = (bytes: Uint8Array): string => String.fromCharCode(...bytes);

/** Whether a file is a PDF (ISO 32000-2, 7.5.2). */
export const isPdf = (bytes: Uint8Array): boolean => textOf(bytes.subarray(0, HEAD)).includes(MARK);

const noteOf = (bytes: Uint8Array): RegExpExecArray | null =>
  NOTE.exec(textOf(bytes.subarray(-LONGEST_NOTE)));

/** The page of a PDF that is the artwork, from 1: the first, if the file notes no other. */
export const chosenPage = (bytes: Uint8Array): number => Number(noteOf(bytes)?.[1] ?? 1);

/**
 * The same PDF with another of its pages as the artwork. It is noted within the file, so that each page is an artwork of its
 * own under its own hash, wherever the file goes; the first leaves the file as it was made.
 */
export function withPage(bytes: Uint8Array, page: number): Uint8Array<ArrayBuffer> {
  const made = bytes.subarray(0, bytes.length - (noteOf(bytes)?.[0].length ?? 0));
  const note =
    page === 1
      ? new Uint8Array()
      : Uint8Array.from(`\n%artwork-page ${page}\n`, (sign) => sign.charCodeAt(0));
  const whole = new Uint8Array(made.length + note.length);
  whole.set(made);
  whole.set(note, made.length);
  return whole;
}
