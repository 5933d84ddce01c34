import { DOMParser } from '@xmldom/xmldom';
import DxfParser from 'dxf-parser';
import fc from 'fast-check';
import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { cutOrder, runSpans } from '../../../src/cutting';
import type { LaidRun } from '../../../src/layout';
import { areaOf, isOuter, type Ring } from '../../../src/outlines';
import {
  type CutFile,
  type CutRing,
  cutDxf,
  cutFiles,
  cutSvg,
  LAYERS,
  zipped,
} from '../../../src/output/cut-file';
import { framesOf, imageOf } from '../../../src/output/print-image';
import { fromMm } from '../../../src/units';
import { box, disc, reversed, ring } from '../../nesting/outlines';
import { anyOutlinedRun, areaWithin } from '../outlined';
import { fed, runOf } from '../runs';

const words = { title: 'Run <1> & "ü"', note: 'millimetres' };
const plain = { mirrored: false, withCorners: false };

type Points = [number, number][];

/** What an XML parser finds in a file: its page in millimetres, and the closed paths of a group. */
function readSvg(text: string) {
  const document = new DOMParser().parseFromString(text, 'text/xml');
  const svg = document.documentElement;
  const viewBox = (svg?.getAttribute('viewBox') ?? '').split(' ').map(Number);
  const size = ['width', 'height'].map((side) => {
    const value = svg?.getAttribute(side) ?? '';
    expect(value).toMatch(/^[\d.]+mm$/);
    return Number.parseFloat(value);
  });
  // One user unit is a millimetre.
  expect(viewBox).toEqual([0, 0, ...size]);
  const paths = (group: string): Points[] => {
    const own = Array.from(document.getElementsByTagName('g')).find((g) => g.getAttribute('id') === group);
    return Array.from(own?.getElementsByTagName('path') ?? []).map((path) => {
      const data = path.getAttribute('d') ?? '';
      expect(data).toMatch(/^M[^MZ]*Z$/);
      return data
        .slice(1, -1)
        .split('L')
        .map((point) => point.split(' ').map(Number) as [number, number]);
    });
  };
  return { size, cut: paths(LAYERS.cut), corners: paths(LAYERS.corners) };
}

/** What a reader of the format finds in a file: the closed polylines of each layer. */
function readDxf(text: string) {
  const drawing = new DxfParser().parseSync(text);
  const lines = (layer: string): Points[] =>
    (drawing?.entities ?? [])
      .filter((entity) => entity.layer === layer)
      .map((entity) => {
        expect(entity.type).toBe('POLYLINE');
        const { shape, vertices } = entity as unknown as {
          shape: boolean;
          vertices: { x: number; y: number }[];
        };
        expect(shape).toBe(true);
        return vertices.map(({ x, y }) => [x, y]);
      });
  return { drawing, cut: lines(LAYERS.cut), corners: lines(LAYERS.corners) };
}

/** How long the sides of rings are in all, millimetres. */
const lengthOf = (rings: readonly Ring[]): number =>
  rings.reduce((sum, corners) => {
    let length = 0;
    for (let at = 0; at < corners.length; at += 2) {
      const [x0 = 0, y0 = 0] = [corners.at(at - 2), corners.at(at - 1)];
      length += Math.hypot((corners[at] ?? 0) - x0, (corners[at + 1] ?? 0) - y0);
    }
    return sum + length / 1000;
  }, 0);

const boxOf = (points: Points) => [
  Math.min(...points.map(([x]) => x)),
  Math.min(...points.map(([, y]) => y)),
  Math.max(...points.map(([x]) => x)),
  Math.max(...points.map(([, y]) => y)),
];

const within = (values: readonly number[], others: readonly number[], by: number) => {
  expect(values).toHaveLength(others.length);
  for (const [at, value] of values.entries())
    expect(Math.abs(value - (others[at] ?? Number.NaN))).toBeLessThanOrEqual(by);
};

