import type { LaidCopy, LaidRun } from '../layout';
import { areNearer, isOuter, type Ring } from '../outlines';
import type { Span } from '../packing';
import { fromMm, type Micrometres, um } from '../units';
import { copiesWithin } from './cuts';

/** A bar of black on the film. */
interface Bar {
  readonly x: Micrometres;
  readonly y: Micrometres;
  readonly width: Micrometres;
  readonly length: Micrometres;
}

/** A registration corner: an L of two bars whose angle is outwards, to the side and the end of its span that it is nearest to. */
interface Corner {
  readonly bars: readonly [across: Bar, along: Bar];
  /** Its six corners on the film. */
  readonly ring: Ring;
}

/** How far the arms reach, and how thick they are: as thick as the other bars that are printed in the waste. */
const ARM = fromMm(6);
const THICK = fromMm(0.6);
/** Between a corner and the line that is cut around the nearest copy, half a gap from it: what lies within is pressed with the copy. */
const CLEAR = fromMm(0.3);
/** From the ends of a span, where bars may mark the knife lines. */
const FROM_END = fromMm(1.2);
/** How far from its span's corner a registration corner is looked for, and in which steps. */
const REACH = fromMm(40);
const STEP = fromMm(2);

/** The L with its angle at a point, its arms reaching to where `right` and `down` point. */
function cornerAt(x: number, y: number, right: 1 | -1, down: 1 | -1): Corner {
  const bar = (width: number, length: number): Bar => ({
    x: um(right > 0 ? x : x - width),
    y: um(down > 0 ? y : y - length),
    width: um(width),
    length: um(length),
  });
  const [arm, thick] = [ARM, THICK];
  const ring = Float64Array.from(
    [
      [0, 0],
      [arm, 0],
      [arm, thick],
      [thick, thick],
      [thick, arm],
      [0, arm],
    ].flatMap(([across = 0, along = 0]) => [x + right * across, y + down * along]),
  );
  return { bars: [bar(ARM, THICK), bar(THICK, ARM)], ring };
}

const areNear = (bar: Bar, { x, y, width, length }: LaidCopy, clear: number): boolean =>
  bar.x < x + width + clear &&
  x < bar.x + bar.width + clear &&
  bar.y < y + length + clear &&
  y < bar.y + bar.length + clear;

/** Whether no copy is nearer to a registration corner than the knife needs, and all of it may be printed. */
function isFree({ film, spoiled }: LaidRun, { bars, ring }: Corner, copies: readonly LaidCopy[]): boolean {
  const noPrint = [...spoiled, ...(film.kind === 'roll' ? film.noPrint : [])];
  if (noPrint.some(({ from, to }) => bars.some(({ y, length }) => y < to && y + length > from))) return false;
  const lying = { rings: [ring], x: 0, y: 0 };
  const clear = film.gap / 2 + CLEAR;
  return copies.every(
    (copy) =>
      !bars.some((bar) => areNear(bar, copy, clear)) ||
      (copy.outline !== null &&
        // What stands in a hole would be pressed with the copy.
        !areNearer(lying, { rings: copy.outline.filter(isOuter), x: copy.x, y: copy.y }, clear)),
  );
}

const known = new WeakMap<LaidRun, Map<number, readonly Corner[]>>();

/**
 * The registration corners of a span, by which a contour cutter finds its lines on the printed film: at each of its four corners, as near as
 * there is waste to bear one. A corner without room has none. They follow from where copies lie, so that image and cut file have the same.
 */
export function spanCorners(run: LaidRun, span: Span): readonly Corner[] {
  const own = known.get(run) ?? new Map<number, readonly Corner[]>();
  known.set(run, own);
  const last = own.get(span.from);
  if (last) return last;
  const found = cornersOf(run, span);
  own.set(span.from, found);
  return found;
}

function cornersOf(run: LaidRun, span: Span): readonly Corner[] {
  const { width, margins, kind } = run.film;
  // The ends of a sheet are out of the printer's reach; on a roll they are blank film.
  const [lead, tail] = kind === 'sheets' ? [margins.lead, margins.tail] : [FROM_END, FROM_END];
  const [near, far] = [margins.left, width - margins.right];
  const [start, end] = [span.from + lead, span.to - tail];
  const reach = Math.min(REACH, (far - near) / 2 - ARM, (end - start) / 2 - ARM);
  const copies = copiesWithin(run.copies, span);
  const steps = Math.floor(reach / STEP);
  return [1, -1].flatMap((down) =>
    [1, -1].flatMap((right): Corner[] => {
      for (let away = 0; away <= steps; away += 1) {
        for (let across = away; across >= 0; across -= 1) {
          const x = right > 0 ? near + across * STEP : far - across * STEP;
          const y = down > 0 ? start + (away - across) * STEP : end - (away - across) * STEP;
          const corner = cornerAt(x, y, right as 1 | -1, down as 1 | -1);
          if (isFree(run, corner, copies)) return [corner];
        }
      }
      return [];
    }),
  );
}
