/** Takes bits, the first the lowest of a byte, as deflate packs them (RFC 1951, 3.1.1). */
export interface BitWriter {
  /** @param count no more than 24 */
  put(bits: number, count: number): void;
  /** Fills the last byte up. */
  align(): void;
  /** The whole bytes that were written since they were last taken; to be used before more is written. */
  take(): Uint8Array<ArrayBuffer>;
}

export function bitWriter(): BitWriter {
  let bytes = new Uint8Array(1 << 16);
  let filled = 0;
  let [held, count] = [0, 0];
  const put = (bits: number, more: number): void => {
    held |= bits << count;
    count += more;
    while (count >= 8) {
      bytes[filled] = held;
      filled += 1;
      held >>>= 8;
      count -= 8;
    }
    if (filled > bytes.length - 4) {
      const larger = new Uint8Array(2 * bytes.length);
      larger.set(bytes);
      bytes = larger;
    }
  };
  return {
    put,
    align: () => put(0, (8 - count) & 7),
    take() {
      const taken = bytes.subarray(0, filled);
      filled = 0;
      return taken;
    },
  };
}