/** The files of a run as both readers find them. */
const readBoth = (file: CutFile) => ({
  svg: readSvg(cutSvg(file, words)),
  dxf: readDxf(cutDxf(file, words)),
});

const chosen = {
  ppi: 300,
  mirrored: false,
  firstEnd: 'lead',
  feed: 1,
} as const;

describe('a cut file', () => {
  it('holds the area of a disc grown by half the gap (π r²), and its box, to 0.05 mm', () => {
    const run = runOf(
      [{ code: 'A', number: 1, x: 20, y: 30, width: 80, length: 80, outline: [disc(40, 360)] }],
      { cutting: 'outlines', gap: fromMm(6) },
    );
    const [file] = cutFiles(run, plain);
    const { svg, dxf } = readBoth(file ?? expect.fail());
    expect(svg.size).toEqual([330, 120]);
    for (const [name, [line]] of [
      ['svg', svg.cut],
      ['dxf', dxf.cut],
    ] as const) {
      if (!line) return expect.fail(name);
      // An error of 0.05 mm all around is one of so much area.
      expect(Math.abs(areaWithin(line) - Math.PI * 43 ** 2)).toBeLessThan(2 * Math.PI * 43 * 0.05);
      const upright = name === 'svg' ? [17, 27, 103, 113] : [17, 120 - 113, 103, 120 - 27];
      within(boxOf(line), upright, 0.05);
    }
  });

  it('holds the area and the box of every copy’s lines, in both forms, for any run', () => {
    fc.assert(
      fc.property(
        anyOutlinedRun,
        fc.boolean(),
        fc.constantFrom(1, 1.01, 0.996),
        (laid, mirrored, stretch) => {
          const run: LaidRun = fed(laid, stretch);
          const files = cutFiles(run, { mirrored, withCorners: true });
          expect(files.flatMap(({ copies }) => copies)).toHaveLength(run.copies.length);
          for (const file of files) {
            const { svg, dxf } = readBoth(file);
            const span = runSpans(run)[file.number - 1] ?? expect.fail();
            expect(dxf.cut).toHaveLength(svg.cut.length);
            const lines = file.copies.flatMap(({ code, number, rings }) =>
              rings.map(() => `${code}-${number}`),
            );
            expect(lines).toHaveLength(svg.cut.length);
            svg.cut.forEach((line, at) => {
              // Its last line is around it; those before are holes.
              if (lines[at] === lines[at + 1]) return;
              const copy = run.copies.find(({ id }) => id === lines[at]) ?? expect.fail();
              const half = run.film.gap / 2000;
              // No line is nearer to the film's ends, or the next span, than they are.
              const left = Math.max(0, copy.x / 1000 - half);
              const right = Math.min(run.film.width / 1000, (copy.x + copy.width) / 1000 + half);
              const top = (Math.max(span.from, copy.y - run.film.gap / 2) - span.from) / 1000;
              const end = (Math.min(span.to, copy.y + copy.length + run.film.gap / 2) - span.from) / 1000;
              const width = run.film.width / 1000;
              const sides = mirrored ? [width - right, width - left] : [left, right];
              const expected = [sides[0] ?? 0, top * stretch, sides[1] ?? 0, end * stretch];
              within(boxOf(line), expected, 0.05);
              // Grown by r, a shape gains at most its length times r, and a disc of r (Steiner's formula, exact where it is convex).
              const outer = (copy.outline ?? []).filter(isOuter);
              const own = (areaOf(outer) * stretch) / 1e6;
              const most = own + lengthOf(outer) * half * 1.01 + Math.PI * (half * 1.01) ** 2;
              expect(areaWithin(line)).toBeGreaterThanOrEqual(own - 0.05);
              expect(areaWithin(line)).toBeLessThanOrEqual(most + 0.05);
              // The other form is the same upside down, since its axis points up.
              const other = dxf.cut[at] ?? expect.fail();
              // Rounded to a micrometre along all of its length.
              expect(Math.abs(areaWithin(other) - areaWithin(line))).toBeLessThan(0.5);
              const [l = 0, t = 0, r = 0, e = 0] = boxOf(line);
              within(boxOf(other), [l, file.height - e, r, file.height - t], 0.002);
            });
            expect(dxf.corners).toHaveLength(svg.corners.length);
          }
        },
      ),
      { numRuns: 40 },
    );
  });

  it('cuts in the order of the cut order', () => {
    fc.assert(
      fc.property(anyOutlinedRun, (run) => {
        fc.pre(run.copies.every(({ outline }) => outline?.length === 1));
        const told = cutFiles(run, plain).flatMap(({ copies }) =>
          copies.map(({ code, number }) => `${code} ${number}`),
        );
        const order = cutOrder(run).flatMap(({ steps }) =>
          steps.flatMap((step) =>
            step.kind === 'copy' ? [`${step.copy.order.code} ${step.copy.number}`] : [],
          ),
        );
        expect(told).toEqual(order);
      }),
      { numRuns: 20 },
    );
  });

  it('takes out what lies in a hole first, then cuts the hole, then what is around it; an empty hole stays', () => {
    const frame = [box(100, 100), reversed(ring([10, 10], [90, 10], [90, 90], [10, 90]))];
    const at = { width: 100, length: 100, outline: frame };
    const run = runOf(
      [
        { code: 'A', number: 1, x: 10, y: 10, ...at },
        { code: 'A', number: 2, x: 130, y: 10, ...at },
        { code: 'B', number: 1, x: 40, y: 40, width: 40, length: 40, outline: [disc(20)] },
      ],
      { cutting: 'outlines', gap: fromMm(5) },
    );
    const [file] = cutFiles(run, plain);
    const names = file?.copies.map(({ code, number, rings }) => `${code} ${number}: ${rings.length}`) ?? [];
    expect(names.indexOf('B 1: 1')).toBeLessThan(names.indexOf('A 1: 2'));
    expect(names).toContain('A 2: 1');
    const [hole = [], outer = []] = file?.copies.find(({ rings }) => rings.length === 2)?.rings ?? [];
    expect(areaWithin(hole)).toBeCloseTo(75 * 75, 0);
    expect(areaWithin(outer)).toBeGreaterThan(105 * 105 - 10);
  });

  it('tells how many copies fall into pieces', () => {
    const islands = [box(20, 20), ring([60, 0], [80, 0], [80, 20], [60, 20])];
    const run = runOf(
      [
        { code: 'A', number: 1, x: 10, y: 10, width: 80, length: 20, outline: islands },
        { code: 'A', number: 2, x: 10, y: 50, width: 80, length: 20 },
      ],
      { cutting: 'outlines' },
    );
    expect(cutFiles(run, plain)[0]?.loose).toBe(1);
  });

  it('says its unit and layers in words, and keeps any name well formed', () => {
    const run = runOf([{ code: '<&"', number: 1, x: 20, y: 30, width: 80, length: 80 }]);
    const [file] = cutFiles(run, plain);
    const svg = new DOMParser().parseFromString(cutSvg(file ?? expect.fail(), words), 'text/xml');
    expect(svg.getElementsByTagName('title')[0]?.textContent).toBe(words.title);
    expect(svg.getElementsByTagName('title')[1]?.textContent).toBe('<&" 1');
    const dxf = cutDxf(file ?? expect.fail(), words);
    expect(dxf).toContain('999\r\nmillimetres\r\n');
    expect([...dxf].every((sign) => sign.charCodeAt(0) < 127)).toBe(true);
    const { drawing } = readDxf(dxf);
    expect(drawing?.header).toMatchObject({ $ACADVER: 'AC1009' });
    expect(Object.keys(drawing?.tables.layer.layers ?? {})).toEqual(['CUT', 'CORNERS']);
  });

  it('comes in an archive where there are several', () => {
    const files = new Map([
      ['span 1.svg', 'a'],
      ['span 2.svg', 'ü'],
    ]);
    const read = unzipSync(zipped(files, new Date(2026, 0, 5)));
    expect(Object.entries(read).map(([name, bytes]) => [name, strFromU8(bytes)])).toEqual([...files]);
  });
});

