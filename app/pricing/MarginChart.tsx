import { useId, useState } from 'react';
import { marginsAround, type Price } from '../../src/pricing';
import { useWays } from '../store/selectors';
import { useAllWords } from '../words';
import { money, percent, type Ways } from '../words/format';
import '../parts/chart.css';

/** Per cent up and down. */
const REACH = 30;
const STEPS = Array.from({ length: 2 * REACH + 1 }, (_, at) => (at - REACH) / 100);
const [WIDTH, HEIGHT, LEFT, BOTTOM] = [520, 180, 48, 24];

const signed = (share: number, { locale }: Ways): string =>
  new Intl.NumberFormat(locale, { style: 'percent', signDisplay: 'exceptZero' }).format(share);

/** The margin over changes of the price, from so much less to so much more; a slider reads any of them. */
export function MarginChart({ price }: { price: Price }) {
  const { price: words } = useAllWords();
  const ways = useWays();
  const id = useId();
  const [percentage, setPercentage] = useState(0);
  const points = marginsAround(price, STEPS);
  const margins = points.flatMap(({ margin }) => margin ?? []);
  const chosen = points[percentage + REACH];
  if (margins.length < points.length || !chosen) return null;
  const least = Math.min(0, ...margins);
  const most = Math.max(0.1, ...margins);
  const x = (change: number) => LEFT + ((WIDTH - LEFT - 8) * (change * 100 + REACH)) / (2 * REACH);
  const y = (margin: number) => 8 + (HEIGHT - BOTTOM - 8) * (1 - (margin - least) / (most - least));
  const aim = price.aim.kind === 'margin' ? price.aim.share : price.aim.share / (1 + price.aim.share);
  const told = words.changed(
    signed(chosen.change, ways),
    money(chosen.price, ways),
    percent(chosen.margin ?? 0, ways),
  );
  return (
    <section aria-labelledby={`${id}-title`} className="chart">
      <h3 id={`${id}-title`}>{words.chart}</h3>
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={told}>
        {[Math.max(0, least), aim, most].map((margin) => (
          <g key={margin} className={margin === aim ? 'chart-aim' : 'chart-grid'}>
            <line x1={LEFT} x2={WIDTH - 8} y1={y(margin)} y2={y(margin)} />
            <text x={LEFT - 6} y={y(margin) + 4} textAnchor="end">
              {percent(margin, ways)}
            </text>
          </g>
        ))}
        {[-REACH, 0, REACH].map((change) => (
          <text
            key={change}
            x={x(change / 100)}
            y={HEIGHT - 6}
            textAnchor={change < 0 ? 'start' : change > 0 ? 'end' : 'middle'}
          >
            {signed(change / 100, ways)}
          </text>
        ))}
        <polyline
          className="chart-line"
          points={points.map(({ change, margin }) => `${x(change)},${y(margin ?? 0)}`).join(' ')}
        />
        <circle className="chart-point" cx={x(chosen.change)} cy={y(chosen.margin ?? 0)} r="6" />
      </svg>
      <label className="chart-slider">
        {words.change}
        <input
          type="range"
          min={-REACH}
          max={REACH}
          value={percentage}
          aria-valuetext={told}
          onChange={(event) => setPercentage(Number(event.target.value))}
        />
      </label>
      <p role="status">{told}</p>
    </section>
  );
}
