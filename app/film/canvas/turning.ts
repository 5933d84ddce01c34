import { type LaidCopy, onFilm } from '../../../src/layout';
import { type Angle, angleOf, type Turning } from '../../../src/units';
import { toScreen, type Viewport } from '../../store/viewport';
import type { CanvasColours } from './theme';

/** From a copy's top edge to the handle it is turned by, and the handle itself, in pixels. */
const AWAY = 30;
const KNOB = 9;
/** So near to the handle a press takes it: as wide as a finger. */
export const GRIP = 22;

/** A turn by hand rests at whole multiples of this, in degrees, */
const REST = 15;
/** where it is nearer than so many. */
const NEAR = 3;

interface FilmPoint {
  readonly x: number;
  readonly y: number;
}

/** Whether a copy is turned by a handle: there is one alone, and it may lie at another angle. */
export const hasHandle = (copies: readonly LaidCopy[]): boolean =>
  copies.length === 1 && copies.every(({ fixed, transfer }) => !fixed && transfer.turn !== 'fixed');

/** The middle of a copy's image, about which it is turned, on the film. */
export const middleOf = (copy: LaidCopy): FilmPoint =>
  onFilm(copy, copy.transfer.width / 2, copy.transfer.height / 2);

/**
 * Where the handle of a copy is on the film, above the top of its image, or below its foot where that is off the film; and where the
 * line to it begins.
 */
export function handleOf(
  copy: LaidCopy,
  scale: number,
  film: { readonly width: number },
): FilmPoint & { readonly from: FilmPoint } {
  const { width, height } = copy.transfer;
  const isOnFilm = ({ x, y }: FilmPoint) => x >= 0 && x <= film.width && y >= 0;
  const at = (edge: number, away: number) => ({
    ...onFilm(copy, width / 2, edge + away / scale),
    from: onFilm(copy, width / 2, edge),
  });
  const above = at(0, -AWAY);
  return isOnFilm(above) ? above : at(height, AWAY);
}

/** In which direction a point lies from another on the film, in degrees clockwise from the near end of the film. */
export const directionOf = (from: FilmPoint, to: FilmPoint): number =>
  (Math.atan2(to.x - from.x, from.y - to.y) * 180) / Math.PI;

/** The angle that a hand means: in whole degrees, drawn to whole steps, and one that the copy may lie at. */
export function meantAngle(degrees: number, turning: Turning): Angle {
  if (turning !== 'any') {
    const step = turning === 'half' ? 180 : 90;
    return angleOf(step * Math.round(degrees / step));
  }
  const rest = REST * Math.round(degrees / REST);
  return angleOf(Math.abs(rest - degrees) <= NEAR ? rest : Math.round(degrees));
}

/** The handle, on a line from its copy. */
export function paintHandle(
  context: CanvasRenderingContext2D,
  { view, run, colours }: { view: Viewport; run: { film: { width: number } }; colours: CanvasColours },
  copy: LaidCopy,
): void {
  const at = (point: FilmPoint) => toScreen(view, run.film.width, { ...point, width: 0, length: 0 });
  const handle = handleOf(copy, view.scale, run.film);
  const [from, knob] = [at(handle.from), at(handle)];
  context.strokeStyle = colours.accent;
  context.lineWidth = 1.5;
  context.beginPath();
  context.moveTo(from.left, from.top);
  context.lineTo(knob.left, knob.top);
  context.stroke();
  context.fillStyle = colours.surface;
  context.lineWidth = 3;
  context.beginPath();
  context.arc(knob.left, knob.top, KNOB, 0, 2 * Math.PI);
  context.fill();
  context.stroke();
}
