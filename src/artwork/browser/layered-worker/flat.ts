import type { Density } from '../..';

/** A picture whose layers, if it has some, lie on one another as it was saved: straight alpha, eight bits a channel. */
export interface Flat {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8ClampedArray;
  readonly density: Density | null;
  /** The profile of its colours, if it holds one of three channels. */
  readonly icc: Uint8Array | null;
}

/** `layered`: of a kind that is not read here, or saved without the picture that its layers make. */
export type FlatProblem = 'layered' | 'broken' | 'too-large' | 'too-wide';

/** Four channels of a sample each as eight bits: the high byte of a longer one. */
export function eightBits(samples: Uint8Array | Uint8ClampedArray | Uint16Array): Uint8ClampedArray {
  if (!(samples instanceof Uint16Array))
    return new Uint8ClampedArray(samples.buffer, samples.byteOffset, samples.length);
  return Uint8ClampedArray.from(samples, (sample) => sample >>> 8);
}
