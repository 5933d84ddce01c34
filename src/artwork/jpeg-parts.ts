/** What of a JPEG its pixels are read by. */
export type JpegSegment =
  | { readonly kind: 'codes' | 'restarts'; readonly data: Uint8Array }
  | {
      readonly kind: 'frame';
      readonly data: Uint8Array;
      readonly coding: 'sequential' | 'progressive' | 'other';
    }
  | {
      readonly kind: 'scan';
      readonly data: Uint8Array;
      /** The data behind its header, parted where it restarts. */
      readonly intervals: readonly Uint8Array[];
    };

const MARKER = 0xff;
const CODES = 0xc4;
const RESTARTS = 0xdd;
const SCAN = 0xda;
const END = 0xd9;
const isRestart = (marker: number) => marker >= 0xd0 && marker <= 0xd7;
const isFrame = (marker: number) =>
  marker >= 0xc0 && marker <= 0xcf && marker !== CODES && marker !== 0xc8 && marker !== 0xcc;

/** The segments of a JPEG (ISO/IEC 10918-1, annex B) that its pixels are read by, up to its end. */
export function* jpegParts(bytes: Uint8Array): Generator<JpegSegment> {
  for (let at = 2; at + 4 <= bytes.length; ) {
    const marker = bytes[at + 1] as number;
    if (bytes[at] !== MARKER || marker === MARKER || isRestart(marker)) {
      at += 1;
      continue;
    }
    if (marker === END) return;
    const length = ((bytes[at + 2] as number) << 8) | (bytes[at + 3] as number);
    const data = bytes.subarray(at + 4, at + 2 + length);
    at += 2 + length;
    if (marker === CODES) yield { kind: 'codes', data };
    else if (marker === RESTARTS) yield { kind: 'restarts', data };
    else if (isFrame(marker)) {
      const coding = marker <= 0xc1 ? 'sequential' : marker === 0xc2 ? 'progressive' : 'other';
      yield { kind: 'frame', data, coding };
    } else if (marker === SCAN) {
      const intervals: Uint8Array[] = [];
      let from = at;
      // A 0xFF in the data has a 0 stuffed behind it.
      for (; at + 1 < bytes.length; at += 1) {
        const next = bytes[at + 1] as number;
        if (bytes[at] !== MARKER || next === 0 || next === MARKER) continue;
        intervals.push(bytes.subarray(from, at));
        if (!isRestart(next)) break;
        from = at + 2;
        at += 1;
      }
      yield { kind: 'scan', data, intervals };
    }
  }
}
