import type { Finding, RunPoint } from '../../src/costing/calibration';
import { useWays } from '../store/selectors';
import { useAllWords } from '../words';
import { listed, number } from '../words/format';
import { amountText } from './figures';

const WIDTH = 380;
const HEIGHT = 220;
/** Room for figures at the left and below. */
const EDGE = { left: 58, right: 12, top: 12, bottom: 38 };

/** The largest of 1, 2 and 5 times a power of ten that parts a range in no more than so many. */
function stepOf(range: number, most: number): number {
  const power = 10 ** Math.floor(Math.log10(range / most || 1));
  return power * ([1, 2, 5, 10].find((each) => range / power / each <= most) ?? 10);
}

const ticks = (from: number, to: number, most: number): number[] => {
  const step = stepOf(to - from || 1, most);
  const first = Math.ceil(from / step);
  return Array.from({ length: Math.floor(to / step) - first + 1 }, (_, index) => (first + index) * step);
};

const isShown = (point: RunPoint): point is RunPoint & { told: number } => point.told !== null;

/** How far each run is off what the rates tell of it, with a sentence that tells the same. */
export function ResidualPlot({ finding }: { finding: Finding }) {
  const { calibrate: words } = useAllWords();
  const ways = useWays();
  const { quantity, scatter } = finding;
  const points = finding.points.filter(isShown);
  // Times are drawn in minutes.
  const unit = quantity === 'printer' || quantity === 'hands' ? 60 : 1;
  const off = ({ measured, told }: { measured: number; told: number }) => (measured - told) / unit;
  const taken = points.filter(({ isLeftOut }) => !isLeftOut);
  const reach = 1.15 * Math.max(2 * (scatter / unit), ...taken.map((point) => Math.abs(off(point)))) || 1;
  const most = 1.05 * Math.max(...points.map(({ told }) => told / unit)) || 1;
  const x = (told: number) => EDGE.left + (told / most) * (WIDTH - EDGE.left - EDGE.right);
  const y = (value: number) => {
    const height = HEIGHT - EDGE.top - EDGE.bottom;
    // A run that is left out may lie far beyond: it is drawn at the edge.
    return EDGE.top + height * (0.5 - Math.max(-reach, Math.min(reach, value)) / (2 * reach));
  };
  const figures = (value: number, step: number) => number(value, ways.locale, 0, step < 1 ? 2 : 0);
  const names = (which: readonly RunPoint[]) =>
    listed(
      which.map(({ name }) => name),
      ways,
    );
  const odd = taken.filter(({ isMisfit }) => isMisfit);
  const out = points.filter(({ isLeftOut }) => isLeftOut);
  const sentence = [
    words.scatter(amountText(quantity, scatter, ways)),
    odd.length === 0 ? words.allFit : words.misfits(names(odd)),
    out.length === 0 ? '' : words.leftOutNote(names(out)),
  ]
    .filter(Boolean)
    .join(' ');
  const unitName = unit === 60 ? 'min' : quantity === 'powder' ? 'g' : 'ml';
  return (
    <figure className="residuals">
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={words.plot}>
        {ticks(-reach, reach, 6).map((value) => (
          <g key={value}>
            <line className="grid" x1={EDGE.left} x2={WIDTH - EDGE.right} y1={y(value)} y2={y(value)} />
            <text x={EDGE.left - 6} y={y(value) + 4} textAnchor="end">
              {figures(value, stepOf(2 * reach, 6))}
            </text>
          </g>
        ))}
        <line className="zero" x1={EDGE.left} x2={WIDTH - EDGE.right} y1={y(0)} y2={y(0)} />
        {ticks(0, most, 5).map((value) => (
          <text key={value} x={x(value)} y={HEIGHT - 22} textAnchor="middle">
            {figures(value, stepOf(most, 5))}
          </text>
        ))}
        <text x={(WIDTH + EDGE.left) / 2} y={HEIGHT - 6} textAnchor="middle">
          {words.plotTold(unitName)}
        </text>
        <text
          transform={`translate(13 ${EDGE.top + (HEIGHT - EDGE.top - EDGE.bottom) / 2}) rotate(-90)`}
          textAnchor="middle"
        >
          {words.plotOff(unitName)}
        </text>
        {points.map((point) => (
          <Dot key={point.run} point={point} x={x(point.told / unit)} y={y(off(point))} />
        ))}
      </svg>
      <figcaption className="small" data-testid="fit-sentence">
        {sentence}
      </figcaption>
    </figure>
  );
}

/** A run that fits is a dot; one that does not a diamond with its name, one that is left out a cross. */
function Dot({ point, x, y }: { point: RunPoint; x: number; y: number }) {
  if (point.isLeftOut) return <path className="left-out" d={`M${x - 4} ${y - 4}l8 8m0 -8l-8 8`} />;
  if (!point.isMisfit) return <circle className="run-dot" cx={x} cy={y} r={4} />;
  const isRight = x > WIDTH - 80;
  return (
    <g className="misfit">
      <path d={`M${x} ${y - 7}l7 7l-7 7l-7 -7z`} />
      <text x={isRight ? x - 11 : x + 11} y={y + 4} textAnchor={isRight ? 'end' : 'start'}>
        {point.name}
      </text>
    </g>
  );
}
