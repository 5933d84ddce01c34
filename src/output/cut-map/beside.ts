import type { LaidCopy } from '../../layout';
import { carriesName, SMALLEST } from './copy-label';
import { copyBox, type FilmScene, filmRight } from './film';
import { type Box, line, type Mark, PT, text } from './marks';
import { BRACKETS } from './plan';
import { spread } from './spread';
import { CAP, wrapped } from './text';

const SIZE = 6 * PT;
const LINE = SIZE * 1.25;
/** Copies whose middles are no further apart than this along the page share a line. */
const ROW = 1;

interface Small {
  readonly copy: LaidCopy;
  readonly box: Box;
}

/** Copies with one height on the page, from left to right. */
interface Row {
  readonly middle: number;
  readonly copies: readonly Small[];
}

const middleOf = ({ box }: Small) => box.y + box.height / 2;

function rowsOf(small: readonly Small[]): Row[] {
  const rows: Small[][] = [];
  for (const each of small.toSorted((a, b) => middleOf(a) - middleOf(b))) {
    const row = rows.at(-1);
    const first = row?.[0];
    if (row && first && middleOf(each) - middleOf(first) <= ROW) row.push(each);
    else rows.push([each]);
  }
  return rows.map((copies) => ({
    middle: copies.reduce((sum, each) => sum + middleOf(each), 0) / copies.length,
    copies: copies.toSorted((a, b) => a.box.x - b.box.x),
  }));
}

/** Names from left to right, the code once for copies of one order that follow each other. */
function namesOf({ copies }: Row, words: FilmScene['words']): string {
  return copies
    .map(({ copy: { order, number } }, index) =>
      copies[index - 1]?.copy.order.code === order.code
        ? words.count(number)
        : words.copy(order.code, number),
    )
    .join(', ');
}

/** Names set right of the film, and the copies for which even there no room is left. */
export interface Beside {
  readonly marks: readonly Mark[];
  readonly left: readonly LaidCopy[];
}

/**
 * Names of the copies too small to carry them: right of the film, in the order in which they lie from
 * left to right, with a line through the row and a dot on each.
 */
export function besideFilm(scene: FilmScene, width: number): Beside {
  const { page, words, measure, sheet } = scene;
  const small = page.copies
    .map((copy) => ({ copy, box: copyBox(scene, copy) }))
    .filter(({ copy, box }) => !carriesName(copy, box, words, measure));
  const x = filmRight(scene) + BRACKETS + 3;
  const rows = rowsOf(small).map((row) => ({
    ...row,
    lines: wrapped(namesOf(row, words), width - 4, SIZE, 400, measure),
  }));
  const room = sheet.filmBottom - sheet.filmTop;
  let taken = 0;
  const fitting = rows.filter(({ lines }) => {
    taken += lines.length * LINE;
    return taken <= room;
  });
  const left = rows.slice(fitting.length).flatMap(({ copies }) => copies.map(({ copy }) => copy));
  const begins = spread(
    fitting.map(({ middle, lines }) => ({
      at: middle - (lines.length * LINE) / 2,
      height: lines.length * LINE,
    })),
    sheet.filmTop,
    sheet.filmBottom,
  );
  const marks = fitting.flatMap(({ middle, copies, lines }, index) => {
    const begin = begins[index] ?? 0;
    const reach = begin + (lines.length * LINE) / 2;
    const edge = filmRight(scene) + 1;
    const thin = { thick: 0.15, tone: 'quiet' } as const;
    const start = copies[0]?.box.x ?? edge;
    return [
      line(start, middle, edge, middle, thin),
      line(edge, middle, x - 0.6, reach, thin),
      ...copies.map(({ box }) => dot(box)),
      ...lines.map((content, at) =>
        text(x, begin + at * LINE + (LINE + SIZE * CAP) / 2, content, { size: Math.max(SIZE, SMALLEST) }),
      ),
    ];
  });
  return { marks, left };
}

const dot = ({ x, y, width, height }: Box): Mark => {
  const half = Math.min(0.4, width / 3, height / 3);
  const middle = { x: x + width / 2, y: y + height / 2 };
  return line(middle.x - half, middle.y, middle.x + half, middle.y, { thick: 2 * half });
};
