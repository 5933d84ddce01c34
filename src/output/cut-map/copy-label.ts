import { uprightSize } from '../../cutting';
import type { LaidCopy } from '../../layout';
import { type Box, PT, type TextMark, text } from './marks';
import { CAP, type Measure, shortened } from './text';
import type { CutMapWords } from './words';

const LARGEST = 13 * PT;
/** Below this a name is only set where nothing larger fits, turned or in two lines. */
const COMFORTABLE = 6.5 * PT;
/** The smallest a name or figure is set anywhere on the map. */
export const SMALLEST = 5 * PT;
const DETAIL = { smallest: 5.5 * PT, largest: 7.5 * PT };
/** Between the lines of a label, as a share of the em of the line below. */
const LEADING = 0.45;
const PADDING = { along: 0.5, across: 0.3 };

interface Line {
  readonly text: string;
  readonly size: number;
  readonly weight: 400 | 700;
}

/** Lines one under the other, flat or turned to read upwards. */
interface Label {
  readonly lines: readonly Line[];
  readonly upright: boolean;
}

const heightOf = (sizes: readonly number[]) =>
  sizes.reduce((sum, size, index) => sum + size * (CAP + (index > 0 ? LEADING : 0)), 0);

/** The size at which bold lines fill the room. */
function largest(lines: readonly string[], along: number, across: number, measure: Measure): number {
  const widest = Math.max(...lines.map((each) => measure(each, 1, 700)));
  return Math.min(LARGEST, along / widest, across / heightOf(lines.map(() => 1)));
}

/** Transfer and size under the name; the transfer is shortened, then left out, where room is scarce. */
function detailOf(copy: LaidCopy, size: number, along: number, words: CutMapWords, measure: Measure): string {
  const { width, height } = uprightSize(copy);
  const figures = words.size(width, height);
  const room = along - measure(` ${figures}`, size, 400);
  const name = room > 0 ? shortened(copy.transfer.name, room, size, 400, measure) : '';
  if (name.length >= Math.min(4, copy.transfer.name.length)) return `${name} ${figures}`;
  return room > 0 ? figures : '';
}

/** A copy's name, and its transfer and size where there is room, in a box; `null` if no legible name fits. */
function labelFor(
  copy: LaidCopy,
  { width, height }: Pick<Box, 'width' | 'height'>,
  words: CutMapWords,
  measure: Measure,
): Label | null {
  const name = words.copy(copy.order.code, copy.number);
  const flat = { upright: false, along: width - 2 * PADDING.along, across: height - 2 * PADDING.across };
  const upright = { upright: true, along: height - 2 * PADDING.along, across: width - 2 * PADDING.across };
  const ways = [
    { ...flat, lines: [name] },
    { ...upright, lines: [name] },
    { ...flat, lines: [copy.order.code, words.count(copy.number)] },
  ].map((way) => ({ ...way, size: largest(way.lines, way.along, way.across, measure) }));
  const best = ways.find(({ size }) => size >= COMFORTABLE) ?? ways.toSorted((a, b) => b.size - a.size)[0];
  if (!best || best.size < SMALLEST) return null;
  const lines: Line[] = best.lines.map((each) => ({ text: each, size: best.size, weight: 700 }));
  if (lines.length > 1) return { lines, upright: best.upright };
  const detail = Math.min(DETAIL.largest, Math.max(DETAIL.smallest, best.size * 0.6));
  const size = Math.min(best.size, (best.across - detail * (CAP + LEADING)) / CAP);
  const told = size >= COMFORTABLE ? detailOf(copy, detail, best.along, words, measure) : '';
  return told === ''
    ? { lines, upright: best.upright }
    : {
        lines: [
          { text: name, size, weight: 700 },
          { text: told, size: detail, weight: 400 },
        ],
        upright: best.upright,
      };
}

/** May a copy carry its name when it is drawn as large as this? */
export const carriesName = (
  copy: LaidCopy,
  room: Pick<Box, 'width' | 'height'>,
  words: CutMapWords,
  measure: Measure,
): boolean => labelFor(copy, room, words, measure) !== null;

/** A copy's label in the middle of a box; nothing, if no legible name fits. */
export function copyLabel(copy: LaidCopy, room: Box, words: CutMapWords, measure: Measure): TextMark[] {
  const label = labelFor(copy, room, words, measure);
  if (!label) return [];
  const { lines, upright } = label;
  const middle = { x: room.x + room.width / 2, y: room.y + room.height / 2 };
  let below = -heightOf(lines.map(({ size }) => size)) / 2;
  return lines.map(({ text: content, size, weight }, index) => {
    below += size * (CAP + (index > 0 ? LEADING : 0));
    const style = { size, weight, anchor: 'middle', upright } as const;
    return upright
      ? text(middle.x + below, middle.y, content, style)
      : text(middle.x, middle.y + below, content, style);
  });
}
