import type { Box, Mark, TextMark } from './marks';
import { CAP, type Measure } from './text';

/** How far letters reach below the line they stand on, as a share of the em. */
const DESCENT = 0.22;

/** What a text covers on the page. */
function textBox({ text, x, y, size, weight, anchor, upright }: TextMark, measure: Measure): Box {
  const along = measure(text, size, weight);
  const begin = { start: 0, middle: -along / 2, end: -along }[anchor];
  const [above, tall] = [size * CAP, size * (CAP + DESCENT)];
  return upright
    ? { x: x - above, y: y - begin - along, width: tall, height: along }
    : { x: x + begin, y: y - above, width: along, height: tall };
}

/** What all texts among marks cover. */
export const textBoxes = (marks: readonly Mark[], measure: Measure): Box[] =>
  marks.flatMap((mark) => (mark.kind === 'text' ? [textBox(mark, measure)] : []));

interface Point {
  readonly x: number;
  readonly y: number;
}

/** Does a straight line run through a box, or along its edge? By clipping (Liang & Barsky 1984). */
export function crosses(from: Point, to: Point, { x, y, width, height }: Box): boolean {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  let [enters, leaves] = [0, 1];
  for (const [slope, room] of [
    [-dx, from.x - x],
    [dx, x + width - from.x],
    [-dy, from.y - y],
    [dy, y + height - from.y],
  ] as const) {
    if (slope === 0) {
      if (room < 0) return false;
    } else if (slope < 0) enters = Math.max(enters, room / slope);
    else leaves = Math.min(leaves, room / slope);
  }
  return enters <= leaves;
}
