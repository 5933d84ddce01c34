/** Quantisation tables for luminance and chrominance (ISO/IEC 10918-1, annex K.1, tables K.1 and K.2), row by row. */
const LUMINANCE = [
  16, 11, 10, 16, 24, 40, 51, 61, 12, 12, 14, 19, 26, 58, 60, 55, 14, 13, 16, 24, 40, 57, 69, 56, 14, 17, 22,
  29, 51, 87, 80, 62, 18, 22, 37, 56, 68, 109, 103, 77, 24, 35, 55, 64, 81, 104, 113, 92, 49, 64, 78, 87, 103,
  121, 120, 101, 72, 92, 95, 98, 112, 100, 103, 99,
];
const CHROMINANCE = Array.from({ length: 64 }, (_, index) => {
  const [row, column] = [Math.floor(index / 8), index % 8];
  const corner = [
    [17, 18, 24, 47],
    [18, 21, 26, 66],
    [24, 26, 56, 99],
    [47, 66, 99, 99],
  ];
  return corner[row]?.[column] ?? 99;
});

/** Tables at a quality of 1 to 100, as the reference library of the format's own group scales them (from memory). */
const scaled = (table: readonly number[], quality: number): number[] => {
  const scale = quality < 50 ? 5000 / quality : 200 - 2 * quality;
  return table.map((step) => Math.min(255, Math.max(1, Math.floor((step * scale + 50) / 100))));
};

/** The cosines of the transform (ISO/IEC 10918-1, A.3.3). */
const COSINES = Array.from({ length: 64 }, (_, index) => {
  const [u, x] = [Math.floor(index / 8), index % 8];
  return (u === 0 ? Math.SQRT1_2 : 1) * 0.5 * Math.cos(((2 * x + 1) * u * Math.PI) / 16);
});

/** Transforms the rows of a block, or back, and puts them down as columns. */
function turned(block: Float64Array, back: boolean): Float64Array {
  const out = new Float64Array(64);
  for (let y = 0; y < 8; y += 1) {
    for (let u = 0; u < 8; u += 1) {
      let sum = 0;
      for (let x = 0; x < 8; x += 1)
        sum += (block[8 * y + x] as number) * (COSINES[back ? 8 * x + u : 8 * u + x] as number);
      out[8 * u + y] = sum;
    }
  }
  return out;
}

/** A plane after its blocks were transformed, quantised, and transformed back. */
function lossy(plane: Float64Array, width: number, height: number, table: readonly number[]): Float64Array {
  const out = new Float64Array(plane.length);
  for (let top = 0; top < height; top += 8) {
    for (let left = 0; left < width; left += 8) {
      const block = new Float64Array(64);
      const at = (index: number) =>
        Math.min(height - 1, top + (index >> 3)) * width + Math.min(width - 1, left + (index & 7));
      for (let index = 0; index < 64; index += 1) block[index] = (plane[at(index)] as number) - 128;
      const known = turned(turned(block, false), false).map((value, index) => {
        const step = table[index] as number;
        return Math.round(value / step) * step;
      });
      const again = turned(turned(known, true), true);
      for (let index = 0; index < 64; index += 1) {
        if (top + (index >> 3) < height && left + (index & 7) < width)
          out[at(index)] = (again[index] as number) + 128;
      }
    }
  }
  return out;
}

/**
 * An opaque image as a baseline JPEG with halved chroma (4:2:0) leaves it: ISO/IEC 10918-1, annex A; colours by ISO/IEC 10918-5
 * (JFIF), 7; chroma halved by means and drawn large by the nearest, as the plainest decoders do.
 */
export function asJpeg(
  rgba: Uint8ClampedArray,
  width: number,
  height: number,
  quality: number,
): Uint8ClampedArray<ArrayBuffer> {
  const [luma, blue, red] = [0, 1, 2].map(() => new Float64Array(width * height)) as [
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  for (let at = 0; at < luma.length; at += 1) {
    const [r, g, b] = [0, 1, 2].map((channel) => rgba[4 * at + channel] as number) as [
      number,
      number,
      number,
    ];
    luma[at] = 0.299 * r + 0.587 * g + 0.114 * b;
    blue[at] = 128 - 0.168_736 * r - 0.331_264 * g + 0.5 * b;
    red[at] = 128 + 0.5 * r - 0.418_688 * g - 0.081_312 * b;
  }
  const [half, low] = [Math.ceil(width / 2), Math.ceil(height / 2)];
  const halved = (plane: Float64Array): Float64Array =>
    Float64Array.from({ length: half * low }, (_, index) => {
      const [x, y] = [2 * (index % half), 2 * Math.floor(index / half)];
      const pick = (dx: number, dy: number) =>
        plane[Math.min(height - 1, y + dy) * width + Math.min(width - 1, x + dx)] as number;
      return (pick(0, 0) + pick(1, 0) + pick(0, 1) + pick(1, 1)) / 4;
    });
  const [y1, cb, cr] = [
    lossy(luma, width, height, scaled(LUMINANCE, quality)),
    lossy(halved(blue), half, low, scaled(CHROMINANCE, quality)),
    lossy(halved(red), half, low, scaled(CHROMINANCE, quality)),
  ];
  const out = new Uint8ClampedArray(4 * width * height).fill(255);
  for (let at = 0; at < luma.length; at += 1) {
    const small = Math.floor(Math.floor(at / width) / 2) * half + Math.floor((at % width) / 2);
    const [y, b, r] = [y1[at] as number, (cb[small] as number) - 128, (cr[small] as number) - 128];
    out[4 * at] = y + 1.402 * r;
    out[4 * at + 1] = y - 0.344_136 * b - 0.714_136 * r;
    out[4 * at + 2] = y + 1.772 * b;
  }
  return out;
}
