import type { Piece } from '../../src/packing';

interface Box {
  readonly sheet: number;
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

const apart = (a: Box, b: Box): boolean =>
  a.sheet !== b.sheet || a.x + a.w <= b.x || b.x + b.w <= a.x || a.y + a.h <= b.y || b.y + b.h <= a.y;

/** Whether copies fit, by trying every whole position of every copy in every turn: for tiny cases only. */
function fits(copies: readonly Piece[], gap: number, width: number, length: number, sheets: number): boolean {
  const placed: Box[] = [];
  const place = (index: number): boolean => {
    const copy = copies[index];
    if (!copy) return true;
    const [across, along] = [copy.width + gap, copy.length + gap];
    const turns =
      copy.turn === 'quarter'
        ? [
            [across, along],
            [along, across],
          ]
        : [[across, along]];
    for (const [w = 0, h = 0] of turns) {
      for (let sheet = 0; sheet < sheets; sheet += 1) {
        for (let y = 0; y + h <= length; y += 1) {
          for (let x = 0; x + w <= width; x += 1) {
            const box = { sheet, x, y, w, h };
            if (!placed.every((other) => apart(box, other))) continue;
            placed.push(box);
            if (place(index + 1)) return true;
            placed.pop();
          }
        }
      }
    }
    return false;
  };
  return place(0);
}

const copiesOf = (pieces: readonly Piece[]): Piece[] =>
  pieces.flatMap((piece) => Array.from({ length: piece.count }, () => piece));

/** The shortest strip that takes all copies, gaps grown; without margins. */
export function shortestStrip(pieces: readonly Piece[], gap: number, width: number): number {
  const copies = copiesOf(pieces);
  for (let length = 1; ; length += 1) if (fits(copies, gap, width + gap, length + gap, 1)) return length;
}

/** The fewest sheets that take all copies. */
export function fewestSheets(pieces: readonly Piece[], gap: number, width: number, length: number): number {
  const copies = copiesOf(pieces);
  for (let sheets = 1; ; sheets += 1) if (fits(copies, gap, width + gap, length + gap, sheets)) return sheets;
}
