import { useEffect, useRef, useState } from 'react';
import type { LaidRun } from '../../src/layout';
import { contains } from '../../src/outlines';
import { spread } from '../parts/labels';
import { tintOf } from '../parts/tints';
import { panTo, useCamera } from '../store/camera';
import { seenLength } from '../store/viewport';
import { useWords } from '../words';
import { FONT } from './canvas/theme';

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

  const seen = frame && view.scale > 0 ? seenLength(view, frame) : 0;
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

/** A line under the film, for the codes of orders that have no copy large enough to bear one; in pixels. */
const CODES = 14;
const TEXT = 10;

/** The copies, by their outlines or boxes, in their orders' tints, lying as on the film above, with their codes; film that was spoiled is ruled. */
function paintStrip(canvas: HTMLCanvasElement, run: LaidRun, length: number): void {
  const box = canvas.getBoundingClientRect();
  canvas.width = box.width * devicePixelRatio;
  canvas.height = box.height * devicePixelRatio;
  const context = canvas.getContext('2d');
  if (!context) return;
  context.scale(devicePixelRatio, devicePixelRatio);
  const film = box.height - CODES;
  const along = box.width / length;
  const across = film / run.film.width;
  const style = getComputedStyle(canvas);
  context.fillStyle = style.getPropertyValue('--film-edge');
  for (const { from, to } of run.spoiled) {
    for (let x = from * along; x < to * along; x += 4) context.fillRect(x, 0, 1, film);
  }
  context.font = `700 ${TEXT}px ${FONT}`;
  context.textAlign = 'center';
  context.textBaseline = 'middle';
  const orders = new Map<string, { code: string; tint: number; at: number; isNamed: boolean }>();
  for (const copy of run.copies) {
    const { id, code, tint } = copy.order;
    const [width, height] = [Math.max(1, copy.length * along - 1), Math.max(1, copy.width * across - 1)];
    const [left, top] = [copy.y * along, (run.film.width - copy.x - copy.width) * across];
    context.fillStyle = tintOf(tint);
    if (copy.outline) {
      context.beginPath();
      for (const ring of copy.outline) {
        for (let at = 0; at < ring.length; at += 2) {
          const [x, y] = [copy.x + (ring[at] ?? 0), copy.y + (ring[at + 1] ?? 0)];
          context[at === 0 ? 'moveTo' : 'lineTo'](y * along, (run.film.width - x) * across);
        }
        context.closePath();
      }
      context.fill();
    } else context.fillRect(left, top, width, height);
    const order = orders.get(id) ?? { code, tint, at: left + width / 2, isNamed: false };
    orders.set(id, order);
    const text = context.measureText(code).width + 2;
    const isUpright = text > width;
    if ((isUpright ? TEXT : text) > width || (isUpright ? text : TEXT) > height) continue;
    // What an outline leaves bare of the middle may bear another.
    if (copy.outline && !contains({ rings: copy.outline, x: 0, y: 0 }, copy.width / 2, copy.length / 2))
      continue;
    context.save();
    context.translate(left + width / 2, top + height / 2);
    if (isUpright) context.rotate(-Math.PI / 2);
    context.fillStyle = '#fff';
    context.fillText(code, 0, 0.5);
    context.restore();
    order.isNamed = true;
  }
  context.fillStyle = style.getPropertyValue('--error');
  for (const { to } of run.spans?.slice(0, -1) ?? []) context.fillRect(to * along - 1, 0, 2, film);
  const unnamed = [...orders.values()].filter(({ isNamed }) => !isNamed);
  const labels = unnamed.map(({ code, at }) => ({ at, size: context.measureText(code).width + 8 }));
  for (const [index, middle] of spread(labels, { from: 0, to: box.width }, 2).entries()) {
    const [order, label] = [unnamed[index], labels[index]];
    if (middle === null || !order || !label) continue;
    context.fillStyle = tintOf(order.tint);
    context.fillRect(middle - label.size / 2, film + 1, label.size, CODES - 1);
    context.fillStyle = '#fff';
    context.fillText(order.code, middle, film + CODES / 2 + 1);
  }
}
