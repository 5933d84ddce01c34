import { type Build, type Decoder, emptyBuild, type Floor, type Limits, type Rule } from './build';
import { isApart } from './problem';
import { byOrder, type Sequence } from './sequence';
import type { Pin, Strip } from './strip';

/** Film between two lines that is to be filled. */
export interface Section {
  readonly sequence: Sequence;
  /** Copies of each run of the sequence that have no place yet. */
  readonly left: number[];
  readonly rule: Rule;
  /** The pins in it. */
  readonly pins: readonly Pin[];
  readonly from: number;
  readonly to: number;
  readonly bin: number;
}

/**
 * Builds layouts around copies that stay where they are and film that may not be used. On a roll, `y` counts from the strip's
 * beginning and all copies are in bin 0; where the roll is cut into spans, copies keep clear of lines that would cut no pin
 * either. How a section is filled is left to its kind.
 */
export abstract class AroundDecoder implements Decoder {
  protected readonly build: Build;
  protected readonly strip: Strip;
  /** Where the span that is being filled ends at the latest. */
  private spanEnd = 0;

  constructor(strip: Strip) {
    this.strip = strip;
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
    let floor: Floor = { bin: strip.bins.printed, y: 0 };
    const parts = isApart(strip.together) ? byOrder(sequence, strip) : [sequence];
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
    const { pins, noPrint, bins } = this.strip;
    const pinned = pins.reduce((far, pin) => Math.max(far, pin.y + pin.along), 0);
    const hindered = noPrint.reduce((far, { to }) => Math.max(far, to), pinned);
    const since = build.length;
    let from = floor.y;
    // What an order before it has left of a span may be too short for anything.
    let isWhole = from === 0;
    if (from === 0) this.spanEnd = this.endOf(from, limits.first, limits.total);
    for (;;) {
      const isLast = this.endsWithPins();
      const end = this.spanEnd + (isLast ? bins.beyond : 0);
      const inside = pins.filter((pin) => pin.y < end && pin.y + pin.along > from);
      const before = build.length;
      const filled = this.fill({ sequence, left, rule, pins: inside, from, to: end, bin: 0 });
      const stuck = build.length === before && filled <= from;
      if (isLast || left.every((count) => count === 0)) break;
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

  /** Whether pins reach so far into the span that is being filled that no line can follow them: the roll ends with them. */
  private endsWithPins(): boolean {
    const { pins, bins } = this.strip;
    const across = pins.filter(({ y, along }) => y < this.spanEnd && y + along > this.spanEnd);
    const far = across.reduce((most, { y, along }) => Math.max(most, y + along), 0);
    return across.length > 0 && far <= this.spanEnd + bins.beyond;
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
   * Places what fits into a section.
   * @returns how far copies and pins reach; where the section begins if there are none
   */
  protected abstract fill(section: Section): number;

  /** Places a copy of a run of the sequence. */
  protected place({ sequence, left, bin }: Section, run: number, turned: number, x: number, y: number): void {
    const { build } = this;
    const index = build.length;
    build.piece[index] = sequence.piece[run] as number;
    build.turned[index] = turned;
    build.bin[index] = bin;
    build.x[index] = x;
    build.y[index] = y;
    build.length += 1;
    left[run] = (left[run] as number) - 1;
  }
}
