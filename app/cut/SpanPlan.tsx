import { memo } from 'react';
import { acrossMap, type CutStep, isMirrored, type SpanOrder } from '../../src/cutting';
import type { LaidCopy, LaidRun } from '../../src/layout';
import { tintOf } from '../parts/tints';
import { settingsOrFirst } from '../store/selectors';
import { useShop } from '../store/shop';
import { useAllWords } from '../words';

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
  const { mapView, printer, printImage } = useShop(({ book }) => settingsOrFirst(book));
  const mirrored = isMirrored(mapView, printer.inkUp, printImage.mirrored);
  const mm = (length: number) => length / 1000;
  const width = mm(run.film.width);
  const height = mm(order.to - order.from);
  const gone = new Set<string>(out.map(({ id }) => id));
  const nowTaken = new Set<string>(
    step === null ? [] : step.kind === 'copy' ? [step.copy.id] : step.frees.map(({ id }) => id),
  );
  const left = (box: { x: number; width: number }) => mm(acrossMap(mirrored, run.film.width, box));
  return (
    <svg className="span-plan" viewBox={`-4 -4 ${width + 8} ${height + 8}`} role="img" aria-label={cut.plan}>
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
      {order.copies.map((copy) => {
        const x = left(copy);
        const y = mm(copy.y - order.from);
        const [across, along] = [mm(copy.width), mm(copy.length)];
        const name = `${copy.order.code} ${copy.number}`;
        const size = Math.min(16, across / (0.62 * name.length), along * 0.7);
        return (
          <g key={copy.id} data-gone={gone.has(copy.id)} data-now={nowTaken.has(copy.id)}>
            <rect x={x} y={y} width={across} height={along} stroke={tintOf(copy.order.tint)} />
            <text
              x={x + across / 2}
              y={y + along / 2}
              fontSize={size}
              textAnchor="middle"
              dominantBaseline="central"
            >
              {name}
            </text>
          </g>
        );
      })}
      {step?.kind === 'cut' && <Cut step={step} from={order.from} left={left} />}
    </svg>
  );
});

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
