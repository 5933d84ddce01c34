import { strFromU8 } from 'fflate';

/**
 * What a file is that is no image here, but often holds artwork, by how its format begins. `layered`: a picture in layers, which a
 * program of its own puts together. `postscript`: a program for a printer that draws when it is run.
 */
export function otherFormat(bytes: Uint8Array): 'layered' | 'postscript' | null {
  const head = strFromU8(bytes.subarray(0, 16), true);
  if (/^8BPS|^gimp xcf|^II\*\0|^MM\0\*/.test(head)) return 'layered';
  return /^%!PS|^\xc5\xd0\xd3\xc6/.test(head) ? 'postscript' : null;
}
