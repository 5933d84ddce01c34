import { boxRing, type Ring } from './ring';
import { type Turned, turned } from './turned';

/** How something printed lies: the box that it takes, from its corner on, and where in that the corner of its image is. */
export interface AsTurned {
  readonly width: number;
  readonly length: number;
  readonly origin: { readonly x: number; readonly y: number };
  /** What it keeps the gap by; `null` if that is its box. */
  readonly rings: readonly Ring[] | null;
}

const known = new WeakMap<readonly Ring[], Map<number, Turned>>();

/** An outline turned; once for each angle, however many copies lie so. */
function onceTurned(rings: readonly Ring[], degrees: number): Turned {
  let angles = known.get(rings);
  if (!angles) {
    angles = new Map();
    known.set(rings, angles);
  }
  const last = angles.get(degrees);
  if (last) return last;
  const lying = turned(rings, degrees);
  angles.set(degrees, lying);
  return lying;
}

/** The box of a size turned by so many quarters, exactly. */
function byQuarters(
  { width, length }: { readonly width: number; readonly length: number },
  quarters: number,
) {
  const [across, along] = quarters % 2 === 0 ? [width, length] : [length, width];
  const x = quarters === 1 || quarters === 2 ? across : 0;
  const y = quarters === 2 || quarters === 3 ? along : 0;
  return { width: across, length: along, origin: { x, y } };
}

/**
 * The one answer to how a print of some size lies when it is turned. Between quarter turns its box is that of its outline, or of its
 * turned rectangle where it has none, rounded up to whole micrometres; and it keeps the gap by what lies in that, not by the box.
 * @param size as it stands upright
 * @param outline as it stands upright, touching all sides of that size; `null` if it has none
 * @param degrees clockwise as an image is looked at, from 0 to less than 360
 */
export function asTurned(
  size: { readonly width: number; readonly length: number },
  outline: readonly Ring[] | null,
  degrees: number,
): AsTurned {
  const quarters = degrees / 90;
  if (Number.isInteger(quarters)) {
    const rings = outline && (quarters === 0 ? outline : onceTurned(outline, degrees).rings);
    return { ...byQuarters(size, quarters), rings };
  }
  const { rings, width, length, origin } = outline
    ? onceTurned(outline, degrees)
    : turned([boxRing(size)], degrees);
  return { rings, width: Math.ceil(width), length: Math.ceil(length), origin };
}
