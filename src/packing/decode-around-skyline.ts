import { AroundDecoder, type Room } from './decode-around';
import type { Pin, Strip } from './strip';

/** A stretch of the skyline: film from `x` to the next stretch is taken up to `y`. */
interface Stretch {
  x: number;
  y: number;
}

/** What keeps a stretch below it from growing: a pinned copy or film that may not be used. */
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
 * the stretches below it, and once a stretch has reached its far end, it is ground. Film below a pin that nothing fits into is
 * passed over.
 */
export class AroundSkylineDecoder extends AroundDecoder {
  private stretches: Stretch[] = [];
  /** No-print stretches, across the whole film. */
  private readonly ceilings: readonly Ceiling[];

  constructor(strip: Strip) {
    super(strip);
    this.ceilings = strip.blocks.map(({ from, to }) => ({
      x: 0,
      y: from,
      across: strip.width,
      along: to - from,
    }));
  }

  protected fill(room: Room): number {
    const { left, pins, from } = room;
    const { strip } = this;
    this.stretches = [{ x: 0, y: from }];
    let top = pins.reduce((far, pin) => Math.max(far, pin.y + pin.along), from);
    for (;;) {
      const at = this.lowest();
      const { x, y } = this.stretches[at] as Stretch;
      if (y >= room.to) return top;
      const end = this.stretches[at + 1]?.x ?? strip.width;
      const over = [
        ...pins.filter((pin) => pin.x < end && pin.x + pin.across > x && pin.y + pin.along > y),
        ...this.ceilings.filter((block) => block.y + block.along > y),
      ];
      const spot = this.choose(room, over, x, end, y);
      if (!spot) {
        if (!this.raise(at, over)) return top;
        continue;
      }
      this.place(room, spot.run, spot.turned, spot.x, y);
      this.cover(at, spot.x, spot.x + spot.w, y + spot.h, end);
      top = Math.max(top, y + spot.h);
      if (left.every((count) => count === 0)) return top;
    }
  }

  private lowest(): number {
    let at = 0;
    this.stretches.forEach(({ y }, index) => {
      if (y < (this.stretches[at] as Stretch).y) at = index;
    });
    return at;
  }

  /** The copy that leaves least of the stretch beside it unusable, the first in the sequence among equals. */
  private choose(
    { sequence, left, rule, to }: Room,
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

  /** Takes part of a stretch up to `far`, and joins it to neighbours as high. */
  private cover(at: number, from: number, to: number, far: number, end: number): void {
    const { x, y } = this.stretches[at] as Stretch;
    const parts: Stretch[] = [];
    if (from > x) parts.push({ x, y });
    parts.push({ x: from, y: far });
    if (to < end) parts.push({ x: to, y });
    this.stretches.splice(at, 1, ...parts);
    this.join();
  }

  /** Gives a stretch up to its lower neighbour or the nearest far end of a pin over it. False, if it has neither. */
  private raise(at: number, over: readonly Ceiling[]): boolean {
    const stretch = this.stretches[at] as Stretch;
    const levels = [
      this.stretches[at - 1]?.y,
      this.stretches[at + 1]?.y,
      ...over.map((pin) => pin.y + pin.along),
    ];
    const next = levels.reduce<number>(
      (least, level) => (level !== undefined && level > stretch.y ? Math.min(least, level) : least),
      Number.POSITIVE_INFINITY,
    );
    if (next === Number.POSITIVE_INFINITY) return false;
    stretch.y = next;
    this.join();
    return true;
  }

  private join(): void {
    this.stretches = this.stretches.filter(
      ({ y }, index) => index === 0 || this.stretches[index - 1]?.y !== y,
    );
  }
}
