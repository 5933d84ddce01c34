import { memo, type RefObject, useEffect, useRef, useState } from 'react';
import { acrossMap, type CutStep, isMirrored, nameRoom, type SpanOrder } from '../../src/cutting';
import type { LaidCopy, LaidRun } from '../../src/layout';
import { boxRing, type Ring } from '../../src/outlines';
import { tintOf } from '../parts/tints';
import { printerOfRun, settingsOrFirst } from '../store/selectors';
import { useShop } from '../store/shop';
import { useAllWords } from '../words';
import { NAMES, type PlanBox, type PlanName, planNames } from './plan-names';

/** Room around the film, in millimetres. */
const EDGE = 4;

/** The span as it lies in the hands: what is out is pale, what is cut now is marked. Drawn in millimetres. */
export const SpanPlan = memo(function SpanPlan({
  run,
  order,
  step,
  out,
}: {
  run: LaidRun;
  order: SpanOrder;
  step: CutStep | null;
  out: readonly LaidCopy[];
}) {
  const { cut } = useAllWords();
  const { mapView } = useShop(({ book }) => settingsOrFirst(book));
  const printer = printerOfRun(run);
  const mirrored = isMirrored(mapView, printer.inkUp, printer.mirrored);
  const mm = (length: number) => length / 1000;
  const width = mm(run.film.width);
  const height = mm(order.to - order.from);
  const gone = new Set<string>(out.map(({ id }) => id));
  const nowTaken = new Set<string>(
    step === null ? [] : step.kind === 'copy' ? [step.copy.id] : step.frees.map(({ id }) => id),
  );
  const left = (box: { x: number; width: number }) => mm(acrossMap(mirrored, run.film.width, box));
  const rooms = order.copies.map((copy) => {
    const room = nameRoom(copy);
    return {
      x: left({ x: copy.x + room.x, width: room.width }),
      y: mm(copy.y + room.y - order.from),
      width: mm(room.width),
      height: mm(room.length),
      name: `${copy.order.code} ${copy.number}`,
    };
  });
  /** A copy as it is cut out: its outline, or its box. */
  const shapeOf = (copy: LaidCopy): string => {
    const corner = (ring: Ring, at: number) =>
      `${left({ x: copy.x + (ring[at] ?? 0), width: 0 })} ${mm(copy.y + (ring[at + 1] ?? 0) - order.from)}`;
    return (copy.outline ?? [boxRing(copy)])
      .map((ring) => {
        const corners = Array.from({ length: ring.length / 2 }, (_, at) => corner(ring, 2 * at));
        return `M${corners.join('L')}Z`;
      })
      .join('');
  };
  const svg = useRef<SVGSVGElement>(null);
  const { side, names } = useNames(svg, rooms, { width, height });
  const bottom = Math.max(height, ...names.map(({ y, size }) => y + size));
  return (
    <svg
      ref={svg}
      className="span-plan"
      viewBox={`${-side} -4 ${width + 2 * side} ${bottom + 8}`}
      role="img"
      aria-label={cut.plan}
    >
      <rect className="film-edge" x={0} y={0} width={width} height={height} />
      <pattern id="spoiled" width="8" height="8" patternUnits="userSpaceOnUse">
        <path d="M0 8 8 0" />
      </pattern>
      {run.spoiled
        .filter(({ from, to }) => from < order.to && to > order.from)
        .map(({ from, to }) => {
          const top = mm(Math.max(0, from - order.from));
          const bottom = mm(Math.min(order.to, to) - order.from);
          return (
            <g key={from} className="spoiled">
              <rect x={0} y={top} width={width} height={bottom - top} />
              <text
                x={width / 2}
                y={(top + bottom) / 2}
                fontSize={Math.min(16, bottom - top)}
                textAnchor="middle"
                dominantBaseline="central"
              >
                {cut.spoiled}
              </text>
            </g>
          );
        })}
      {order.copies.map((copy, index) => {
        const name = names[index];
        if (!name) return null;
        return (
          <g key={copy.id} data-gone={gone.has(copy.id)} data-now={nowTaken.has(copy.id)}>
            <path className="shape" d={shapeOf(copy)} stroke={tintOf(copy.order.tint)} />
            {name.leads && (
              <path
                className="lead"
                d={`M${name.leads.x} ${name.leads.y}L${name.x < 0 ? 0 : width} ${name.y}`}
              />
            )}
            <text
              className={name.leads ? 'led' : undefined}
              x={name.x}
              y={name.y}
              fontSize={name.size}
              textAnchor="middle"
              dominantBaseline="central"
              transform={name.isUpright ? `rotate(-90 ${name.x} ${name.y})` : undefined}
            >
              {rooms[index]?.name}
            </text>
          </g>
        );
      })}
      {step?.kind === 'cut' && <Cut step={step} from={order.from} left={left} />}
    </svg>
  );
});

/** The names of the copies for the room that the plan has on the screen, and how much of it is kept free beside the film. */
function useNames(
  svg: RefObject<SVGSVGElement | null>,
  boxes: readonly PlanBox[],
  film: { readonly width: number; readonly height: number },
): { side: number; names: readonly PlanName[] } {
  const [room, setRoom] = useState<{ width: number; height: number } | null>(null);
  useEffect(() => {
    const measure = () => {
      if (!svg.current) return;
      const most = Number.parseFloat(getComputedStyle(svg.current).maxHeight);
      setRoom({ width: svg.current.clientWidth, height: Number.isNaN(most) ? innerHeight : most });
    };
    const observer = new ResizeObserver(measure);
    if (svg.current) observer.observe(svg.current);
    return () => observer.disconnect();
  }, [svg]);
  if (!room) return { side: EDGE, names: [] };
  const scaleWith = (beside: number) =>
    Math.max(
      0.1,
      Math.min((room.width - 2 * beside) / (film.width + 2 * EDGE), room.height / (film.height + 2 * EDGE)),
    );
  const names = planNames(boxes, film, scaleWith(0));
  if (names.every(({ leads }) => leads === null)) return { side: EDGE, names };
  const scale = scaleWith(NAMES);
  return { side: EDGE + NAMES / scale, names: planNames(boxes, film, scale) };
}

/** The cut to be made, over its piece. */
function Cut({
  step,
  from,
  left,
}: {
  step: Extract<CutStep, { kind: 'cut' }>;
  from: number;
  left: (box: { x: number; width: number }) => number;
}) {
  const { piece, at, axis } = step;
  const top = (piece.y - from) / 1000;
  const y = (at - from) / 1000;
  const x = left({ x: at, width: 0 });
  const [start, width, length] = [left(piece), piece.width / 1000, piece.length / 1000];
  return (
    <>
      <rect className="piece" x={start} y={top} width={width} height={length} />
      {axis === 'across' ? (
        <line className="cut-line" x1={start} x2={start + width} y1={y} y2={y} />
      ) : (
        <line className="cut-line" x1={x} x2={x} y1={top} y2={top + length} />
      )}
    </>
  );
}
