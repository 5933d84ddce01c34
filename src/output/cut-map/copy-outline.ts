import { nameRoom } from '../../cutting';
import type { LaidCopy } from '../../layout';
import type { Ring } from '../../outlines';
import { type Box, line, type Mark, ring, type Tone } from './marks';
import { acrossPage, downPage, type FilmScene, pageBox } from './scene';

/** What of a copy's room for its name is on this page. */
export function nameBox(scene: FilmScene, copy: LaidCopy): Box {
  const room = nameRoom(copy);
  return pageBox(scene, { ...room, x: copy.x + room.x, y: copy.y + room.y });
}

type Point = readonly [x: number, y: number];

/** What of a stretch lies between two heights; `null` if nothing does. */
function between([x0, y0]: Point, [x1, y1]: Point, top: number, bottom: number): [Point, Point] | null {
  const at = (y: number): Point => [x0 + ((y - y0) / (y1 - y0)) * (x1 - x0), y];
  if (Math.max(y0, y1) < top || Math.min(y0, y1) > bottom) return null;
  const inside = ([x, y]: Point): Point => (y < top ? at(top) : y > bottom ? at(bottom) : [x, y]);
  return [inside([x0, y0]), inside([x1, y1])];
}

/** The outline of a copy: whole, or as much of it as this page shows. */
export function outlineMarks(
  scene: FilmScene,
  copy: LaidCopy,
  outline: readonly Ring[],
  style: { readonly thick: number; readonly tone?: Tone },
): Mark[] {
  const { page } = scene;
  const placed = outline.map((each) =>
    Array.from(
      { length: each.length / 2 },
      (_, at): Point => [
        acrossPage(scene, copy.x + (each[2 * at] ?? 0)),
        downPage(scene, copy.y + (each[2 * at + 1] ?? 0)),
      ],
    ),
  );
  if (copy.y >= page.from && copy.y + copy.length <= page.to)
    return placed.map((points) => ring(points, { ...style, copy: copy.id }));
  const [top, bottom] = [downPage(scene, page.from), downPage(scene, page.to)];
  return placed.flatMap((points) =>
    points.flatMap((point, at) => {
      const seen = between(points.at(at - 1) ?? point, point, top, bottom);
      return seen ? [line(...seen[0], ...seen[1], style)] : [];
    }),
  );
}
