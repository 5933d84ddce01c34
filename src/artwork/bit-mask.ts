/** Pixels that are in or out, 32 to a word from the lowest bit on; each row begins a word. Bits beyond the width are 0. */
export interface BitMask {
  readonly width: number;
  readonly height: number;
  /** Words of a row. */
  readonly span: number;
  readonly words: Int32Array<ArrayBuffer>;
}

export function bitMask(width: number, height: number): BitMask {
  const span = Math.ceil(width / 32);
  return { width, height, span, words: new Int32Array(span * height) };
}

export const isIn = ({ span, words }: BitMask, x: number, y: number): boolean =>
  (((words[y * span + (x >> 5)] as number) >>> (x & 31)) & 1) === 1;

/** Whether no pixel of a row is in, from one up to another that does not count. */
export function isRunOut({ span, words }: BitMask, y: number, from: number, to: number): boolean {
  const row = y * span;
  for (let x = from; x < to; ) {
    const count = Math.min(32 - (x & 31), to - x);
    if (((words[row + (x >> 5)] as number) & ((-1 >>> (32 - count)) << (x & 31))) !== 0) return false;
    x += count;
  }
  return true;
}

/** Puts the pixels of a row in, from one up to another that is not. */
export function setRun({ span, words }: BitMask, y: number, from: number, to: number): void {
  const row = y * span;
  for (let x = from; x < to; ) {
    const count = Math.min(32 - (x & 31), to - x);
    (words[row + (x >> 5)] as number) |= (-1 >>> (32 - count)) << (x & 31);
    x += count;
  }
}

/** The bits of a row's last word that are pixels. */
export const lastBits = ({ width }: BitMask): number => -1 >>> (-width & 31);

/** All pixels that are out. */
export function outOf(mask: BitMask): BitMask {
  const { width, height, span, words } = mask;
  const out = bitMask(width, height);
  const last = lastBits(mask);
  for (let at = 0; at < words.length; at += 1) out.words[at] = ~(words[at] as number);
  for (let at = span - 1; at < words.length; at += span) (out.words[at] as number) &= last;
  return out;
}
