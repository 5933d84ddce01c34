import { fromInches, type Micrometres } from '../units';
import type { Pitch } from './disc';
import type { Pixels } from './pixels';
import { softPixels } from './see-through';
import { takeOffParts } from './small-parts';
import type { PixelBox } from './trim';

/** Places along a side of a cell that are told apart: a power of two. */
const CELL = 128;
/** Points along a side of a pixel whose mean smooths the edges of dots. */
const POINTS = 3;
/** Up to this share of its cell a dot is a disc, and from the rest of it on a hole is one; between, they grow together. */
const DISC = 1 / 3;

/**
 * The tone from which on each place of a cell is ink: dots grow from the middle as discs, holes close around the corners as discs, and
 * between them a level of two cosines turns one into the other. As much of a cell is ink as its tone says.
 */
function thresholds(): Float32Array {
  const tones = new Float32Array(CELL * CELL);
  const between: { readonly at: number; readonly level: number }[] = [];
  for (let at = 0; at < tones.length; at += 1) {
    const [u, v] = [((at % CELL) + 0.5) / CELL - 0.5, (Math.floor(at / CELL) + 0.5) / CELL - 0.5];
    const dot = Math.PI * (u * u + v * v);
    const hole = Math.PI * ((0.5 - Math.abs(u)) ** 2 + (0.5 - Math.abs(v)) ** 2);
    if (dot <= DISC) tones[at] = dot;
    else if (hole <= DISC) tones[at] = 1 - hole;
    else between.push({ at, level: Math.cos(2 * Math.PI * u) + Math.cos(2 * Math.PI * v) });
  }
  between.sort((a, b) => b.level - a.level);
  for (const [rank, { at }] of between.entries()) {
    tones[at] = DISC + ((1 - 2 * DISC) * (rank + 0.5)) / between.length;
  }
  return tones;
}

/** How much of a cell a dot of a size takes. */
const shareOf = (least: number, lines: number): number =>
  (Math.PI * (least / 2) ** 2) / (fromInches(1) / lines) ** 2;

/** The most lines an inch at which dots of a size still leave room for tones. */
export const mostLines = (least: Micrometres): number =>
  Math.floor(fromInches(1) / (least / 2) / Math.sqrt(Math.PI / DISC));

/** Pixels with less of a dot are left clear: they would hold crumbs and the design together. */
const FAINT = 0.3;
/** What is narrower than so many times the smallest dot is no dot. */
const CRUMB = 0.9;
/** Points around a dot that tell whether it is cut. */
const AROUND = Array.from({ length: 8 }, (_, index) => (index * Math.PI) / 4);

/** In cells of the screen, along its two axes. */
type Place = readonly [across: number, down: number];

/** Tones nearer than this to nothing, or to all, are that. */
const CLEAR = 0.03;

/** Asks once for each place. */
function remembered(ask: (place: Place) => boolean): (across: number, down: number) => boolean {
  const known = new Map<number, boolean>();
  let last = { key: Number.NaN, is: false };
  return (across, down) => {
    const key = across * 65_536 + down;
    if (key === last.key) return last.is;
    const is = known.get(key) ?? ask([across, down]);
    known.set(key, is);
    last = { key, is };
    return is;
  };
}

/**
 * Breaks what is see-through into dots of the same colour: a screen of so many lines an inch at 45 degrees, whose ink covers as much
 * as the image was opaque (amplitude modulation; R. Ulichney, "Digital Halftoning", 1987). No dot and no hole is smaller than a size:
 * the palest tones are left out or drawn with the smallest dots, whichever is nearer, and the darkest likewise. What an edge would cut
 * is left out. Edges that are merely smoothed stay as they are.
 * @param image changed in place
 * @param box where the print begins, so that the dots of a picture of it alone lie alike
 * @param pitch micrometres a pixel
 */
