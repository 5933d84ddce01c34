const headOf = (bytes: Uint8Array): string => String.fromCharCode(...bytes.subarray(0, 16));

/**
 * Whether a file is a picture in layers, by how its format begins, and of which kind: `layers`, which holds the picture that they make
 * too; `tiff` (TIFF 6.0, section 2); or one that only a program of its own puts together.
 */
export function layeredFormat(bytes: Uint8Array): 'layers' | 'tiff' | 'other' | null {
  const head = headOf(bytes);
  if (head.startsWith('8BPS\0\x01')) return 'layers';
  if (/^II\*\0|^MM\0\*/.test(head)) return 'tiff';
  return /^8BPS|^gimp xcf/.test(head) ? 'other' : null;
}

/** Whether a file is a program for a printer that draws when it is run. */
export const isPostScript = (bytes: Uint8Array): boolean => /^%!PS|^\xc5\xd0\xd3\xc6/.test(headOf(bytes));
