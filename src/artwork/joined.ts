import { area, FillRule, type Path64, type Paths64, type Point64, union } from 'clipper2-ts';

interface Link {
  readonly from: Point64;
  readonly to: Point64;
  readonly length: number;
}

/** The point of a stretch between two others that is nearest to a point. */
function nearestOn({ x, y }: Point64, a: Point64, b: Point64): Point64 {
  const [across, down] = [b.x - a.x, b.y - a.y];
  const whole = across * across + down * down;
  const share = whole === 0 ? 0 : Math.max(0, Math.min(1, ((x - a.x) * across + (y - a.y) * down) / whole));
  return { x: a.x + share * across, y: a.y + share * down };
}

/** The shortest way from the corners of one line to another line. */
function fromCorners(corners: Path64, line: Path64): Link {
  let best: Link = { from: { x: 0, y: 0 }, to: { x: 0, y: 0 }, length: Number.POSITIVE_INFINITY };
  for (const from of corners) {
    let a = line.at(-1) as Point64;
    for (const b of line) {
      const to = nearestOn(from, a, b);
      const length = Math.hypot(to.x - from.x, to.y - from.y);
      if (length < best.length) best = { from, to, length };
      a = b;
    }
  }
  return best;
}

/** The shortest way between two lines that do not cross: one of its ends is a corner. */
function linkOf(a: Path64, b: Path64): Link {
  const [out, back] = [fromCorners(a, b), fromCorners(b, a)];
  return out.length <= back.length ? out : back;
}

/** A bar along a link, that reaches as far into what lies at its ends as it is wide. */
function barOf({ from, to, length }: Link, width: number): Path64 {
  const [across, down] = length === 0 ? [1, 0] : [(to.x - from.x) / length, (to.y - from.y) / length];
  const corner = ({ x, y }: Point64, on: number, aside: number): Point64 => ({
    x: Math.round(x + on * across - aside * down),
    y: Math.round(y + on * down + aside * across),
  });
  const half = width / 2;
  return [
    corner(from, -width, -half),
    corner(to, width, -half),
    corner(to, width, half),
    corner(from, -width, half),
  ];
}

/**
 * Islands that fall apart when film is cut around them, as the letters of a name do, made one piece: each is tied to the nearest of
 * those that hang together by a bar (the shortest tree of all; R. C. Prim, Shortest connection networks and some generalizations, Bell System
 * Technical Journal 36(6), 1389-1401, 1957).
 * @param islands that do not overlap, without holes
 * @param width of a bar, in the unit of the islands
 */
export function joined(islands: Paths64, width: number): Paths64 {
  const [first, ...rest] = islands;
  if (!first || rest.length === 0) return islands;
  const waiting = rest.map((island) => ({ island, link: linkOf(first, island) }));
  const bars: Path64[] = [];
  while (waiting.length > 0) {
    let nearest = 0;
    waiting.forEach(({ link }, at) => {
      if (link.length < (waiting[nearest]?.link.length ?? 0)) nearest = at;
    });
    const [tied] = waiting.splice(nearest, 1);
    if (!tied) break;
    bars.push(barOf(tied.link, width));
    for (const each of waiting) {
      const link = linkOf(tied.island, each.island);
      if (link.length < each.link.length) each.link = link;
    }
  }
  // What bars enclose is no room for others.
  return union(
    [...islands, ...bars.map((bar) => (area(bar) > 0 ? bar : bar.toReversed()))],
    FillRule.NonZero,
  ).filter((path) => area(path) > 0);
}
