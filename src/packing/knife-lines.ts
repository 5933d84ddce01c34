import { fromMm, type Micrometres, um } from '../units';
import type { Span } from './problem';
import type { Rect } from './rules';

/** A band across the film that no copy, grown by half a gap, reaches into: a knife line may lie in it. */
interface Band {
  readonly from: number;
  readonly to: number;
}

/** How a film is cut. */
interface Cutting {
  readonly gap: Micrometres;
  /** `null` if it is not cut. */
  readonly spanMax: Micrometres | null;
  /** Blank film after each line, before the next copy. */
  readonly cutBlank: Micrometres;
  /** Lead and tail included. */
  readonly lengthUsed: Micrometres;
}

/** The bands between copies, from the leading edge on. */
function freeBands(copies: readonly Rect[], { gap, cutBlank, lengthUsed }: Cutting): Band[] {
  const sorted = [...copies].sort((a, b) => a.y - b.y);
  const bands: Band[] = [];
  let reached = 0;
  for (const copy of sorted) {
    const from = copy.y - Math.max(gap / 2, cutBlank);
    if (from >= reached) bands.push({ from: reached, to: from });
    reached = Math.max(reached, copy.y + copy.length + gap / 2);
  }
  if (lengthUsed >= reached) bands.push({ from: reached, to: lengthUsed });
  return bands;
}

const MM = fromMm(1);

/** The furthest line that a span starting at `from` can reach; whole millimetres where a band has one. */
function furthest(bands: readonly Band[], from: number, spanMax: number, wholeMm: boolean): number | null {
  const reach = from + spanMax;
  for (let index = bands.length - 1; index >= 0; index -= 1) {
    const band = bands[index];
    if (!band || band.from > reach) continue;
    const line = Math.min(band.to, reach);
    const rounded = Math.floor(line / MM) * MM;
    const at = wholeMm && rounded >= band.from ? rounded : line;
    if (at > from) return at;
  }
  return null;
}

/** Lines by greed: each as far along as a span allows, which takes the fewest. `null` if a span finds none. */
function fewestLines(
  bands: readonly Band[],
  spanMax: number,
  lengthUsed: number,
  wholeMm: boolean,
): number[] | null {
  const lines: number[] = [];
  let from = 0;
  while (lengthUsed - from > spanMax) {
    const line = furthest(bands, from, spanMax, wholeMm);
    if (line === null) return null;
    lines.push(line);
    from = line;
  }
  return lines;
}

/**
 * Moves each line, from the last to the first, to the middle of its band as far as the spans beside it
 * allow, so that the blade has room on both sides.
 */
function centred(
  lines: readonly number[],
  bands: readonly Band[],
  spanMax: number,
  lengthUsed: number,
): number[] {
  const moved = [...lines];
  for (let index = moved.length - 1; index >= 0; index -= 1) {
    const line = moved[index] ?? 0;
    const next = moved[index + 1] ?? lengthUsed;
    const band = bands.find(({ from, to }) => line >= from && line <= to);
    if (!band) continue;
    // Only back towards the leading edge: the span before it gets shorter, the one after is checked.
    const least = Math.max(band.from, next - spanMax, (moved[index - 1] ?? 0) + 1);
    const middle = Math.round((band.from + Math.min(band.to, lengthUsed)) / 2 / MM) * MM;
    const wish = Math.min(line, Math.max(middle, Math.ceil(least / MM) * MM));
    if (wish >= least && wish >= band.from && wish <= band.to) moved[index] = wish;
  }
  return moved;
}

/**
 * Where a film is cut across: the fewest straight lines that keep every span within `spanMax` and half
 * a gap off every copy, on whole millimetres where there is room.
 * @param copies where they lie
 * @returns the spans from 0 to the length used; `null` if no lines can part the copies so
 */
export function knifeLines(copies: readonly Rect[], cutting: Cutting): Span[] | null {
  const { spanMax, lengthUsed } = cutting;
  if (lengthUsed <= 0) return [];
  if (spanMax === null || lengthUsed <= spanMax) return [{ from: um(0), to: lengthUsed }];
  const bands = freeBands(copies, cutting);
  const lines =
    fewestLines(bands, spanMax, lengthUsed, true) ?? fewestLines(bands, spanMax, lengthUsed, false);
  if (!lines) return null;
  const ends = [...centred(lines, bands, spanMax, lengthUsed), lengthUsed];
  return ends.map((to, index) => ({ from: um(ends[index - 1] ?? 0), to: um(to) }));
}
