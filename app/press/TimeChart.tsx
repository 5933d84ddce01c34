import { useState } from 'react';
import type { Entry, Worker } from '../../src/pressing';
import { Choice } from '../parts/Choice';
import { tintOf } from '../parts/tints';
import { useWays } from '../store/selectors';
import type { Day } from '../store/timeline';
import { useAllWords, type Words } from '../words';
import { timeAndDay } from '../words/format';
import { jobName } from './job-name';
import { PatternDefs, Patterned } from './patterns';

const LANE = 44;
const HEAD = 26;
const LABEL = 92;
/** A name that stands upright in its bar needs as much. */
const TALL = 14;
const ZOOMS = { fit: 1, double: 2, four: 4 } as const;

/** A bar of a lane: what a worker is taken by. */
interface Bar {
  readonly entry: Entry;
  readonly from: number;
  readonly to: number;
}

/** Every worker and every one of several, with what they are taken by. */
function lanesOf({ work, timeline }: Pick<Day, 'work' | 'timeline'>, words: Words['press']) {
  return work.workers.flatMap((worker, resource) => {
    const units = work.problem.resources[resource]?.units.length ?? 1;
    return Array.from({ length: units }, (_, unit) => ({
      worker,
      name: words.worker(worker, unit, units),
      bars: timeline.entries.flatMap((entry): Bar[] =>
        entry.takes.flatMap((take) =>
          take.worker === worker && take.unit === unit ? [{ entry, from: take.from, to: take.to }] : [],
        ),
      ),
    }));
  });
}

/** Pixels that the figures of a mark need, with a day in front of the time. */
const MARK = 96;
const STEPS = [5, 10, 15, 30, 60, 120, 240, 360, 720];
const DAY = 1440;

/** Minutes between two marks of the axis, so that they are not closer than their figures need: whole days at last. */
const stepFor = (pixelsPerMinute: number): number =>
  STEPS.find((step) => step * pixelsPerMinute >= MARK) ?? DAY * Math.ceil(MARK / (DAY * pixelsPerMinute));

/** The day as a chart, start to finish: zoomed, scrolled, with a line at now, and the same as a table. */
export function TimeChart({ day }: { day: Day }) {
  const { press: words } = useAllWords();
  const [zoom, setZoom] = useState<keyof typeof ZOOMS>('fit');
  return (
    <section className="day-chart" aria-labelledby="chart-title">
      <div className="chart-head">
        <h2 id="chart-title">{words.chart}</h2>
        <Choice
          label={words.zoom}
          value={zoom}
          options={(Object.keys(ZOOMS) as (keyof typeof ZOOMS)[]).map((value) => ({
            value,
            label: words.zooms[value],
          }))}
          onChange={setZoom}
        />
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a chart that scrolls must scroll by keys too */}
      <section className="chart-scroll" aria-label={words.chartLabel} tabIndex={0}>
        <Chart day={day} width={1280 * ZOOMS[zoom]} fits={zoom === 'fit'} />
      </section>
      <DayTable day={day} />
    </section>
  );
}

