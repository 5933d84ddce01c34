import { spread } from '../parts/labels';

/** A copy on the plan of a span, in millimetres of the drawing. */
export interface PlanBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly name: string;
}

/** Where a name stands: within its copy, upright if it is a narrow one, or beside the film at the end of a line. */
export interface PlanName {
  readonly x: number;
  readonly y: number;
  /** In millimetres of the drawing. */
  readonly size: number;
  readonly isUpright: boolean;
  /** Where the line from a name beside the film ends: in the middle of its copy. */
  readonly leads: { readonly x: number; readonly y: number } | null;
}

/** No name is smaller than this, in pixels; none larger than the other, in millimetres, but to be read. */
const LEAST = 11;
const MOST = 16;

/** How wide a bold figure or capital is, as a part of its height, and how much of a copy's breadth its name may take. */
const WIDE = 0.62;
const TALL = 0.7;

/** The room beside the film for names that are led out, in pixels. */
export const NAMES = 52;

const widthOf = (name: string, size: number): number => WIDE * name.length * size;

function within({ x, y, width, height, name }: PlanBox, scale: number): PlanName | null {
  const middle = { x: x + width / 2, y: y + height / 2, leads: null };
  for (const isUpright of [false, true]) {
    const [along, across] = isUpright ? [height, width] : [width, height];
    const size = Math.min(Math.max(MOST, LEAST / scale), along / widthOf(name, 1), across * TALL);
    if (size * scale >= LEAST) return { ...middle, size, isUpright };
  }
  return null;
}

/**
 * Names the copies of a span so that each can be read on the screen; one without room in its copy is led out to the nearer side.
 * @param scale pixels a millimetre of the drawing
 */
export function planNames(
  boxes: readonly PlanBox[],
  film: { readonly width: number; readonly height: number },
  scale: number,
): readonly PlanName[] {
  const size = LEAST / scale;
  const inside = boxes.map((box) => within(box, scale));
  const outside = boxes.flatMap((box, index) => (inside[index] ? [] : [{ box, index }]));
  const names = [...inside];
  for (const side of ['left', 'right'] as const) {
    const own = outside.filter(
      ({ box }) => (box.x + box.width / 2 < film.width / 2 ? 'left' : 'right') === side,
    );
    const middles = spread(
      own.map(({ box }) => ({ at: box.y + box.height / 2, size: size * 1.2 })),
      // However many there are, none is left out: they go on below the film.
      { from: 0, to: Math.max(film.height, (own.length + 1) * size * 1.2) },
      0,
    );
    for (const [at, { box, index }] of own.entries()) {
      const offset = widthOf(box.name, size) / 2 + 8 / scale;
      names[index] = {
        x: side === 'left' ? -offset : film.width + offset,
        y: middles[at] ?? box.y,
        size,
        isUpright: false,
        leads: { x: box.x + box.width / 2, y: box.y + box.height / 2 },
      };
    }
  }
  return names.flatMap((name) => name ?? []);
}
