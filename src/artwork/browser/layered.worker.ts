import { expose } from 'comlink';
import { fail, ok, type Result } from '../../units';
import type { FlatProblem } from './layered-worker/flat';
import { flatten } from './layered-worker/flatten';
import { pngOf } from './layered-worker/png-of';

const flattener = {
  /** The picture of a file of layers, or of a TIFF, as a PNG. */
  async flatten(file: Blob): Promise<Result<Blob, FlatProblem>> {
    const flat = flatten(new Uint8Array(await file.arrayBuffer()));
    return flat.ok ? ok(await pngOf(flat.value)) : fail(flat.problem);
  },
};

export type Flattener = typeof flattener;

expose(flattener);
