import type { Build } from './build';
import { costOf, keep, type Layout } from './layout';
import type { Sequence } from './sequence';
import type { Strip } from './strip';

/** Copies in the order in which they ask for a place, each with the way it would rather lie. */
export interface Asked {
  readonly piece: number[];
  readonly turned: number[];
}

/** The copies on one sheet, in the order in which they were placed, and where they lie. */
export interface Sheet extends Asked {
  readonly x: number[];
  readonly y: number[];
  top: number;
}

export const emptySheet = (): Sheet => ({ piece: [], turned: [], x: [], y: [], top: 0 });

/** Takes the first so many copies of a layout apart, sheet by sheet. */
export function sheetsOf(
  { piece, turned, bin, x, y, tops }: Layout | Build,
  copies: number,
  bins: number,
): Sheet[] {
  const sheets = Array.from({ length: bins }, emptySheet);
  for (let copy = 0; copy < copies; copy += 1) {
    const sheet = sheets[bin[copy] as number] as Sheet;
    sheet.piece.push(piece[copy] as number);
    sheet.turned.push(turned[copy] as number);
    sheet.x.push(x[copy] as number);
    sheet.y.push(y[copy] as number);
  }
  sheets.forEach((sheet, index) => {
    sheet.top = tops[index] as number;
  });
  return sheets;
}

/** What a build had no place for, in the order of its sequence. */
export function leftOver(sequence: Sequence, build: Build): Asked {
  const placed = new Map<number, number>();
  for (let copy = 0; copy < build.length; copy += 1) {
    const piece = build.piece[copy] as number;
    placed.set(piece, (placed.get(piece) ?? 0) + 1);
  }
  const left: Asked = { piece: [], turned: [] };
  sequence.piece.forEach((piece, index) => {
    const count = placed.get(piece) ?? 0;
    if (count > 0) placed.set(piece, count - 1);
    else {
      left.piece.push(piece);
      left.turned.push(sequence.turned[index] as number);
    }
  });
  return left;
}

/** The layout of copies of which every one has a place on a sheet. */
export function layoutOf(sheets: readonly Sheet[], strip: Strip): Layout {
  const build: Build = {
    length: sheets.reduce((sum, { piece }) => sum + piece.length, 0),
    piece: Int32Array.from(sheets.flatMap(({ piece }) => piece)),
    bin: Int32Array.from(sheets.flatMap(({ piece }, bin) => piece.map(() => bin))),
    x: Float64Array.from(sheets.flatMap(({ x }) => x)),
    y: Float64Array.from(sheets.flatMap(({ y }) => y)),
    turned: Uint8Array.from(sheets.flatMap(({ turned }) => turned)),
    bins: sheets.length,
    tops: Float64Array.from(sheets, ({ top }) => top),
    unplacedArea: 0,
  };
  return keep(build, costOf(build, strip));
}
