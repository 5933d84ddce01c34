import { colourAt, differenceAt, luma } from './colour';
import { LEAST_ALPHA } from './trim';

/** What an edge was mixed with before its ground was cut away. */
export interface Fringe {
  readonly ground: '#ffffff' | '#000000';
  /** Of the edges of plain areas. */
  readonly share: number;
}

/** A fringe is so many pixels wide at most; as many more are looked at to tell that the area behind it is plain. */
export const FRINGE = 2;
const BEHIND = 3;
const OPAQUE = 250;
/** Plain areas differ by no more, and a fringe is lighter or darker in luma by no less. */
const PLAIN = 24;
const LIGHTER = 40;
/** Fainter pixels have lost their colour to rounding. */
const SHOWS = 64;
/** So many edges tell, and of so many of them a fringe is the image's (ours, no source). */
const LEAST_EDGES = 50;
const MANY = 0.3;

/** A run of pixels that is shorter has no area behind its two edges. */
const LEAST_RUN = 2 * (FRINGE + BEHIND);

/** Looks along rows and columns for edges of plain areas that are lighter, or darker, than what lies behind them. */
export function fringeFinder(width: number): {
  /** @param rgba whole rows, from the top of the image on */
  add(rgba: Uint8ClampedArray, rows: number): void;
  find(): Fringe | null;
} {
  let [edges, light, dark] = [0, 0, 0];
  /** An edge between a clear pixel and the first one of an area, which goes on by steps. */
  const look = (rgba: Uint8ClampedArray, first: number, step: number): void => {
    const behind = first + FRINGE * step;
    const colour = colourAt(rgba, behind);
    for (let at = 0; at < BEHIND; at += 1) {
      const other = behind + at * step;
      if ((rgba[4 * other + 3] as number) < OPAQUE || differenceAt(rgba, other, colour) > PLAIN) return;
    }
    edges += 1;
    const shown = (rgba[4 * first + 3] as number) >= SHOWS ? first : first + step;
    const apart = luma(colourAt(rgba, shown)) - luma(colour);
    if (apart > LIGHTER) light += 1;
    if (apart < -LIGHTER) dark += 1;
  };

  const lookAlong = (rgba: Uint8ClampedArray, start: number): void => {
    let wasClear = false;
    let from = start;
    const end = start + width;
    for (let at = start; at < end; at += 1) {
      const isClear = (rgba[4 * at + 3] as number) < LEAST_ALPHA;
      if (isClear === wasClear) continue;
      if (isClear && at - from >= LEAST_RUN) {
        if (from > start) look(rgba, from, 1);
        look(rgba, at - 1, -1);
      }
      wasClear = isClear;
      from = at;
    }
    if (!wasClear && from > start && end - from >= LEAST_RUN) look(rgba, from, 1);
  };

  /** How long the run is that each column is in, how many rows there were, and the last of them. */
  const runs = new Uint32Array(width);
  let known = 0;
  let last = new Uint8ClampedArray(0);
  const lookDown = (rgba: Uint8ClampedArray, first: number): void => {
    for (let x = 0; x < width; x += 1) {
      const at = first * width + x;
      const run = runs[x] as number;
      if ((rgba[4 * at + 3] as number) < LEAST_ALPHA) {
        if (run >= LEAST_RUN) look(rgba, at - width, -width);
        runs[x] = 0;
      } else {
        runs[x] = run + 1;
        if (run + 1 === LEAST_RUN && known > run) look(rgba, at - run * width, width);
      }
    }
    known += 1;
  };

  return {
    add(rgba, rows) {
      const before = last.length / (4 * width);
      const both = new Uint8ClampedArray(last.length + rgba.length);
      both.set(last);
      both.set(rgba, last.length);
      for (let row = 0; row < rows; row += 1) {
        lookAlong(rgba, row * width);
        lookDown(both, before + row);
      }
      last = both.slice(Math.max(0, both.length - 4 * width * LEAST_RUN));
    },
    find() {
      const most = Math.max(light, dark);
      if (edges < LEAST_EDGES || most < MANY * edges) return null;
      return { ground: light >= dark ? '#ffffff' : '#000000', share: most / edges };
    },
  };
}
