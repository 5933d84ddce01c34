import { create } from 'zustand';
import type { LaidCopy, LaidRun } from '../../../src/layout';
import { contains } from '../../../src/outlines';
import { degreesOf, um } from '../../../src/units';
import { panBy, useCamera, zoomBy } from '../../store/camera';
import { carryTo, drop, hold, letGo, turnHeld, useHeld } from '../../store/held';
import { laidNow } from '../../store/selectors';
import { mayWrite } from '../../store/shop';
import { select, selectAlso, useView } from '../../store/view';
import { rowsOf, rowUnder, toFilm, toScreen } from '../../store/viewport';
import type { GestureTarget, Point } from './gestures';
import { directionOf, GRIP, handleOf, hasHandle, meantAngle, middleOf } from './turning';

/** How near a copy must come to be drawn to a place, in pixels. */
const REACH = 8;
/** Nearer to the view's ends than this, in pixels, a carried copy makes the film move on. */
const EDGE = 36;
/** How far the film moves on in a frame, in pixels. */
const EDGE_PAN = 10;

/** @param row the one that it is told by, if not the nearest */
function filmPoint(point: Point, row?: number) {
  const { view, frame } = useCamera.getState();
  return frame && toFilm(view, frame, point, row);
}

function copyUnder(point: Point) {
  const at = filmPoint(point);
  if (!at) return null;
  const boxes = laidNow()?.copies.filter(
    (copy) => at.x >= copy.x && at.x < copy.x + copy.width && at.y >= copy.y && at.y < copy.y + copy.length,
  );
  // Where boxes overlap, the copy is meant that is pointed at, and not one that leaves its box bare there.
  const inked = boxes?.find(
    ({ outline, x, y }) => !outline || contains({ rings: outline, x, y }, at.x, at.y),
  );
  return inked ?? boxes?.[0];
}

/** The copies that a box on the screen touches, in whatever rows. */
function copiesIn({ from, to }: { readonly from: Point; readonly to: Point }, run: LaidRun): LaidCopy[] {
  const { view, frame } = useCamera.getState();
  const rows = frame ? rowsOf(view, frame) : [];
  const [left, right] = [Math.min(from.x, to.x), Math.max(from.x, to.x)];
  const [top, bottom] = [Math.min(from.y, to.y), Math.max(from.y, to.y)];
  return run.copies.filter((copy) =>
    rows.some((row) => {
      const box = toScreen(row.view, run.film.width, copy);
      return (
        box.left < right &&
        box.left + box.width > left &&
        row.top + box.top < bottom &&
        row.top + box.top + box.height > top
      );
    }),
  );
}

/** The copy that has a handle, where it lies. */
function turnable(): LaidCopy | null {
  const { selected } = useView.getState();
  const chosen = laidNow()?.copies.filter(({ id }) => selected.has(id)) ?? [];
  return hasHandle(chosen) && mayWrite() ? (chosen[0] ?? null) : null;
}

/** From the direction of the pointer to the angle of the copy that is turned, in degrees, and the row that its handle was taken in. */
let turned = { by: 0, row: 0 };

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

/** The frame that is being drawn around copies, on the screen. Lives while it is drawn. */
export const useFrame = create<{ readonly box: { readonly from: Point; readonly to: Point } | null }>(() => ({
  box: null,
}));

/** What gestures do to the film that is being worked on. */
export const filmGestures: GestureTarget = {
  copyAt(point) {
    const copy = copyUnder(point);
    return copy ? { id: copy.id, liftable: useView.getState().selected.has(copy.id) } : null;
  },
  tap(point, held) {
    const copy = copyUnder(point);
    const extend = held || useView.getState().several;
    if (extend && copy) selectAlso([copy.id]);
    else if (copy) select(copy.id);
    else if (!extend) select();
  },
  frame: (box) => useFrame.setState({ box }),
  endFrame() {
    const { box } = useFrame.getState();
    useFrame.setState({ box: null });
    const run = laidNow();
    if (box && run) selectAlso(copiesIn(box, run).map(({ id }) => id));
  },
  handleAt(point) {
    const at = filmPoint(point);
    const { scale } = useCamera.getState().view;
    const [copy, film] = [turnable(), laidNow()?.film];
    if (!at || !copy || !film) return false;
    const handle = handleOf(copy, scale, film);
    return Math.hypot(at.x - handle.x, at.y - handle.y) * scale <= GRIP;
  },
  startTurn(from) {
    const [at, copy] = [filmPoint(from), turnable()];
    const { view, frame } = useCamera.getState();
    if (!at || !frame || !copy || !hold([copy.id])) return;
    turned = {
      by: degreesOf(copy.angle) - directionOf(middleOf(copy), at),
      row: rowUnder(view, frame, from.y),
    };
  },
  turn(to) {
    const [at, copy] = [filmPoint(to, turned.row), turnable()];
    if (at && copy && useHeld.getState().held)
      turnHeld(meantAngle(turned.by + directionOf(middleOf(copy), at), copy.transfer.turn));
  },
  lift(id, from) {
    const at = filmPoint(from);
    const { selected } = useView.getState();
    const others = selected.has(id) ? [...selected].filter((other) => other !== id) : [];
    if (!at || !hold([id, ...others])) return;
    if (!selected.has(id)) select(id);
    const held = useHeld.getState().held?.copies[0];
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
