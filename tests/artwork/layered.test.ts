import fc from 'fast-check';
import { PNG } from 'pngjs';
import { describe, expect, it } from 'vitest';
import { flatten } from '../../src/artwork/browser/layered-worker/flatten';
import { pngOf } from '../../src/artwork/browser/layered-worker/png-of';
import { readPngFacts, readPngHeader } from '../../src/artwork/png';

const big = (bytes: number, value: number): number[] =>
  Array.from({ length: bytes }, (_, at) => (value / 2 ** (8 * (bytes - 1 - at))) & 255);
const signs = (text: string): number[] => Array.from(text, (sign) => sign.charCodeAt(0));

/** A resource: a sign, its number, a name that is empty, and its data, of even length. */
const resource = (number: number, data: readonly number[]): number[] => [
  ...signs('8BIM'),
  ...big(2, number),
  ...[0, 0],
  ...big(4, data.length),
  ...data,
  ...(data.length % 2 ? [0] : []),
];
/** 300 to the inch, shown by the centimetre: fixed point, and the units that it is shown in. */
const RESOLUTION = resource(1005, [
  ...big(4, 300 * 65_536),
  ...big(2, 2),
  ...big(2, 2),
  ...big(4, 300 * 65_536),
  ...big(2, 2),
  ...big(2, 2),
]);
const PROFILE = [9, 8, 7, 6, 5];

/**
 * A file of layers, of which there are none, and the picture that they make, as its format is published: planes without compression,
 * an alpha that is the whole picture's where the count of layers is negative.
 */