/** The chart alone, as it is looked at and as it is printed. */
export function Chart({ day, width, fits }: { day: Day; width: number; fits: boolean }) {
  const { press: words } = useAllWords();
  const ways = useWays();
  const { timeline, origin, now, begun } = day;
  const lanes = lanesOf(day, words);
  const span = Math.max(60, timeline.end, now);
  const scale = (width - LABEL - 24) / span;
  const height = HEAD + lanes.length * LANE + 4;
  const at = (seconds: number) => LABEL + seconds * scale;
  const step = stepFor(scale * 60) * 60;
  const first = new Date(origin);
  const sinceMidnight = (first.getHours() * 60 + first.getMinutes()) * 60 + first.getSeconds();
  const offset = sinceMidnight % Math.min(step, DAY * 60);
  const marks: number[] = [];
  for (let time = offset === 0 ? 0 : step - offset; time <= span; time += step) marks.push(time);
  return (
    <svg
      className="day-plan"
      viewBox={`0 0 ${width} ${height}`}
      width={fits ? '100%' : width}
      height={fits ? undefined : height}
      role="img"
      aria-label={words.chartLabel}
    >
      <PatternDefs />
      {marks.map((time, mark) => (
        <g key={time}>
          <line className="axis" x1={at(time)} x2={at(time)} y1={HEAD - 6} y2={height} />
          <text className="axis-text" x={at(time)} y={HEAD - 10} textAnchor="middle">
            {timeAndDay(origin + 1000 * time, ways, mark === 0 ? undefined : origin + 1000 * (time - step))}
          </text>
        </g>
      ))}
      {lanes.map(({ worker, name, bars }, lane) => {
        const y = HEAD + lane * LANE;
        return (
          <g key={name}>
            <line className="axis" x1={0} x2={width} y1={y + LANE} y2={y + LANE} />
            <text className="lane" x={0} y={y + LANE / 2 + 5}>
              {name}
            </text>
            {bars.map((bar) => (
              <ChartBar
                key={`${bar.entry.job.key} ${bar.from}`}
                bar={bar}
                worker={worker}
                x={at(bar.from)}
                y={y + 5}
                width={Math.max(1.5, (bar.to - bar.from) * scale - 1)}
              />
            ))}
          </g>
        );
      })}
      {begun && (
        <>
          <line className="now" x1={at(now)} x2={at(now)} y1={HEAD - 6} y2={height} />
          <text className="now-text" x={at(now) + 4} y={height - 3}>
            {words.now}
          </text>
        </>
      )}
    </svg>
  );
}

/** What stands in a bar: the order's code, or the span's number. */
const shortName = ({ job }: Entry): string =>
  job.order?.code ?? (job.spans.length > 0 ? job.spans.map((span) => span + 1).join('+') : '');

function ChartBar({
  bar,
  worker,
  x,
  y,
  width,
}: {
  bar: Bar;
  worker: Worker;
  x: number;
  y: number;
  width: number;
}) {
  const { press: words } = useAllWords();
  const ways = useWays();
  const { entry } = bar;
  const { job, state, start, end } = entry;
  const name = shortName(entry);
  const length = 9 * name.length + 4;
  const fits = width > length;
  const [middle, centre] = [x + width / 2, y + (LANE - 10) / 2];
  return (
    <g className="bar" data-kind={job.kind} data-state={state} data-worker={worker}>
      <title>{`${jobName(job, ways)}: ${words.from.toLowerCase()} ${Math.round(start / 60)} ${words.to.toLowerCase()} ${Math.round(end / 60)} min`}</title>
      <rect
        x={x}
        y={y}
        width={width}
        height={LANE - 10}
        rx={Math.min(3, width / 2)}
        style={job.order ? { fill: tintOf(job.order.tint) } : undefined}
      />
      <Patterned kind={job.kind} x={x} y={y} width={width} height={LANE - 10} />
      {(fits || (width > TALL && LANE - 10 > length)) && (
        <text
          x={middle}
          y={centre + 4.5}
          textAnchor="middle"
          transform={fits ? undefined : `rotate(-90 ${middle} ${centre})`}
          data-on={job.order ? 'tint' : 'plain'}
        >
          {name}
        </text>
      )}
    </g>
  );
}

/** The same in rows, for readers and for looking a time up. */
function DayTable({ day }: { day: Day }) {
  const { press: words } = useAllWords();
  const ways = useWays();
  return (
    <details>
      <summary>{words.asTable}</summary>
      <table className="times">
        <thead>
          <tr>
            <th scope="col">{words.from}</th>
            <th scope="col">{words.to}</th>
            <th scope="col">{words.what}</th>
          </tr>
        </thead>
        <tbody>
          {day.timeline.entries.map(({ job, start, end }) => (
            <tr key={job.key}>
              <td>{timeAndDay(day.origin + 1000 * start, ways)}</td>
              <td>{timeAndDay(day.origin + 1000 * end, ways)}</td>
              <td>{jobName(job, ways)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
