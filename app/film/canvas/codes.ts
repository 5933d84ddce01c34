import type { LaidCopy } from '../../../src/layout';
import { tintOf } from '../../parts/tints';
import { FONT } from './theme';

interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** A tag that bears a code: how high it is, its text and the room on either side of it, in pixels. */
interface Tag {
  readonly height: number;
  readonly font: number;
  readonly side: number;
}

const LARGE: Tag = { height: 18, font: 12, side: 6 };
const SMALL: Tag = { height: 14, font: 11, side: 4 };

const textOf = ({ order, number }: LaidCopy): string => `${order.code} ${number}`;

function widthOf(context: CanvasRenderingContext2D, text: string, { font, side }: Tag): number {
  context.font = `700 ${font}px ${FONT}`;
  return context.measureText(text).width + 2 * side;
}

/** A tag with its corner at a point, read along the film or, upright, across it. */
function paintTag(
  context: CanvasRenderingContext2D,
  text: string,
  tint: string,
  tag: Tag,
  at: { readonly left: number; readonly top: number },
  isUpright = false,
): void {
  const width = widthOf(context, text, tag);
  context.save();
  context.translate(at.left, isUpright ? at.top + width : at.top);
  if (isUpright) context.rotate(-Math.PI / 2);
  context.fillStyle = tint;
  context.beginPath();
  context.roundRect(0, 0, width, tag.height, tag.height / 2);
  context.fill();
  context.fillStyle = '#fff';
  context.textBaseline = 'middle';
  context.textAlign = 'left';
  context.fillText(text, tag.side, tag.height / 2 + 0.5);
  context.restore();
}

/** The order's code and the copy's number within its box, along or across it. @returns whether there is room for them */
export function paintCode(context: CanvasRenderingContext2D, copy: LaidCopy, box: Box): boolean {
  const text = textOf(copy);
  const inset = Math.min(3, box.width / 2, box.height / 2);
  for (const tag of [LARGE, SMALL]) {
    const width = widthOf(context, text, tag);
    for (const isUpright of [false, true]) {
      const [across, down] = isUpright ? [tag.height, width] : [width, tag.height];
      if (across > box.width || down > box.height) continue;
      const left = box.left + Math.min(inset, (box.width - across) / 2);
      const top = box.top + Math.min(inset, (box.height - down) / 2);
      paintTag(context, text, tintOf(copy.order.tint), tag, { left, top }, isUpright);
      return true;
    }
  }
  return false;
}

/** The code in the gap above a copy, clear of all artwork; left out where the gap is too small for it on the screen. */
export function paintCodeAbove(
  context: CanvasRenderingContext2D,
  copy: LaidCopy,
  box: Box,
  gap: number,
): void {
  const text = textOf(copy);
  if (gap < SMALL.height || widthOf(context, text, SMALL) > box.width) return;
  const top = box.top - (gap + SMALL.height) / 2;
  paintTag(context, text, tintOf(copy.order.tint), SMALL, { left: box.left, top });
}

/** The code of a copy that is pointed at or selected: within it where it has room, else above it. */
export function paintCodeOf(context: CanvasRenderingContext2D, copy: LaidCopy, box: Box): void {
  if (paintCode(context, copy, box)) return;
  const top = box.top < LARGE.height ? box.top + box.height : box.top - LARGE.height;
  paintTag(context, textOf(copy), tintOf(copy.order.tint), LARGE, { left: Math.max(0, box.left), top });
}
