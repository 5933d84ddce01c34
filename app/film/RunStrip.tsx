import { useEffect, useRef, useState } from 'react';
import type { LaidRun } from '../../src/layout';
import { tintOf } from '../parts/tints';
import { panTo, useCamera } from '../store/camera';
import { useWords } from '../words';

/** The whole run, thin; the frame on it is what is in view, and dragging the frame scrolls. */
export function RunStrip({ run }: { run: LaidRun }) {
  const { film: words } = useWords();
  const canvas = useRef<HTMLCanvasElement>(null);
  const { view, frame } = useCamera();
  const [grip, setGrip] = useState<number | null>(null);
  const length = frame?.film.length ?? 0;

  useEffect(() => {
    if (canvas.current && length > 0) paintStrip(canvas.current, run, length);
  }, [run, length]);

  const seen = frame && view.scale > 0 ? frame.pixels.width / view.scale : 0;
  const alongAt = (event: React.PointerEvent<HTMLDivElement>): number => {
    const box = event.currentTarget.getBoundingClientRect();
    return ((event.clientX - box.left) / box.width) * length;
  };
  const percentOf = (part: number) => `${length > 0 ? Math.min(100, (100 * part) / length) : 0}%`;
  return (
    <div
      className="run-strip"
      title={words.overview}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        const at = alongAt(event);
        const inside = at >= view.along && at <= view.along + seen;
        setGrip(inside ? at - view.along : seen / 2);
        if (!inside) panTo(at - seen / 2);
      }}
      onPointerMove={(event) => grip !== null && panTo(alongAt(event) - grip)}
      onPointerUp={() => setGrip(null)}
      onPointerCancel={() => setGrip(null)}
    >
      <canvas ref={canvas} />
      <div className="frame" style={{ left: percentOf(view.along), width: percentOf(seen) }} />
    </div>
  );
}

/** The copies as boxes of their orders' tints, lying as on the film above; film that was spoiled is ruled. */
function paintStrip(canvas: HTMLCanvasElement, run: LaidRun, length: number): void {
  const box = canvas.getBoundingClientRect();
  canvas.width = box.width * devicePixelRatio;
  canvas.height = box.height * devicePixelRatio;
  const context = canvas.getContext('2d');
  if (!context) return;
  const along = canvas.width / length;
  const across = canvas.height / run.film.width;
  context.fillStyle = getComputedStyle(canvas).getPropertyValue('--film-edge');
  for (const { from, to } of run.spoiled) {
    for (let x = from * along; x < to * along; x += 4 * devicePixelRatio)
      context.fillRect(x, 0, devicePixelRatio, canvas.height);
  }
  for (const copy of run.copies) {
    context.fillStyle = tintOf(copy.order.tint);
    const top = (run.film.width - copy.x - copy.width) * across;
    context.fillRect(
      copy.y * along,
      top,
      Math.max(1, copy.length * along - 1),
      Math.max(1, copy.width * across - 1),
    );
  }
  context.fillStyle = getComputedStyle(canvas).getPropertyValue('--error');
  for (const { to } of run.spans?.slice(0, -1) ?? []) context.fillRect(to * along - 1, 0, 2, canvas.height);
}
