import type { Density } from './png';

/** What of Exif matters to print: which way up, and how large. */
export interface Exif {
  /** 1 to 8 as Exif counts them; from 5 on, width and height change places. */
  readonly orientation: number;
  readonly density: Density | null;
}

const ORIENTATION = 0x0112;
const X_RESOLUTION = 0x011a;
const Y_RESOLUTION = 0x011b;
const RESOLUTION_UNIT = 0x0128;
const SHORT = 3;
const RATIONAL = 5;
const PER_METRE: Readonly<Record<number, number>> = { 2: 1 / 0.0254, 3: 100 };

/**
 * Reads the first directory of an Exif block (CIPA DC-008, Exif 2.32, 4.6.4 and 4.6.5; TIFF 6.0, section 2).
 * @param tiff from its byte order mark on
 */
export function readExif(tiff: Uint8Array): Exif {
  const view = new DataView(tiff.buffer, tiff.byteOffset, tiff.byteLength);
  const nothing: Exif = { orientation: 1, density: null };
  if (tiff.length < 14) return nothing;
  const little = tiff[0] === 0x49;
  const start = view.getUint32(4, little);
  if (start + 2 > tiff.length) return nothing;
  const values = new Map<number, number>();
  const count = view.getUint16(start, little);
  for (let entry = 0; entry < count; entry += 1) {
    const at = start + 2 + 12 * entry;
    if (at + 12 > tiff.length) break;
    const [tag, type] = [view.getUint16(at, little), view.getUint16(at + 2, little)];
    if (type === SHORT) values.set(tag, view.getUint16(at + 8, little));
    const offset = view.getUint32(at + 8, little);
    if (type === RATIONAL && offset + 8 <= tiff.length) {
      values.set(tag, view.getUint32(offset, little) / view.getUint32(offset + 4, little));
    }
  }
  const perMetre = PER_METRE[values.get(RESOLUTION_UNIT) ?? 2] ?? 0;
  const x = (values.get(X_RESOLUTION) ?? 0) * perMetre;
  const y = (values.get(Y_RESOLUTION) ?? 0) * perMetre;
  const orientation = values.get(ORIENTATION) ?? 1;
  return {
    orientation: orientation >= 1 && orientation <= 8 ? orientation : 1,
    density: x > 0 && y > 0 && Number.isFinite(x * y) ? { x, y } : null,
  };
}
