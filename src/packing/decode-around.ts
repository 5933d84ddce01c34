import { type Build, type Decoder, emptyBuild, type Floor, type Limits, type Rule } from './build';
import { byOrder, type Sequence } from './sequence';
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
 * Builds layouts around copies that stay where they are, by the skyline rules of the `SkylineDecoder`: a pin
 * is a ceiling over the stretches below it, and once a stretch has reached its far end, it is ground. Film below a
 * pin that nothing fits into is passed over. On a roll, `y` counts from the strip's beginning and all copies are
 * in bin 0; where the roll is cut into spans, copies keep clear of lines that would cut no pin either.
 */
export class AroundDecoder implements Decoder {
  private readonly build: Build;
  private readonly strip: Strip;
  private stretches: Stretch[] = [];
  /** Where the span that is being filled ends at the latest. */
  private spanEnd = 0;
  /** No-print stretches, across the whole film. */
  private readonly ceilings: readonly Ceiling[];

  constructor(strip: Strip) {
    this.strip = strip;
    this.ceilings = strip.blocks.map(({ from, to }) => ({
      x: 0,
      y: from,
      across: strip.width,
      along: to - from,
    }));
    this.build = emptyBuild(strip);
  }

  decode(sequence: Sequence, rule: Rule, limits: Limits): Build {
    const { strip, build } = this;
    build.length = 0;
    build.bins = 0;
    build.tops.fill(0);
    build.unplacedArea = 0;
    for (const { sheet, y, along } of strip.pins)
      this.reach(strip.bins.kind === 'sheets' ? sheet : 0, y + along);
    let floor: Floor = { bin: 0, y: 0 };
    const parts = strip.together.kind === 'apart' ? byOrder(sequence, strip) : [sequence];
    for (const part of parts) {
      const left = [...part.count];
      floor =
        strip.bins.kind === 'sheets'
          ? this.fillSheets(part, left, rule, limits, floor)
          : this.fillRoll(part, left, rule, limits, floor);
      part.piece.forEach((piece, run) => {
        build.unplacedArea +=
          (left[run] as number) * (strip.across[piece] as number) * (strip.along[piece] as number);
      });
    }
    return build;
  }

  /** Copies reach so far along a bin. */
  private reach(bin: number, y: number): void {
    const { build } = this;
    build.bins = Math.max(build.bins, bin + 1);
    build.tops[bin] = Math.max(build.tops[bin] as number, y);
  }

  /**
   * Fills one sheet after the other.
   * @returns where the copies of the next order may begin
   */
  private fillSheets(sequence: Sequence, left: number[], rule: Rule, limits: Limits, floor: Floor): Floor {
    const { strip, build } = this;
    const last = strip.pins.reduce((most, pin) => Math.max(most, pin.sheet), -1);
    let reached = floor;
    for (let bin = floor.bin; bin < limits.most && left.some((count) => count > 0); bin += 1) {
      const pins = strip.pins.filter((pin) => pin.sheet === bin);
      const before = build.length;
      const from = bin === floor.bin ? floor.y : 0;
      const top = this.fill({ sequence, left, rule, pins, from, to: limits.other, bin });
      if (build.length > before) {
        this.reach(bin, top);
        reached = { bin, y: this.farEnd(before) };
      } else if (bin > last && from === 0) break;
    }
    return reached;
  }

  /** How far the copies placed since reach. */
  private farEnd(since: number): number {
    const { build, strip } = this;
    let far = 0;
    for (let copy = since; copy < build.length; copy += 1) {
      const lengths = build.turned[copy] === 1 ? strip.across : strip.along;
      far = Math.max(far, (build.y[copy] as number) + (lengths[build.piece[copy] as number] as number));
    }
    return far;
  }

  /**
   * Fills one span after the other; a roll that is not cut is a single one.
   * @returns where the copies of the next order may begin
   */
  private fillRoll(sequence: Sequence, left: number[], rule: Rule, limits: Limits, floor: Floor): Floor {
    const { build } = this;
    const { pins, blocks, bins } = this.strip;
    const pinned = pins.reduce((far, pin) => Math.max(far, pin.y + pin.along), 0);
    const hindered = blocks.reduce((far, { to }) => Math.max(far, to), pinned);
    const since = build.length;
    let from = floor.y;
    // What an order before it has left of a span may be too short for anything.
    let isWhole = from === 0;
    if (from === 0) this.spanEnd = this.endOf(from, limits.first, limits.total);
    for (;;) {
      const end = this.spanEnd;
      const inside = pins.filter((pin) => pin.y < end && pin.y + pin.along > from);
      const before = build.length;
      const filled = this.fill({ sequence, left, rule, pins: inside, from, to: end, bin: 0 });
      const stuck = build.length === before && filled <= from;
      if (left.every((count) => count === 0)) break;
      if (bins.kind !== 'spans' || end <= from || (stuck && isWhole && from >= hindered)) break;
      isWhole = true;
      from = this.beforePins((stuck ? end : filled) + bins.between, limits.other);
      this.spanEnd = this.endOf(from, limits.other, limits.total);
    }
    if (build.length === since) return floor;
    const far = this.farEnd(since);
    this.reach(0, far);
    return { bin: 0, y: far };
  }

  /**
   * Where a span begins, from a place on: as far on as it takes for pins ahead that no line parts to end in the same span. They
   * might be left with no line before them that is near enough.
   */
  private beforePins(from: number, longest: number): number {
    const { pins, bins } = this.strip;
    if (bins.kind !== 'spans') return from;
    const ahead = pins.filter((pin) => pin.y >= from).sort((a, b) => a.y - b.y);
    let reached = 0;
    for (const { y, along } of ahead) {
      if (reached > 0 && y >= reached + bins.between) break;
      reached = Math.max(reached, y + along);
    }
    const latest = ahead[0]?.y ?? from;
    return reached - longest <= latest ? Math.max(from, reached - longest) : from;
  }

  private endOf(from: number, longest: number, total: number): number {
    const to = Math.min(from + longest, total);
    return this.strip.bins.kind === 'spans' ? this.lineBefore(from, to) : to;
  }

  /** The furthest line up to `to` that crosses no pin; `to` itself where the pins leave none. */
  private lineBefore(from: number, to: number): number {
    const { pins, bins } = this.strip;
    let line = to;
    for (;;) {
      const crossed = pins.find((pin) => pin.y - bins.between < line && line < pin.y + pin.along);
      if (!crossed) return line;
      if (crossed.y - bins.between <= from) return to;
      line = crossed.y - bins.between;
    }
  }

  /**
   * Places what fits between two lines.
   * @returns how far copies and pins reach; `from` if there are none
   */
  private fill(room: {
    sequence: Sequence;
    left: number[];
    rule: Rule;
    pins: readonly Pin[];
    from: number;
    to: number;
    bin: number;
  }): number {
    const { sequence, left, pins, from, bin } = room;
    const { build, strip } = this;
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
      const index = build.length;
      build.piece[index] = sequence.piece[spot.run] as number;
      build.turned[index] = spot.turned;
      build.bin[index] = bin;
      build.x[index] = spot.x;
      build.y[index] = y;
      build.length += 1;
      left[spot.run] = (left[spot.run] as number) - 1;
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
    { sequence, left, rule, to }: { sequence: Sequence; left: readonly number[]; rule: Rule; to: number },
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
