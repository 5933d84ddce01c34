export const big = (bytes: number, value: number): number[] =>
  Array.from({ length: bytes }, (_, at) => (value / 2 ** (8 * (bytes - 1 - at))) & 255);
export const signs = (text: string): number[] => Array.from(text, (sign) => sign.charCodeAt(0));

/** A resource: a sign, its number, a name that is empty, and its data, of even length. */
export const resource = (number: number, data: readonly number[]): number[] => [
  ...signs('8BIM'),
  ...big(2, number),
  ...[0, 0],
  ...big(4, data.length),
  ...data,
  ...(data.length % 2 ? [0] : []),
];
/** 300 to the inch, shown by the centimetre: fixed point, and the units that it is shown in. */
export const RESOLUTION = resource(1005, [
  ...big(4, 300 * 65_536),
  ...big(2, 2),
  ...big(2, 2),
  ...big(4, 300 * 65_536),
  ...big(2, 2),
  ...big(2, 2),
]);
export const PROFILE = [9, 8, 7, 6, 5];

/**
 * A file of layers, of which there are none, and the picture that they make, as its format is published: planes without compression,
 * an alpha that is the whole picture's where the count of layers is negative.
 */
export function layersFile(
  { width = 2, height = 1, depth = 8, mode = 3, hasAlpha = false, resources = [] as readonly number[] },
  planes: readonly (readonly number[])[],
): Uint8Array<ArrayBuffer> {
  // One layer, without a box, channels or a name: blended as usual, in full.
  const layer = [...big(18, 0), ...signs('8BIMnorm'), 255, 0, 0, 0, ...big(4, 12), ...big(12, 0)];
  const layers = [...big(2, 65_535), ...layer];
  const info = hasAlpha ? [...big(4, layers.length), ...layers] : [];
  return Uint8Array.from([
    ...signs('8BPS'),
    ...big(2, 1),
    ...big(6, 0),
    ...big(2, planes.length),
    ...big(4, height),
    ...big(4, width),
    ...big(2, depth),
    ...big(2, mode),
    ...big(4, 0),
    ...big(4, resources.length),
    ...resources,
    ...big(4, info.length),
    ...info,
    ...big(2, 0),
    ...planes.flat(),
  ]);
}

/** A TIFF of one strip without compression (TIFF 6.0, section 2), each entry a tag, a type and values. */
function tiffFile(
  entries: readonly (readonly [tag: number, type: 3 | 4 | 5 | 7, ...values: number[]])[],
  pixels: readonly number[],
): Uint8Array<ArrayBuffer> {
  const sizes = { 3: 2, 4: 4, 5: 8, 7: 1 };
  const head = 8;
  const table = 2 + (entries.length + 1) * 12 + 4;
  let beyond = head + table + pixels.length;
  const after: number[] = [];
  const all = [...entries, [273, 4, head + table] as const].sort(([a], [b]) => a - b);
  const lines = all.flatMap(([tag, type, ...values]) => {
    const count = type === 5 ? values.length / 2 : values.length;
    const data = values.flatMap((value) => big(type === 5 ? 4 : sizes[type], value));
    const line = [...big(2, tag), ...big(2, type), ...big(4, count)];
    if (data.length <= 4) return [...line, ...data, ...Array(4 - data.length).fill(0)];
    const at = beyond;
    beyond += data.length;
    after.push(...data);
    return [...line, ...big(4, at)];
  });
  return Uint8Array.from([
    ...signs('MM'),
    ...big(2, 42),
    ...big(4, head),
    ...big(2, all.length),
    ...lines,
    ...big(4, 0),
    ...pixels,
    ...after,
  ]);
}

/** A TIFF of so many samples a pixel: greys or colours, unless it is told what they are. */
export const tiffOf = (
  samples: number,
  pixels: readonly number[],
  more: Parameters<typeof tiffFile>[0] = [],
  kind = samples >= 3 ? 2 : 1,
  {
    height = 1,
    width = pixels.length / samples / height,
    bits = 8,
  }: { height?: number; width?: number; bits?: number } = {},
) =>
  tiffFile(
    [
      [256, 3, width],
      [257, 3, height],
      [258, 3, ...Array(samples).fill(bits)],
      [259, 3, 1],
      [262, 3, kind],
      [277, 3, samples],
      [278, 3, height],
      [279, 4, pixels.length],
      ...more,
    ],
    pixels,
  );
