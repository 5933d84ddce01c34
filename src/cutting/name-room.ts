import type { LaidCopy } from '../layout';
import { type Ring, type Room, roomWithin } from '../outlines';

const known = new WeakMap<readonly Ring[], Room>();

/** Where a copy has room for its name, from the corner of its box: all of the box, or what an outline leaves. Worked out once an outline. */
export function nameRoom({ width, length, outline }: Pick<LaidCopy, 'width' | 'length' | 'outline'>): Room {
  if (!outline) return { x: 0, y: 0, width, length };
  const room = known.get(outline) ?? roomWithin(outline, width, length);
  known.set(outline, room);
  return room;
}
