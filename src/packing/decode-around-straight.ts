import type { Decoder } from './build';
import { STAGES } from './cut-tree';
import { AroundDecoder, type Section } from './decode-around';
import { type FreePart, freeParts, type Part } from './free-parts';
import { isApart } from './problem';
import type { Pin, Strip } from './strip';

/**
 * Builds layouts around copies that stay where they are, of which straight cuts part every copy that is added: film as wide as
 * the strip is filled by a decoder for straight cuts, what is free beside and between pins in columns.
 */
export class AroundStraightDecoder extends AroundDecoder {
  private readonly inner: Decoder;
  private readonly most: number;
  /** What is free around the pins, by bin. */
  private readonly free = new Map<number, readonly FreePart[]>();

  /** @param inner builds layouts for the same cuts on an empty strip */
  constructor(strip: Strip, inner: Decoder) {
    super(strip);
    this.inner = inner;
    this.most = strip.cutting === 'staged' ? STAGES : Number.POSITIVE_INFINITY;
  }

  protected fill(section: Section): number {
    const { from, to, pins, bin, left } = section;
    let top = pins.reduce((far, pin) => Math.max(far, pin.y + pin.along), from);
    for (const part of this.partsOf(bin)) {
      const y = Math.max(from, part.y);
      const along = Math.min(to, part.y + part.along) - y;
      if (along <= 0) continue;
      const reached =
        part.stage <= 1 ? this.fillRows(section, y, along) : this.fillColumns(section, { ...part, y, along });
      top = Math.max(top, reached);
      if (left.every((count) => count === 0)) break;
    }
    return top;
  }

  private partsOf(bin: number): readonly FreePart[] {
    // The next order begins within what the one before it has left.
    const laid = isApart(this.strip.together) ? this.laidIn(bin) : [];
    if (laid.length > 0) return this.partsAround(bin, laid);
    const known = this.free.get(bin) ?? this.partsAround(bin, []);
    this.free.set(bin, known);
    return known;
  }

  private partsAround(bin: number, laid: readonly Part[]): FreePart[] {
    const { strip, most } = this;
    const whole: Part = { x: 0, y: 0, across: strip.width, along: Number.POSITIVE_INFINITY };
    const blocked = strip.noPrint.map(({ from, to }) => ({ ...whole, y: from, along: to - from }));
    const isHere = (pin: Pin) => strip.bins.kind !== 'sheets' || pin.sheet === bin;
    return freeParts([...strip.pins.filter(isHere), ...laid, ...blocked], whole, most);
  }

  /** The copies that have a place in a bin. */
  private laidIn(bin: number): Part[] {
    const { build, strip } = this;
    const parts: Part[] = [];
    for (let copy = 0; copy < build.length; copy += 1) {
      if (build.bin[copy] !== bin) continue;
      const piece = build.piece[copy] as number;
      const [a, b] = [strip.across[piece] as number, strip.along[piece] as number];
      const [across, along] = build.turned[copy] === 1 ? [b, a] : [a, b];
      parts.push({ x: build.x[copy] as number, y: build.y[copy] as number, across, along });
    }
    return parts;
  }

  /** Fills film as wide as the strip. */
  private fillRows(section: Section, y: number, along: number): number {
    const { sequence, left, rule } = section;
    const limits = { first: along, other: along, total: along, most: 1 };
    const part = this.inner.decode({ ...sequence, count: left }, rule, limits);
    const runs = new Map<number, number[]>();
    sequence.piece.forEach((piece, run) => {
      runs.set(piece, [...(runs.get(piece) ?? []), run]);
    });
    for (let copy = 0; copy < part.length; copy += 1) {
      const own = runs.get(part.piece[copy] as number) ?? [];
      const run = own.find((each) => (left[each] as number) > 0);
      if (run === undefined) continue;
      this.place(
        section,
        run,
        part.turned[copy] as number,
        part.x[copy] as number,
        y + (part.y[copy] as number),
      );
    }
    return part.length > 0 ? y + (part.tops[0] as number) : y;
  }

  /** Fills a part with columns of copies behind one another; where no more cuts are left, with one. */
  private fillColumns(section: Section, { x, y, across, along, stage }: FreePart): number {
    let top = y;
    let at = x;
    do {
      const wide = this.fillColumn(section, { x: at, y, across: x + across - at, along });
      if (wide === null) break;
      top = Math.max(top, wide.top);
      at += wide.across;
    } while (stage < this.most);
    return top;
  }

  /** Copies behind one another, each no wider than the first. */
  private fillColumn(section: Section, part: Part): { across: number; top: number } | null {
    let { across } = part;
    let y = part.y;
    for (let first = true; ; first = false) {
      const spot = this.choose(section, across, part.y + part.along - y);
      if (!spot) return first ? null : { across, top: y };
      this.place(section, spot.run, spot.turned, part.x, y);
      if (first) across = spot.w;
      y += spot.h;
    }
  }

  /** The first copy in the sequence that fits, the way its run would rather lie first. */
  private choose({ sequence, left }: Section, most: number, long: number) {
    const { across, along, turns } = this.strip;
    for (const [run, count] of left.entries()) {
      if (count === 0) continue;
      const piece = sequence.piece[run] as number;
      const [a, b] = [across[piece] as number, along[piece] as number];
      const preferred = turns[piece] === 1 ? (sequence.turned[run] as number) : 0;
      for (const turned of turns[piece] === 1 ? [preferred, 1 - preferred] : [0]) {
        const [w, h] = turned === 1 ? [b, a] : [a, b];
        if (w <= most && h <= long) return { run, turned, w, h };
      }
    }
    return null;
  }
}