function layersFile(
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

const tiffOf = (
  samples: number,
  pixels: readonly number[],
  more: Parameters<typeof tiffFile>[0] = [],
  kind = samples >= 3 ? 2 : 1,
) =>
  tiffFile(
    [
      [256, 3, pixels.length / samples],
      [257, 3, 1],
      [258, 3, ...Array(samples).fill(8)],
      [259, 3, 1],
      [262, 3, kind],
      [277, 3, samples],
      [278, 3, 1],
      [279, 4, pixels.length],
      ...more,
    ],
    pixels,
  );

const rgbaOf = (file: Uint8Array<ArrayBuffer>) => {
  const flat = flatten(file);
  return flat.ok ? [...flat.value.rgba] : flat.problem;
};

describe('the picture of a file of layers', () => {
  it('is read from its planes, with resolution and profile', () => {
    const file = layersFile({ resources: [...resource(1039, PROFILE), ...RESOLUTION] }, [
      [200, 1],
      [30, 2],
      [60, 3],
    ]);
    expect(rgbaOf(file)).toEqual([200, 30, 60, 255, 1, 2, 3, 255]);
    const flat = flatten(file);
    expect(flat.ok && [...(flat.value.icc ?? [])]).toEqual(PROFILE);
    // 300 to the inch are 11,811 to the metre.
    expect(flat.ok && Math.round(flat.value.density?.x ?? 0)).toBe(11_811);
  });

  it('has its colours without the white that soft edges were saved on', () => {
    const on = (value: number, alpha: number) => Math.round(value * alpha + 255 * (1 - alpha));
    const half = 128 / 255;
    const planes = [20, 90, 200].map((value) => [on(value, half), value]);
    const rgba = rgbaOf(layersFile({ hasAlpha: true }, [...planes, [128, 255]])) as number[];
    for (const [at, value] of [20, 90, 200, 128].entries())
      expect(Math.abs((rgba[at] as number) - value)).toBeLessThanOrEqual(2);
    expect(rgba.slice(4)).toEqual([20, 90, 200, 255]);
  });

  it('has its colours as they stand where they were not saved on white', () => {
    const planes = [
      [20, 200],
      [90, 30],
      [200, 60],
      [128, 255],
    ];
    expect(rgbaOf(layersFile({ hasAlpha: true }, planes))).toEqual([20, 90, 200, 128, 200, 30, 60, 255]);
  });

  it('takes no selection that was kept with it for its alpha', () => {
    expect(
      rgbaOf(
        layersFile({}, [
          [200, 1],
          [30, 2],
          [60, 3],
          [0, 128],
        ]),
      ),
    ).toEqual([200, 30, 60, 255, 1, 2, 3, 255]);
  });

  it('may be grey, with alpha or without', () => {
    expect(rgbaOf(layersFile({ mode: 1 }, [[7, 250]]))).toEqual([7, 7, 7, 255, 250, 250, 250, 255]);
    const soft = layersFile({ mode: 1, hasAlpha: true }, [
      [7, 250],
      [128, 0],
    ]);
    expect(rgbaOf(soft)).toEqual([7, 7, 7, 128, 250, 250, 250, 0]);
  });

  it('may have sixteen bits, of which the high byte is kept', () => {
    const planes = [
      [200, 9, 1, 9],
      [30, 9, 2, 9],
      [60, 9, 3, 9],
    ];
    expect(rgbaOf(layersFile({ depth: 16 }, planes))).toEqual([200, 30, 60, 255, 1, 2, 3, 255]);
  });

  it('may have packed rows: repeats, runs and what means nothing', () => {
    const rows = [
      [255, 200],
      [128, 1, 30, 2],
      [0, 60, 0, 3],
    ];
    const lengths = rows.flatMap((row) => big(2, row.length));
    const file = layersFile({}, [lengths, rows.flat(), []]);
    const packed = Uint8Array.from(file);
    packed[packed.length - lengths.length - rows.flat().length - 1] = 1;
    expect(rgbaOf(packed)).toEqual([200, 30, 60, 255, 200, 2, 3, 255]);
  });

  it.each([
    [
      'in four inks',
      layersFile({ mode: 4 }, [
        [1, 1],
        [1, 1],
        [1, 1],
        [1, 1],
      ]),
      'layered',
    ],
    ['of thirty-two bits', layersFile({ depth: 32 }, [[1], [1], [1]]), 'layered'],
    ['of more pixels than a tab holds', layersFile({ width: 30_000, height: 30_000 }, [[]]), 'too-large'],
    ['wider than a canvas', layersFile({ width: 70_000 }, [[]]), 'too-wide'],
    ['cut off', layersFile({}, [[200, 1], [30]]), 'broken'],
    ['of its head alone', layersFile({}, []).subarray(0, 20), 'layered'],
  ])('is refused where it is %s', (_, file, problem) => {
    expect(rgbaOf(file)).toBe(problem);
  });
});

describe('a TIFF', () => {
  it.each([
    ['colours', tiffOf(3, [200, 30, 60, 1, 2, 3]), [200, 30, 60, 255, 1, 2, 3, 255]],
    ['colours and alpha', tiffOf(4, [200, 30, 60, 128], [[338, 3, 2]]), [200, 30, 60, 128]],
    // Associated alpha (TIFF 6.0, section 18): colours come multiplied by it.
    ['colours times alpha', tiffOf(4, [100, 15, 30, 128], [[338, 3, 1]]), [199, 30, 60, 128]],
    ['greys', tiffOf(1, [7, 250]), [7, 7, 7, 255, 250, 250, 250, 255]],
    ['greys from white', tiffOf(1, [0, 255], [], 0), [255, 255, 255, 255, 0, 0, 0, 255]],
    ['four inks', tiffOf(4, [1, 2, 3, 4], [], 5), 'layered'],
    ['no strip', tiffOf(3, [1, 2, 3]).subarray(0, 60), 'layered'],
  ])('of %s is read as far as it can be', (_, file, rgba) => {
    expect(rgbaOf(file)).toEqual(rgba);
  });

  it.each([
    ['inch', 2, 300, 11_811],
    ['centimetre', 3, 118, 11_800],
    ['nothing told', 1, 1, null],
  ])('has so many pixels to the metre, told by the %s', (_, unit, value, perMetre) => {
    const flat = flatten(
      tiffOf(
        3,
        [1, 2, 3],
        [
          [282, 5, value, 1],
          [283, 5, value, 1],
          [296, 3, unit],
          [34_675, 7, ...PROFILE],
        ],
      ),
    );
    expect(flat.ok && (flat.value.density ? Math.round(flat.value.density.x) : null)).toBe(perMetre);
    expect(flat.ok && [...(flat.value.icc ?? [])]).toEqual(PROFILE);
  });
});

describe('what is kept of it', () => {
  it('is a PNG of the same pixels, size and profile, as another reader has them', async () => {
    const side = fc.integer({ min: 1, max: 9 });
    await fc.assert(
      fc.asyncProperty(side, side, fc.infiniteStream(fc.nat(255)), async (width, height, drawn) => {
        const rgba = Uint8ClampedArray.from(
          { length: width * height * 4 },
          () => drawn.next().value as number,
        );
        const density = { x: 11_811, y: 5906 };
        const icc = Uint8Array.from(PROFILE);
        const png = Buffer.from(await (await pngOf({ width, height, rgba, density, icc })).arrayBuffer());
        expect(new Uint8ClampedArray(PNG.sync.read(png).data)).toEqual(rgba);
        expect(readPngHeader(png)).toMatchObject({ ok: true, value: { width, height, density } });
        expect(readPngFacts(png).profile?.icc).toEqual(icc);
      }),
      { numRuns: 30 },
    );
  });

  it('is made of any bytes behind a head, or they are refused', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('8BPS\0\u0001', 'II*\0', 'MM\0*'),
        fc.uint8Array({ maxLength: 200 }),
        (head, rest) => {
          const flat = flatten(Uint8Array.from([...signs(head), ...rest]));
          expect(
            flat.ok ? flat.value.rgba.length === flat.value.width * flat.value.height * 4 : flat.problem,
          ).toBeTruthy();
        },
      ),
    );
  });
});
