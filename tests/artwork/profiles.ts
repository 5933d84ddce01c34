const ascii = (text: string): number[] => Array.from(text, (letter) => letter.charCodeAt(0));
const u32 = (value: number): number[] => [24, 16, 8, 0].map((shift) => (value >>> shift) & 0xff);
const fixed = (value: number): number[] => u32(Math.round(value * 65_536));

/** A curve: a gamma, a parametric one, or a table of 16 bits. */
export type Curve =
  | { readonly gamma: number }
  | { readonly parameters: readonly number[] }
  | { readonly table: readonly number[] };

function curveTag(curve: Curve): number[] {
  if ('gamma' in curve) {
    const value = Math.round(curve.gamma * 256);
    return [...ascii('curv'), 0, 0, 0, 0, ...u32(1), value >> 8, value & 0xff, 0, 0];
  }
  if ('table' in curve) {
    const values = curve.table.flatMap((value) => [value >> 8, value & 0xff]);
    return [...ascii('curv'), 0, 0, 0, 0, ...u32(curve.table.length), ...values];
  }
  const kind = [1, 3, 4, 5, 7].indexOf(curve.parameters.length);
  return [...ascii('para'), 0, 0, 0, 0, 0, kind, 0, 0, ...curve.parameters.flatMap(fixed)];
}

/**
 * An ICC profile of curves and a matrix (ICC.1:2022, 7.2 and 8.3.3).
 * @param columns XYZ under D50 of the three primaries
 */
export function matrixProfile(
  name: string,
  columns: readonly (readonly number[])[],
  curve: Curve,
): Uint8Array<ArrayBuffer> {
  const description = [...ascii('desc'), 0, 0, 0, 0, ...u32(name.length + 1), ...ascii(name), 0];
  const tags: [string, number[]][] = [
    ['desc', description],
    ...columns.map((column, index): [string, number[]] => [
      `${'rgb'[index]}XYZ`,
      [...ascii('XYZ '), 0, 0, 0, 0, ...column.flatMap(fixed)],
    ]),
    ...['r', 'g', 'b'].map((channel): [string, number[]] => [`${channel}TRC`, curveTag(curve)]),
  ];
  const header = new Array<number>(128).fill(0);
  header.splice(12, 4, ...ascii('mntr'));
  header.splice(16, 8, ...ascii('RGB XYZ '));
  header.splice(36, 4, ...ascii('acsp'));
  // Version 4.3, under D50 (7.2.4 and 7.2.16).
  header.splice(8, 4, 4, 0x30, 0, 0);
  header.splice(68, 12, ...[0.9642, 1, 0.8249].flatMap(fixed));
  const table = u32(tags.length);
  const data: number[] = [];
  for (const [tag, bytes] of tags) {
    table.push(...ascii(tag), ...u32(132 + 12 * tags.length + data.length), ...u32(bytes.length));
    data.push(...bytes);
    while (data.length % 4 !== 0) data.push(0);
  }
  header.splice(0, 4, ...u32(header.length + table.length + data.length));
  return Uint8Array.from([...header, ...table, ...data]);
}
