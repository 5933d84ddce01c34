import { fromMm, type Micrometres, um } from '../../src/units';

/**
 * What of the film is in view. The film lies across the screen, its leading edge at the left: a
 * rotation, `sx = y` and `sy = W - x`, never a swap of axes, which would mirror the artwork.
 */
export interface Viewport {
  /** How far along the film the left edge of the view is, in its first row. */
  readonly along: number;
  /** How far from the film's far side, x = W, the top of the view is; nothing where its whole width is in view. */
  readonly down: number;
  /** Pixels a micrometre. */
  readonly scale: number;
}

interface Pixels {
  readonly width: number;
  readonly height: number;
}

/** A view of some pixels on a film of some width across, and a length worth looking at. */
export interface Frame {
  /** What the film itself has room in, if it lies in one row. */
  readonly pixels: Pixels;
  /** Pixels above and below each row, for its ruler and its flags. */
  readonly around: number;
  readonly film: { readonly width: Micrometres; readonly length: Micrometres };
}

/** A stretch of the film from one side of the screen to the other. */
export interface Row {
  /** Where its film begins, from the top of what one row would have room in. */
  readonly top: number;
  readonly view: Viewport;
  readonly pixels: Pixels;
}

const MOST_SCALE = 24 / fromMm(1);
/** Rows that fit but for an error of rounding. */
const EPSILON = 1e-6;

/** The scale at which the film's whole width fills the height of the view. */
export const widthScale = ({ film, pixels }: Frame): number => pixels.height / film.width;

/** The largest scale at which the whole run is in view, in as many rows as that takes. */
export function runScale({ film, pixels, around }: Frame): number {
  let best = 0;
  for (let rows = 1; ; rows += 1) {
    const tallest = ((pixels.height + around) / rows - around) / film.width;
    // More rows are no taller.
    if (tallest <= best) return best;
    best = Math.max(best, Math.min(tallest, (rows * pixels.width) / film.length));
  }
}

/** In how many rows the film is shown: where it is small enough, its next stretch lies below. */
const rowsAt = (scale: number, { film, pixels, around }: Frame): number =>
  Math.max(1, Math.floor((pixels.height + around) / (film.width * scale + around) + EPSILON));

/** How much of the film is in view, along it. */
export const seenLength = ({ scale }: Pick<Viewport, 'scale'>, frame: Frame): number =>
  (rowsAt(scale, frame) * frame.pixels.width) / scale;

/** The rows of a view, in the middle of its height. */
export function rowsOf(view: Viewport, frame: Frame): Row[] {
  const { film, pixels, around } = frame;
  const count = rowsAt(view.scale, frame);
  const height = Math.min(film.width * view.scale, pixels.height);
  const first = (pixels.height + around - count * (height + around)) / 2;
  const length = pixels.width / view.scale;
  return Array.from({ length: count }, (_, at) => ({
    top: first + at * (height + around),
    view: { ...view, along: view.along + at * length },
    pixels: { width: pixels.width, height },
  })).filter((row, at) => at === 0 || row.view.along < film.length);
}

/** The row that a height of the screen is nearest to, and its turn. */
function rowAt(view: Viewport, frame: Frame, y: number): { row: Row; index: number } {
  const rows = rowsOf(view, frame);
  const index = Math.max(
    0,
    rows.findLastIndex(({ top }) => y >= top - frame.around / 2),
  );
  const row = rows[index];
  if (!row) throw new RangeError('a view without a row');
  return { row, index };
}

const clamp = (value: number, least: number, most: number) => Math.min(Math.max(value, least), most);

/** Keeps the film in view. */
export function within(view: Viewport, frame: Frame): Viewport {
  const { film, pixels } = frame;
  const scale = clamp(view.scale, runScale(frame), MOST_SCALE);
  return {
    scale,
    along: clamp(view.along, 0, Math.max(0, film.length - seenLength({ scale }, frame))),
    down: clamp(view.down, 0, Math.max(0, film.width - pixels.height / scale)),
  };
}

/** Zooms by a factor about a point of the screen, which stays where it is, or in its row. */
export function zoomAbout(
  view: Viewport,
  factor: number,
  at: { x: number; y: number },
  frame: Frame,
): Viewport {
  const scale = clamp(view.scale * factor, runScale(frame), MOST_SCALE);
  const { row, index } = rowAt(view, frame, at.y);
  const along = row.view.along + at.x / view.scale;
  const rows = Math.min(index, rowsAt(scale, frame) - 1);
  const down = view.down + (at.y - row.top) / view.scale;
  return within(
    { scale, along: along - (rows * frame.pixels.width + at.x) / scale, down: down - at.y / scale },
    frame,
  );
}

/** The number of the row that a height of the screen is nearest to. */
export const rowUnder = (view: Viewport, frame: Frame, y: number): number => rowAt(view, frame, y).index;

/**
 * The film's point under a point of the screen, in micrometres: x across, y along.
 * @param held the number of the row that it is told by, however far beyond its film; the nearest, where none is told
 */
export function toFilm(view: Viewport, frame: Frame, at: { x: number; y: number }, held?: number) {
  const nearest = rowAt(view, frame, at.y).row;
  const row = held === undefined ? nearest : (rowsOf(view, frame)[held] ?? nearest);
  return {
    x: um(frame.film.width - (row.view.down + (at.y - row.top) / view.scale)),
    y: um(row.view.along + at.x / view.scale),
  };
}

/** The box of what lies on the film, in a row of it. */
export const toScreen = (
  view: Viewport,
  filmWidth: number,
  box: { readonly x: number; readonly y: number; readonly width: number; readonly length: number },
) => ({
  left: (box.y - view.along) * view.scale,
  top: (filmWidth - box.x - box.width - view.down) * view.scale,
  width: box.length * view.scale,
  height: box.width * view.scale,
});
