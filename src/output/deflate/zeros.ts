/** Where zeros from a place on end; they are passed over four at a time. */
export function endOfZeros(view: DataView, from: number): number {
  const end = view.byteLength;
  let at = from;
  while (at + 4 <= end && view.getInt32(at) === 0) at += 4;
  while (at < end && view.getUint8(at) === 0) at += 1;
  return at;
}
