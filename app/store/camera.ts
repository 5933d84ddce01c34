import { create } from 'zustand';
import { fromMm } from '../../src/units';
import { type Frame, seenLength, type Viewport, widthScale, within, zoomAbout } from './viewport';

/** How much film there is to look at beyond the last copy: room to put one down. */
export const ROOM_AHEAD = fromMm(400);

/** Lives until the tab closes; `null` before the canvas has been measured. */
interface Camera {
  readonly frame: Frame | null;
  readonly view: Viewport;
}

export const useCamera = create<Camera>(() => ({
  frame: null,
  view: { along: 0, down: 0, scale: 0 },
}));

/** Called when the canvas or the film is measured anew; the first time the whole width comes into view. */
export function setFrame(frame: Frame): void {
  useCamera.setState(({ view }) => ({
    frame,
    view: within(view.scale > 0 ? view : { ...view, scale: widthScale(frame) }, frame),
  }));
}

const change = (next: (view: Viewport, frame: Frame) => Viewport): void =>
  useCamera.setState(({ view, frame }) => (frame ? { view: within(next(view, frame), frame) } : {}));

export const panBy = (pixelsAlong: number, pixelsDown: number): void =>
  change((view) => ({
    ...view,
    along: view.along + pixelsAlong / view.scale,
    down: view.down + pixelsDown / view.scale,
  }));

export const panTo = (along: number): void => change((view) => ({ ...view, along }));

/** Zooms about a point of the view, or its middle. */
export const zoomBy = (factor: number, at?: { x: number; y: number }): void =>
  change((view, frame) =>
    zoomAbout(view, factor, at ?? { x: frame.pixels.width / 2, y: frame.pixels.height / 2 }, frame),
  );

export const zoomTo = (scaleOf: (frame: Frame) => number): void =>
  change((view, frame) => ({ ...view, scale: scaleOf(frame) }));

/** Brings a stretch of the film into view, if it is not. */
export const reveal = (from: number, to: number): void =>
  change((view, frame) => {
    const seen = seenLength(view, frame);
    const margin = fromMm(20);
    if (from >= view.along && to <= view.along + seen) return view;
    return { ...view, along: from < view.along ? from - margin : to + margin - seen };
  });

/** Brings boxes on the film into view, as large as they can be shown. */
export const fitIn = (
  boxes: readonly {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly length: number;
  }[],
): void =>
  change((view, { pixels, film }) => {
    if (boxes.length === 0) return view;
    const margin = fromMm(10);
    const from = Math.min(...boxes.map(({ y }) => y)) - margin;
    const to = Math.max(...boxes.map(({ y, length }) => y + length)) + margin;
    const near = Math.min(...boxes.map(({ x }) => x)) - margin;
    const far = Math.max(...boxes.map(({ x, width }) => x + width)) + margin;
    const scale = Math.min(pixels.width / (to - from), pixels.height / (far - near));
    return { scale, along: from, down: film.width - far };
  });