export function screenSoft(
  image: Pixels,
  { lines, least }: { readonly lines: number; readonly least: Micrometres },
  box: PixelBox,
  pitch: Pitch,
): void {
  const { rgba, width, height } = image;
  const tones = thresholds();
  // Both axes of the screen lie at 45 degrees: a cell along them is this far across and down together.
  const side = fromInches(1) / lines;
  const cell = side * Math.SQRT2;
  // Drawn a little larger, so that none measures smaller for its smoothed edge.
  const smallest = Math.min(DISC, shareOf(least + Math.sqrt(pitch.x * pitch.y) / 2, lines));
  const placeOf = (turns: number) => Math.floor(turns * CELL) & (CELL - 1);
  const screened = new Uint8Array(width * height);
  const radiusOf = (share: number) => Math.sqrt(Math.max(share, smallest) / Math.PI);

  const soft = softPixels(image);
  /** How opaque the image is at a place of the screen, in cells. */
  const toneAt = ([across, down]: Place): number =>
    soft.alphaAt(
      Math.floor(((across + down) * cell) / 2 / pitch.x) + box.x,
      Math.floor(((across - down) * cell) / 2 / pitch.y) + box.y,
    ) / 255;
  const ring = ([across, down]: Place, radius: number): Place[] =>
    AROUND.map((turn) => [across + radius * Math.cos(turn), down + radius * Math.sin(turn)]);
  /** A dot is there if its middle wants it and no edge of the image cuts it. */
  const isDot = remembered((place: Place) => {
    const tone = toneAt(place);
    if (tone < smallest / 2) return false;
    return ring(place, radiusOf(tone)).every((point) => toneAt(point) > CLEAR);
  });
  /** So is a hole, that leaves no thin line to an edge besides. */
  const isHole = remembered((place: Place) => {
    const open = 1 - toneAt(place);
    if (open < smallest / 2) return false;
    const radius = radiusOf(open);
    return (
      ring(place, radius).every((point) => toneAt(point) < 1 - CLEAR) &&
      ring(place, radius + least / side).every((point) => toneAt(point) > CLEAR)
    );
  });

  soft.each((at, alpha) => {
    screened[at] = 1;
    const [left, top] = [(at % width) - box.x, Math.floor(at / width) - box.y];
    const tone = alpha / 255;
    const [x, y] = [((left + 0.5) * pitch.x) / cell, ((top + 0.5) * pitch.y) / cell];
    let [inDot, inHole] = [tone, tone];
    if (tone < 0.5) {
      inDot = isDot(Math.floor(x + y) + 0.5, Math.floor(x - y) + 0.5) ? Math.max(tone, smallest) : 0;
    } else inHole = isHole(Math.round(x + y), Math.round(x - y)) ? Math.min(tone, 1 - smallest) : 1;
    let inked = 0;
    for (let point = 0; point < POINTS * POINTS; point += 1) {
      const x = ((left + ((point % POINTS) + 0.5) / POINTS) * pitch.x) / cell;
      const y = ((top + (Math.floor(point / POINTS) + 0.5) / POINTS) * pitch.y) / cell;
      const from = tones[placeOf(x - y) * CELL + placeOf(x + y)] as number;
      if ((from < 0.5 ? inDot : inHole) > from) inked += 1;
    }
    const share = inked / (POINTS * POINTS);
    if (share < FAINT) rgba.fill(0, 4 * at, 4 * at + 4);
    else rgba[4 * at + 3] = Math.round(255 * share);
  });
  const isScreened = ({ x, y, width: across, height: down }: PixelBox): boolean => {
    for (let row = y; row < y + down; row += 1) {
      if (screened.subarray(row * width + x, row * width + x + across).includes(1)) return true;
    }
    return false;
  };
  // Between holes that an edge cuts, crumbs are left.
  const isCrumb = (part: PixelBox) => Math.min(part.width * pitch.x, part.height * pitch.y) < CRUMB * least;
  takeOffParts(rgba, width, height, (part) => isCrumb(part) && isScreened(part));
}
