import { useId } from 'react';
import { at, type MakeOrBuy } from '../../src/pricing';
import { asMinor } from '../../src/units';
import { useWays } from '../store/selectors';
import { useAllWords } from '../words';
import { money, whole } from '../words/format';
import '../parts/chart.css';

const [WIDTH, HEIGHT, LEFT, BOTTOM] = [480, 200, 64, 24];

/** What making and buying cost by the count, with the run's own count and the one at which they meet. */
export function CountChart({ found }: { found: MakeOrBuy }) {
  const { makeOrBuy: words } = useAllWords();
  const ways = useWays();
  const id = useId();
  const { make, buy, count, breakEven } = found;
  const meets = 'count' in breakEven ? breakEven.count : null;
  const most = Math.max(2, 2 * count, meets !== null && meets < 20 * count ? Math.ceil(1.2 * meets) : 0);
  const top = Math.max(1, at(make, most), at(buy, most));
  const x = (value: number) => LEFT + ((WIDTH - LEFT - 12) * value) / most;
  const y = (value: number) => 8 + (HEIGHT - BOTTOM - 8) * (1 - value / top);
  const line = (cost: typeof make) => `${x(0)},${y(at(cost, 0))} ${x(most)},${y(at(cost, most))}`;
  return (
    <figure className="chart" aria-labelledby={id}>
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} aria-hidden="true">
        {[0, top].map((value) => (
          <g key={value} className="chart-grid">
            <line x1={LEFT} x2={WIDTH - 12} y1={y(value)} y2={y(value)} />
            <text x={LEFT - 6} y={y(value) + 4} textAnchor="end">
              {money(asMinor(value), ways)}
            </text>
          </g>
        ))}
        <polyline className="chart-line" points={line(make)} />
        <polyline className="chart-line other" points={line(buy)} />
        <g className="chart-aim">
          <line x1={x(count)} x2={x(count)} y1={8} y2={HEIGHT - BOTTOM} />
          <text x={x(count)} y={HEIGHT - 6} textAnchor="middle">
            {whole(count, ways)}
          </text>
        </g>
        {meets !== null && meets <= most && (
          <>
            <circle className="chart-point" cx={x(meets)} cy={y(at(make, meets))} r="5" />
            {Math.abs(x(meets) - x(count)) > 30 && (
              <text x={x(meets)} y={HEIGHT - 6} textAnchor="middle">
                {whole(meets, ways)}
              </text>
            )}
          </>
        )}
        <text x={x(most)} y={HEIGHT - 6} textAnchor="end">
          {whole(most, ways)}
        </text>
      </svg>
      <figcaption id={id} className="chart-legend small">
        <span className="made">{words.made}</span>
        <span className="bought">{words.bought}</span>
        <span className="quiet">{words.chart}</span>
      </figcaption>
    </figure>
  );
}
