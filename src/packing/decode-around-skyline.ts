import { AroundDecoder, type Section } from './decode-around';
import type { Pin, Strip } from './strip';

/** A segment of the skyline: film from `x` to the next segment is taken up to `y`. */
interface Segment {
  x: number;
  y: number;
}

/** What keeps a segment below it from growing: a pinned copy or film that may not be used. */
type Ceiling = Pick<Pin, 'x' | 'y' | 'across' | 'along'>;

interface Spot {
  readonly run: number;
  readonly turned: number;
  readonly x: number;
  readonly w: number;
  readonly h: number;
}

/**
 * Builds layouts around copies that stay where they are, by the skyline rules of the `SkylineDecoder`: a pin is a ceiling over
 * the segments below it, and once a segment has reached its far end, it is ground. Film below a pin that nothing fits into is
 * passed over.
 */
export class AroundSkylineDecoder extends AroundDecoder {
  private segments: Segment[] = [];
  /** No-print stretches, across the whole film. */
  private readonly ceilings: readonly Ceiling[];

  constructor(strip: Strip) {
    super(strip);
    this.ceilings = strip.noPrint.map(({ from, to }) => ({
      x: 0,
      y: from,
      across: strip.width,
      along: to - from,
    }));
  }

  protected fill(section: Section): number {
    const { left, pins, from } = section;
    const { strip } = this;
    this.segments = [{ x: 0, y: from }];
    let top = pins.reduce((far, pin) => Math.max(far, pin.y + pin.along), from);
    for (;;) {
      const at = this.lowest();
      const { x, y } = this.segments[at] as Segment;
      if (y >= section.to) return top;
      const end = this.segments[at + 1]?.x ?? strip.width;
      const over = [
        ...pins.filter((pin) => pin.x < end && pin.x + pin.across > x && pin.y + pin.along > y),
        ...this.ceilings.filter((ceiling) => ceiling.y + ceiling.along > y),
      ];
      const spot = this.choose(section, over, x, end, y);
      if (!spot) {
        if (!this.raise(at, over)) return top;
        continue;
      }
      this.place(section, spot.run, spot.turned, spot.x, y);
      this.cover(at, spot.x, spot.x + spot.w, y + spot.h, end);
      top = Math.max(top, y + spot.h);
      if (left.every((count) => count === 0)) return top;
    }
  }

  private lowest(): number {
    let at = 0;
    this.segments.forEach(({ y }, index) => {
      if (y < (this.segments[at] as Segment).y) at = index;
    });
    return at;
  }

  /** The copy that leaves least of the segment beside it unusable, the first in the sequence among equals. */
  private choose(
    { sequence, left, rule, to }: Section,
    over: readonly Ceiling[],
    x: number,
    end: number,
    y: number,
  ): Spot | null {
    const { across, along, turns, width } = this.strip;
    const edges = [x, ...over.map((pin) => pin.x + pin.across)];
    const ends = [end, ...over.map((pin) => pin.x)];
    let best: Spot | null = null;
    let least = Number.POSITIVE_INFINITY;
    for (let run = 0; run < left.length; run += 1) {
      if (left[run] === 0) continue;
      const piece = sequence.piece[run] as number;
      for (let turned = 0; turned <= (turns[piece] as number); turned += 1) {
        const w = (turned === 0 ? across[piece] : along[piece]) as number;
        const h = (turned === 0 ? along[piece] : across[piece]) as number;
        if (y + h > to) continue;
        for (const candidate of [...edges, ...ends.map((limit) => limit - w)]) {
          if (candidate < x || candidate + w > end) continue;
          const clear = over.every(
            (pin) => candidate + w <= pin.x || pin.x + pin.across <= candidate || y + h <= pin.y,
          );
          if (!clear) continue;
          const rest = Math.max(0, end - x - w - rule.waste * width);
          if (rest < least) {
            best = { run, turned, x: candidate, w, h };
            least = rest;
          }
          break;
        }
      }
      if (least === 0) return best;
    }
    return best;
  }

  /** Takes part of a segment up to `far`, and joins it to neighbours as high. */
  private cover(at: number, from: number, to: number, far: number, end: number): void {
    const { x, y } = this.segments[at] as Segment;
    const parts: Segment[] = [];
    if (from > x) parts.push({ x, y });
    parts.push({ x: from, y: far });
    if (to < end) parts.push({ x: to, y });
    this.segments.splice(at, 1, ...parts);
    this.join();
  }

  /** Gives a segment up to its lower neighbour or the nearest far end of a pin over it. False, if it has neither. */
  private raise(at: number, over: readonly Ceiling[]): boolean {
    const segment = this.segments[at] as Segment;
    const levels = [
      this.segments[at - 1]?.y,
      this.segments[at + 1]?.y,
      ...over.map((pin) => pin.y + pin.along),
    ];
    const next = levels.reduce<number>(
      (least, level) => (level !== undefined && level > segment.y ? Math.min(least, level) : least),
      Number.POSITIVE_INFINITY,
    );
    if (next === Number.POSITIVE_INFINITY) return false;
    segment.y = next;
    this.join();
    return true;
  }

  private join(): void {
    this.segments = this.segments.filter(({ y }, index) => index === 0 || this.segments[index - 1]?.y !== y);
  }
}