describe('registration corners', () => {
  it('are the same in the image and the cut file, an L each, clear of every copy', () => {
    fc.assert(
      fc.property(anyOutlinedRun, (run) => {
        const files = cutFiles(run, { mirrored: false, withCorners: true });
        for (const frame of framesOf(run, { kind: 'spans' })) {
          const number = 'number' in frame.part ? frame.part.number : 0;
          const file = files.find((own) => own.number === number) ?? expect.fail();
          const image = imageOf(run, frame, {
            ...chosen,
            marks: { ticks: true, numbers: false, names: null, corners: true },
          });
          const bars = image.marks.map(({ x, y, width, height }) =>
            [x, y, x + width, y + height].map((pixels) => (pixels * 25.4) / 300),
          );
          for (const corner of file.corners) {
            expect(corner).toHaveLength(6);
            const [left = 0, top = 0, right = 0, end = 0] = boxOf(corner as Points);
            within([right - left, end - top], [6, 6], 0.001);
            const own = bars.filter(
              ([l = 0, t = 0, r = 0, e = 0]) =>
                l > left - 0.1 && t > top - 0.1 && r < right + 0.2 && e < end + 0.2,
            );
            // Its two bars, each within a pixel of where the file has them.
            expect(own).toHaveLength(2);
            within(
              [
                Math.min(...own.map(([l = 0]) => l)),
                Math.min(...own.map(([, t = 0]) => t)),
                Math.max(...own.map(([, , r = 0]) => r)),
                Math.max(...own.map(([, , , e = 0]) => e)),
              ],
              [left, top, right, end],
              0.13,
            );
            for (const copy of file.copies)
              for (const line of copy.rings)
                for (const [x, y] of corner) expect(isWithin(line, x, y)).toBe(false);
          }
        }
      }),
      { numRuns: 30 },
    );
  });

  it('stand at all four corners of a span with room, and move where copies take it', () => {
    const at = (x: number, y: number) => ({ code: 'A', number: x + y, x, y, width: 60, length: 60 });
    const free = runOf([at(120, 60)], { cutting: 'outlines' });
    const corners = cutFiles(free, { mirrored: false, withCorners: true })[0]?.corners ?? [];
    expect(corners.map((corner) => corner[0])).toEqual([
      [5, 1.2],
      [325, 1.2],
      [5, 128.8],
      [325, 128.8],
    ]);
    // A copy in the way of the first: it stands beside that copy.
    const taken = runOf([at(5, 10), at(120, 60)], { cutting: 'outlines' });
    const moved = cutFiles(taken, { mirrored: false, withCorners: true })[0]?.corners ?? [];
    expect(moved.map((corner) => corner[0])).toEqual([
      [5, 1.2],
      [325, 1.2],
      [5, 128.8],
      [325, 128.8],
    ]);
    // A copy at the very edge, which the arm along the film would reach into.
    const crowded = runOf([at(5, 2), at(120, 60)], { cutting: 'outlines' });
    const [first = []] = cutFiles(crowded, { mirrored: false, withCorners: true })[0]?.corners ?? [];
    expect(first[0]?.[0]).toBeGreaterThanOrEqual(5 + 60 + 2.5);
  });
});

/** Whether a point lies within a closed line. */
function isWithin(line: CutRing, x: number, y: number): boolean {
  let inside = false;
  line.forEach(([x1, y1], at) => {
    const [x0, y0] = line.at(at - 1) ?? [0, 0];
    if (y0 <= y !== y1 <= y && x < x0 + ((y - y0) * (x1 - x0)) / (y1 - y0)) inside = !inside;
  });
  return inside;
}
