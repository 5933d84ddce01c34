/** A point of the view, in pixels. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** What fingers, pens, mice and wheels mean on the film. */
export interface GestureTarget {
  /** The copy under a point, and whether a touch there may lift it at once. */
  copyAt(point: Point): { id: string; liftable: boolean } | null;
  /** `extend` adds to what is selected. */
  tap(point: Point, extend: boolean): void;
  /** A frame is drawn around copies; `null` when it is broken off. */
  frame(box: { from: Point; to: Point } | null): void;
  /** What the frame holds is selected. */
  endFrame(): void;
  /** Whether the handle that the selected copy is turned by is under a point. */
  handleAt(point: Point): boolean;
  /** Takes the copy by its handle. */
  startTurn(from: Point): void;
  turn(to: Point): void;
  lift(id: string, from: Point): void;
  carry(to: Point): void;
  drop(): void;
  /** The copy goes back to where it lay: the gesture was broken off. */
  putBack(): void;
  pan(dx: number, dy: number): void;
  zoom(factor: number, at: Point): void;
}

/** A press that moves less than this, in pixels, is a tap. */
const SLOP = 5;

type Gesture =
  | { kind: 'none' }
  | { kind: 'press'; start: Point; copy: string | null; extend: boolean }
  | { kind: 'frame'; start: Point }
  | { kind: 'carry' }
  | { kind: 'turn' }
  | { kind: 'pan'; last: Point }
  | { kind: 'pinch'; distance: number; middle: Point };

const between = (a: Point, b: Point): Point => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
const distance = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);

/**
 * Listens to an element until the signal is aborted. A broken-off gesture (`pointercancel`, Escape, a
 * second finger) puts things back.
 */
export function listenForGestures(element: HTMLElement, target: GestureTarget, signal: AbortSignal): void {
  const pointers = new Map<number, Point>();
  let gesture: Gesture = { kind: 'none' };

  const pointOf = (event: PointerEvent | WheelEvent): Point => {
    const box = element.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  };

  const breakOff = (): void => {
    if (gesture.kind === 'carry' || gesture.kind === 'turn') target.putBack();
    if (gesture.kind === 'frame') target.frame(null);
    gesture = { kind: 'none' };
  };

  const startPinch = (): void => {
    breakOff();
    const [a, b] = [...pointers.values()];
    if (a && b) gesture = { kind: 'pinch', distance: distance(a, b), middle: between(a, b) };
  };

  const onDown = (event: PointerEvent): void => {
    if (event.pointerType === 'mouse' && event.button !== 0) return;
    pointers.set(event.pointerId, pointOf(event));
    element.setPointerCapture(event.pointerId);
    if (pointers.size === 2) startPinch();
    if (pointers.size > 1) return;
    const start = pointOf(event);
    if (target.handleAt(start)) {
      target.startTurn(start);
      gesture = { kind: 'turn' };
      return;
    }
    const copy = target.copyAt(start);
    const lifts = copy !== null && (event.pointerType === 'mouse' || copy.liftable);
    gesture = { kind: 'press', start, copy: lifts ? copy.id : null, extend: event.shiftKey };
  };

  const onMove = (event: PointerEvent): void => {
    if (!pointers.has(event.pointerId)) return;
    const point = pointOf(event);
    pointers.set(event.pointerId, point);
    if (gesture.kind === 'press' && distance(point, gesture.start) > SLOP) {
      if (gesture.extend) gesture = { kind: 'frame', start: gesture.start };
      else if (gesture.copy !== null) {
        target.lift(gesture.copy, gesture.start);
        gesture = { kind: 'carry' };
      } else gesture = { kind: 'pan', last: gesture.start };
    }
    if (gesture.kind === 'turn') target.turn(point);
    else if (gesture.kind === 'carry') target.carry(point);
    else if (gesture.kind === 'frame') target.frame({ from: gesture.start, to: point });
    else if (gesture.kind === 'pan') {
      target.pan(gesture.last.x - point.x, gesture.last.y - point.y);
      gesture = { kind: 'pan', last: point };
    } else if (gesture.kind === 'pinch') {
      const [a, b] = [...pointers.values()];
      if (!a || !b) return;
      const now = { distance: Math.max(1, distance(a, b)), middle: between(a, b) };
      target.pan(gesture.middle.x - now.middle.x, gesture.middle.y - now.middle.y);
      target.zoom(now.distance / gesture.distance, now.middle);
      gesture = { kind: 'pinch', ...now };
    }
  };

  const onUp = (event: PointerEvent): void => {
    if (!pointers.delete(event.pointerId)) return;
    if (gesture.kind === 'press') target.tap(pointOf(event), gesture.extend);
    if (gesture.kind === 'frame') target.endFrame();
    if (gesture.kind === 'carry' || gesture.kind === 'turn') target.drop();
    gesture = { kind: 'none' };
  };

  const onCancel = (event: PointerEvent): void => {
    pointers.delete(event.pointerId);
    breakOff();
  };

  const onWheel = (event: WheelEvent): void => {
    event.preventDefault();
    const pixels = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 24 : 1;
    // A pinch on a trackpad arrives as a wheel with Ctrl.
    if (event.ctrlKey || event.metaKey) target.zoom(Math.exp(-event.deltaY * pixels * 0.004), pointOf(event));
    else target.pan((event.deltaX + event.deltaY) * pixels, 0);
  };

  const onKey = (event: KeyboardEvent): void => {
    if (event.key === 'Escape' && ['carry', 'turn', 'frame'].includes(gesture.kind)) {
      event.stopPropagation();
      breakOff();
    }
  };

  element.addEventListener('pointerdown', onDown, { signal });
  element.addEventListener('pointermove', onMove, { signal });
  element.addEventListener('pointerup', onUp, { signal });
  element.addEventListener('pointercancel', onCancel, { signal });
  element.addEventListener('wheel', onWheel, { signal, passive: false });
  addEventListener('keydown', onKey, { signal, capture: true });
}
