import type { LaidCopy } from '../../layout';
import { carriesName, SMALLEST } from './copy-label';
import { nameBox } from './copy-outline';
import { type Box, line, type Mark, PT, text } from './marks';
import { crosses } from './obstacles';
import { BRACKETS } from './plan';
import { type FilmScene, filmRight } from './scene';
import { spread } from './spread';
import { CAP } from './text';

const SIZE = 6 * PT;
const LINE = SIZE * 1.25;
/** Copies whose middles are no further apart than this along the page share a line. */
const ROW = 1;

interface Small {
  readonly copy: LaidCopy;
  readonly box: Box;
}

/** Copies with one height on the page, from left to right. */
type Row = readonly Small[];

const middleOf = ({ box }: Small) => box.y + box.height / 2;

function rowsOf(small: readonly Small[]): Row[] {
  const rows: Small[][] = [];
  for (const each of small.toSorted((a, b) => middleOf(a) - middleOf(b))) {
    const row = rows.at(-1);
    const first = row?.[0];
    if (row && first && middleOf(each) - middleOf(first) <= ROW) row.push(each);
    else rows.push([each]);
  }
  return rows.map((copies) => copies.toSorted((a, b) => a.box.x - b.box.x));
}

/** Names from left to right, each whole on its line; `null` if one is wider than a line. */
function namesOf(row: Row, room: number, { words, measure }: FilmScene): string[] | null {
  const lines: string[] = [];
  for (const { copy } of row) {
    const name = words.copy(copy.order.code, copy.number);
    if (measure(`${name},`, SIZE, 400) > room) return null;
    const last = lines.at(-1);
    const longer = `${last}, ${name}`;
    if (last !== undefined && measure(`${longer},`, SIZE, 400) <= room) lines[lines.length - 1] = longer;
    else lines.push(name);
  }
  return lines.map((each, index) => (index < lines.length - 1 ? `${each},` : each));
}

/** Heights at which a line meets all copies of a row, the middle first. */
function heightsOf(row: Row): number[] {
  const top = Math.max(...row.map(({ box }) => box.y));
  const bottom = Math.min(...row.map(({ box }) => box.y + box.height));
  return [0.5, 0.3, 0.7, 0.1, 0.9].map((share) => top + (bottom - top) * share);
}

/** Names set right of the film, and the copies for which even there no room is left. */
export interface Beside {
  readonly marks: readonly Mark[];
  readonly left: readonly LaidCopy[];
}

/** A row of names with its place, and the height at which a line leads to it. */
interface Named {
  readonly row: Row;
  readonly lines: readonly string[];
  readonly begin: number;
  readonly height: number;
}

/**
 * Names of the copies too small to carry them: right of the film, in the order in which they lie from
 * left to right, with a line through the row and a dot on each. A line that would run through a text is
 * not drawn: what it would lead to is left, as is what has no room.
 * @param texts what is written on the page already
 */
export function besideFilm(scene: FilmScene, width: number, texts: readonly Box[]): Beside {
  const { page, words, measure, sheet } = scene;
  const small = page.copies
    .map((copy) => ({ copy, box: nameBox(scene, copy) }))
    .filter(({ copy, box }) => !carriesName(copy, box, words, measure));
  const edge = filmRight(scene) + 1;
  const x = filmRight(scene) + BRACKETS + 3;
  const room = sheet.filmBottom - sheet.filmTop;
  let taken = 0;
  const fitting = rowsOf(small).flatMap((row) => {
    const lines = namesOf(row, width - 4, scene);
    if (lines === null || taken + lines.length * LINE > room) return [];
    taken += lines.length * LINE;
    const middle = row.reduce((sum, each) => sum + middleOf(each), 0) / row.length;
    return [{ row, lines, middle }];
  });
  const begins = spread(
    fitting.map(({ middle, lines }) => ({
      at: middle - (lines.length * LINE) / 2,
      height: lines.length * LINE,
    })),
    sheet.filmTop,
    sheet.filmBottom,
  );
  const named = fitting.flatMap(({ row, lines }, index): Named[] => {
    const begin = begins[index] ?? 0;
    const end = { x: x - 0.6, y: begin + (lines.length * LINE) / 2 };
    const start = row[0]?.box.x ?? edge;
    const height = heightsOf(row).find((y) =>
      texts.every(
        (each) => !crosses({ x: start, y }, { x: edge, y }, each) && !crosses({ x: edge, y }, end, each),
      ),
    );
    return height === undefined ? [] : [{ row, lines, begin, height }];
  });
  const marks = named.flatMap(({ row, lines, begin, height }) => {
    const thin = { thick: 0.15, tone: 'quiet' } as const;
    return [
      line(row[0]?.box.x ?? edge, height, edge, height, thin),
      line(edge, height, x - 0.6, begin + (lines.length * LINE) / 2, thin),
      ...row.map(({ box }) => dot(box, height)),
      ...lines.map((content, at) =>
        text(x, begin + at * LINE + (LINE + SIZE * CAP) / 2, content, { size: Math.max(SIZE, SMALLEST) }),
      ),
    ];
  });
  const done = new Set(named.flatMap(({ row }) => row));
  return { marks, left: small.filter((each) => !done.has(each)).map(({ copy }) => copy) };
}

const dot = ({ x, width, height }: Box, y: number): Mark => {
  const half = Math.min(0.4, width / 3, height / 3);
  const middle = x + width / 2;
  return line(middle - half, y, middle + half, y, { thick: 2 * half });
};
