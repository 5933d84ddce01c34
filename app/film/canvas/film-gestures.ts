import { um } from '../../../src/units';
import { laidDraft } from '../../store/selectors';
import { useShop } from '../../store/shop';
import { select, useView } from '../../store/view';
import { carryTo, drop, hold, letGo, useHeld } from '../drag';
import { panBy, useCamera, zoomBy } from './camera';
import type { GestureTarget, Point } from './gestures';
import { toFilm } from './viewport';

/** How near a copy must come to be drawn to a place, in pixels. */
const REACH = 8;
/** Nearer to the view's ends than this, in pixels, a carried copy makes the film move on. */
const EDGE = 36;
/** How far the film moves on in a frame, in pixels. */
const EDGE_PAN = 10;

function filmPoint(point: Point) {
  const { view, frame } = useCamera.getState();
  return frame && toFilm(view, frame, point);
}

function copyUnder(point: Point) {
  const at = filmPoint(point);
  if (!at) return null;
  return laidDraft(useShop.getState().book)?.copies.find(
    (copy) => at.x >= copy.x && at.x < copy.x + copy.width && at.y >= copy.y && at.y < copy.y + copy.length,
  );
}

/** From the pointer to the held copy's corner, on the film. */
let grip = { x: 0, y: 0 };
let pointer: Point = { x: 0, y: 0 };

function carry(): void {
  const at = filmPoint(pointer);
  const { view } = useCamera.getState();
  if (at) carryTo(at.x - grip.x, at.y - grip.y, um(REACH / view.scale));
}

/** Moves the film under a copy that is carried to the view's end, as long as it is held there. */
function followHand(): void {
  const { frame } = useCamera.getState();
  if (!useHeld.getState().held || !frame) return;
  const direction = pointer.x < EDGE ? -1 : pointer.x > frame.pixels.width - EDGE ? 1 : 0;
  if (direction !== 0) {
    panBy(direction * EDGE_PAN, 0);
    carry();
  }
  requestAnimationFrame(followHand);
}

/** What gestures do to the film that is being worked on. */
export const filmGestures: GestureTarget = {
  copyAt(point) {
    const copy = copyUnder(point);
    return copy ? { id: copy.id, liftable: copy.id === useView.getState().selected } : null;
  },
  tap(point) {
    select(copyUnder(point)?.id ?? null);
  },
  lift(id, from) {
    const at = filmPoint(from);
    if (!at || !hold(id)) return;
    select(id);
    const held = useHeld.getState().held?.copy;
    if (held) grip = { x: at.x - held.x, y: at.y - held.y };
    pointer = from;
    requestAnimationFrame(followHand);
  },
  carry(to) {
    pointer = to;
    if (useHeld.getState().held) carry();
  },
  drop,
  putBack: letGo,
  pan: panBy,
  zoom: zoomBy,
};
