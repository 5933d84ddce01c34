import fc from 'fast-check';
import { PNG } from 'pngjs';
import { describe, expect, it } from 'vitest';
import { flatten } from '../../src/artwork/browser/layered-worker/flatten';
import { pngOf } from '../../src/artwork/browser/layered-worker/png-of';
import { readPngFacts, readPngHeader } from '../../src/artwork/png';
import { big, layersFile, PROFILE, RESOLUTION, resource, signs, tiffOf } from './layered-files';

/** 256 colours of 16 bits, of which the first are told. */
const colourMap = (...colours: readonly (readonly number[])[]): number[] =>
  [0, 1, 2].flatMap((channel) =>
    Array.from({ length: 256 }, (_, index) => 257 * (colours[index]?.[channel] ?? 0)),
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
    // A colour map of 16 bits, all reds before all greens (section 5).
    [
      'a table of colours',
      tiffOf(1, [1, 0], [[320, 3, ...colourMap([200, 30, 60], [1, 2, 3])]], 3),
      [1, 2, 3, 255, 200, 30, 60, 255],
    ],
    [
      'a single bit',
      tiffOf(1, [0b0100_0000], [], 1, { width: 2, bits: 1 }),
      [0, 0, 0, 255, 255, 255, 255, 255],
    ],
    [
      'colours, alpha and a selection',
      tiffOf(5, [200, 30, 60, 128, 7], [[338, 3, 2, 0]], 2),
      [200, 30, 60, 128],
    ],
    ['planes one after the other', tiffOf(3, [200, 1, 30, 2, 60, 3], [[284, 3, 2]]), 'layered'],
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
