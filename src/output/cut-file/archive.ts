import { strToU8, zipSync } from 'fflate';

/**
 * Several text files in one archive (PKWARE, APPNOTE.TXT).
 * @param files by their names
 */
export const zipped = (files: ReadonlyMap<string, string>, made: Date): Uint8Array<ArrayBuffer> =>
  new Uint8Array(
    zipSync(Object.fromEntries([...files].map(([name, text]) => [name, strToU8(text)])), { mtime: made }),
  );
