import { fail, type Result } from '../../../units';
import { layeredFormat } from '../../other-format';
import type { Flat, FlatProblem } from './flat';
import { readLayers } from './layers';
import { readTiff } from './tiff';

const readers: Record<
  'layers' | 'tiff' | 'other',
  (bytes: Uint8Array<ArrayBuffer>) => Result<Flat, FlatProblem>
> = {
  layers: readLayers,
  tiff: readTiff,
  other: () => fail('layered'),
};

/** Reads the picture of a file of layers, or of a TIFF, as far as the libraries for it do. */
export function flatten(bytes: Uint8Array<ArrayBuffer>): Result<Flat, FlatProblem> {
  try {
    return readers[layeredFormat(bytes) ?? 'other'](bytes);
  } catch {
    // Of a kind that the library does not read, or cut off before its picture: both throw.
    return fail('layered');
  }
}
