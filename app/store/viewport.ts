import { fromMm, type Micrometres, um } from '../../src/units';

/**
 * What of the film is in view. The film lies across the screen, its leading edge at the left: a
 * rotation, `sx = y` and `sy = W - x`, never a swap of axes, which would mirror the artwork.
 */
export interface Viewport {
  /** How far along the film the left edge of the view is. */
  readonly along: number;
  /** How far from the film's far side, x = W, the top of the view is. */
  readonly down: number;
  /** Pixels a micrometre. */
  readonly scale: number;
}

/** A view of some pixels on a film of some width across, and a length worth looking at. */
export interface Frame {
  readonly pixels: { readonly width: number; readonly height: number };
  readonly film: { readonly width: Micrometres; readonly length: Micrometres };
}

const MOST_SCALE = 24 / fromMm(1);

/** The scale at which the film's whole width fills the height of the view. */
export const widthScale = ({ film, pixels }: Frame): number => pixels.height / film.width;

/** The scale at which the whole run is in view. */
export const runScale = (frame: Frame): number =>
  Math.min(widthScale(frame), frame.pixels.width / frame.film.length);

const clamp = (value: number, least: number, most: number) => Math.min(Math.max(value, least), most);

/** Keeps the film in view; a film narrower than the view lies in its middle. */
export function within(view: Viewport, frame: Frame): Viewport {
  const { film, pixels } = frame;
  const scale = clamp(view.scale, runScale(frame), MOST_SCALE);
  const spare = film.width - pixels.height / scale;
  return {
    scale,
    along: clamp(view.along, 0, Math.max(0, film.length - pixels.width / scale)),
    down: spare <= 0 ? spare / 2 : clamp(view.down, 0, spare),
  };
}

/** Zooms by a factor about a point of the screen, which stays where it is. */
export function zoomAbout(
  view: Viewport,
  factor: number,
  at: { x: number; y: number },
  frame: Frame,
): Viewport {
  const scale = clamp(view.scale * factor, runScale(frame), MOST_SCALE);
  const shift = 1 / view.scale - 1 / scale;
  return within({ scale, along: view.along + at.x * shift, down: view.down + at.y * shift }, frame);
}

/** The film's point under a point of the screen, in micrometres: x across, y along. */
export const toFilm = (view: Viewport, frame: Frame, at: { x: number; y: number }) => ({
  x: um(frame.film.width - (view.down + at.y / view.scale)),
  y: um(view.along + at.x / view.scale),
});

/** The screen's box of what lies on the film. */
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
