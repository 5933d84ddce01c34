import { type Build, emptyBuild, type Limits } from './build';
import type { Rule } from './decode';
import type { Sequence } from './sequence';
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
 * Builds layouts around copies that stay where they are, by the skyline rules of {@link Decoder}: a pin
 * is a ceiling over the stretches below it, and once a stretch has reached its far end, it is ground. Film below a
 * pin that nothing fits into is passed over. On a roll, `y` counts from the strip's beginning and all copies are
 * in bin 0; where the roll is cut into spans, copies keep clear of lines that would cut no pin either.
 */
export class AroundDecoder {
  readonly build: Build;
  private readonly strip: Strip;
  private stretches: Stretch[] = [];
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

  /** Builds the layout of a sequence into {@link build}. */
  decode(sequence: Sequence, rule: Rule, limits: Limits): Build {
    const { strip, build } = this;
    const left = [...sequence.count];
    let copies = left.reduce((sum, count) => sum + count, 0);
    build.length = 0;
    build.bins = 0;
    if (strip.bins.kind === 'sheets') {
      const last = strip.pins.reduce((most, pin) => Math.max(most, pin.sheet), -1);
      for (let sheet = 0; sheet < limits.most && (sheet <= last || copies > 0); sheet += 1) {
        const pins = strip.pins.filter((pin) => pin.sheet === sheet);
        const before = build.length;
        const top = this.fill({ sequence, left, rule, pins, from: 0, to: limits.other, bin: sheet });
        copies -= build.length - before;
        if (build.length === before && sheet > last) break;
        build.tops[sheet] = top;
        build.bins = sheet + 1;
      }
    } else {
      build.tops[0] = this.fillRoll(sequence, left, rule, limits);
      build.bins = 1;
    }
    build.unplacedArea = left.reduce((sum, count, run) => {
      const piece = sequence.piece[run] as number;
      return sum + count * (strip.across[piece] as number) * (strip.along[piece] as number);
    }, 0);
    return build;
  }

  /** Fills one span after the other; a roll that is not cut is a single one. */
  private fillRoll(sequence: Sequence, left: number[], rule: Rule, limits: Limits): number {
    const { pins, blocks, bins } = this.strip;
    const pinned = pins.reduce((far, pin) => Math.max(far, pin.y + pin.along), 0);
    const hindered = blocks.reduce((far, { to }) => Math.max(far, to), pinned);
    let from = 0;
    let top = pinned;
    for (let first = true; left.some((count) => count > 0); first = false) {
      const to = Math.min(from + (first ? limits.first : limits.other), limits.total);
      const end = bins.kind === 'spans' ? this.lineBefore(from, to) : to;
      const inside = pins.filter((pin) => pin.y < end && pin.y + pin.along > from);
      const before = this.build.length;
      const filled = this.fill({ sequence, left, rule, pins: inside, from, to: end, bin: 0 });
      top = Math.max(top, filled);
      const stuck = this.build.length === before && filled <= from;
      if (bins.kind !== 'spans' || end <= from || (stuck && from >= hindered)) break;
      from = (stuck ? end : filled) + bins.between;
    }
    return top;
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
