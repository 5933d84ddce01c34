import type { CutFile, CutRing } from './lines';
import { type CutFileWords, DECIMALS, LAYERS } from './svg';

/** Colour numbers: that of the background's opposite, and grey. */
const COLOURS = { cut: 7, corners: 8 } as const;

/** A group: its code on one line, its value on the next. */
type Group = readonly [code: number, value: string | number];

/** Only signs of ASCII are safe in a file of this age, and a line is no longer than 255. */
const plain = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/[^\x20-\x7e]/g, '')
    .slice(0, 250);

/** A closed polyline: its corners as vertices, ended by SEQEND. */
function polyline(ring: CutRing, height: number, layer: string): Group[] {
  return [
    [0, 'POLYLINE'],
    [8, layer],
    // Vertices follow; the line closes.
    [66, 1],
    [70, 1],
    [10, '0.0'],
    [20, '0.0'],
    [30, '0.0'],
    ...ring.flatMap(([x, y]): Group[] => [
      [0, 'VERTEX'],
      [8, layer],
      [10, x.toFixed(DECIMALS)],
      // This format's y axis points up: seen so, the drawing is that of the SVG.
      [20, (height - y).toFixed(DECIMALS)],
      [30, '0.0'],
    ]),
    [0, 'SEQEND'],
    [8, layer],
  ];
}

const table = (name: string, entries: readonly (readonly Group[])[]): Group[] => [
  [0, 'TABLE'],
  [2, name],
  [70, entries.length],
  ...entries.flatMap((entry): readonly Group[] => [[0, name], ...entry]),
  [0, 'ENDTAB'],
];

/**
 * The lines of a span as DXF of release 12, in ASCII, by its public description (from memory): true size, one unit a millimetre, which this
 * release has no variable for, so that a comment says it. The order of the polylines is that of the cuts.
 */
export function cutDxf({ width, height, copies, corners }: CutFile, { title, note }: CutFileWords): string {
  const extent = (name: string, x: number, y: number): Group[] => [
    [9, name],
    [10, x.toFixed(DECIMALS)],
    [20, y.toFixed(DECIMALS)],
  ];
  const groups: Group[] = [
    [999, plain(title)],
    [999, plain(note)],
    [0, 'SECTION'],
    [2, 'HEADER'],
    [9, '$ACADVER'],
    [1, 'AC1009'],
    ...extent('$EXTMIN', 0, 0),
    ...extent('$EXTMAX', width, height),
    [0, 'ENDSEC'],
    [0, 'SECTION'],
    [2, 'TABLES'],
    ...table('LTYPE', [
      [
        [2, 'CONTINUOUS'],
        [70, 0],
        [3, 'Solid'],
        [72, 65],
        [73, 0],
        [40, '0.0'],
      ],
    ]),
    ...table(
      'LAYER',
      (['cut', 'corners'] as const).map((layer) => [
        [2, LAYERS[layer]],
        [70, 0],
        [62, COLOURS[layer]],
        [6, 'CONTINUOUS'],
      ]),
    ),
    [0, 'ENDSEC'],
    [0, 'SECTION'],
    [2, 'ENTITIES'],
    ...copies.flatMap(({ rings }) => rings.flatMap((ring) => polyline(ring, height, LAYERS.cut))),
    ...corners.flatMap((ring) => polyline(ring, height, LAYERS.corners)),
    [0, 'ENDSEC'],
    [0, 'EOF'],
  ];
  return `${groups.map(([code, value]) => `${code}\r\n${value}`).join('\r\n')}\r\n`;
}
