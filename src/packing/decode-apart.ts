import { type Build, type Decoder, emptyBuild, type Floor, type Limits, type Rule } from './build';
import { byOrder, type Sequence } from './sequence';
import type { Strip } from './strip';

/**
 * Builds layouts in which every order has a stretch of the film to itself: one order after the other by another decoder,
 * each from where the one before it ends. On a roll that is not cut the soonest order comes first; on spans and sheets the
 * sequence decides, since some orders fill up what others leave.
 */
export class ApartDecoder implements Decoder {
  private readonly build: Build;
  private readonly strip: Strip;
  private readonly inner: Decoder;

  /** @param inner builds from the beginning of a strip: no copies are pinned on it */
  constructor(strip: Strip, inner: Decoder) {
    this.strip = strip;
    this.inner = inner;
    this.build = emptyBuild(strip);
  }

  decode(sequence: Sequence, rule: Rule, limits: Limits): Build {
    const { build, strip } = this;
    build.length = 0;
    build.bins = 1;
    build.unplacedArea = 0;
    build.tops[0] = 0;
    let floor: Floor = { bin: 0, y: 0 };
    // Film of the bins that are closed.
    let closed = 0;
    for (const own of byOrder(sequence, strip)) {
      const cap = floor.bin === 0 ? limits.first : limits.other;
      const part = this.inner.decode(own, rule, {
        first: cap - floor.y,
        other: limits.other,
        total: limits.total - closed - floor.y,
        most: limits.most - floor.bin,
      });
      build.unplacedArea += part.unplacedArea;
      if (part.length === 0) continue;
      for (let bin = 0; bin < part.bins; bin += 1) {
        if (bin > 0) {
          closed += (build.tops[floor.bin + bin - 1] as number) + strip.bins.between;
          build.tops[floor.bin + bin] = 0;
        }
        const top = part.tops[bin] as number;
        const from = bin === 0 ? floor.y : 0;
        build.tops[floor.bin + bin] = top > 0 ? from + top : from;
      }
      this.append(part, floor);
      const bin = floor.bin + part.bins - 1;
      floor = { bin, y: build.tops[bin] as number };
    }
    build.bins = build.length === 0 ? 0 : floor.bin + 1;
    return build;
  }

  private append(part: Build, floor: Floor): void {
    const { build } = this;
    for (let copy = 0; copy < part.length; copy += 1) {
      const at = build.length + copy;
      const bin = part.bin[copy] as number;
      build.piece[at] = part.piece[copy] as number;
      build.turned[at] = part.turned[copy] as number;
      build.bin[at] = floor.bin + bin;
      build.x[at] = part.x[copy] as number;
      build.y[at] = (part.y[copy] as number) + (bin === 0 ? floor.y : 0);
    }
    build.length += part.length;
  }
}
