import { useState } from 'react';
import { machineName } from '../panels/machine-name';
import { useMore } from '../panels/useMore';
import { Choice } from '../parts/Choice';
import { tintOf } from '../parts/tints';
import { useNarrow } from '../parts/useNarrow';
import { useOrderNames, useWays } from '../store/selectors';
import type { Day } from '../store/timeline';
import { useAllWords } from '../words';
import { clockTime, listed, timeAndDay } from '../words/format';
import { dayAxis } from './day-axis';
import {
  axisMarks,
  clearOf,
  type DayRow,
  dayRows,
  endLabel,
  fittingText,
  type Lot,
  machinesOf,
} from './day-rows';
import { jobName } from './job-name';
import { PatternDefs, Patterned } from './patterns';
import { useDoneBy } from './useDoneBy';

const LANE = 34;
const BAR = 22;
/** A line for "now", and one for the figures of the axis. */
const NOW = 18;
const HEAD = NOW + 24;
/** The names of the rows; on a phone their codes alone. */
const NAMES = { wide: 210, narrow: 64 } as const;
const NUMBER = 18;
const ZOOMS = { fit: 1, double: 2, four: 4 } as const;
/** Pixels of the figures of the axis, with a day in front of the time, and of a time alone. */
const MARK = 96;
const TIME = 64;
/** Lots no further apart than this, in pixels, are one. */
const JOIN = 9;

/** What is written on a bar, and how far from its ends, in pixels; see `.bar-text`. */
const LETTERS = { size: 11, side: 5 } as const;

const pen = document.createElement('canvas').getContext('2d');

/** How wide a text is on a bar. */
function widthOfLetters(text: string): number {
  if (!pen) return Number.POSITIVE_INFINITY;
  pen.font = `${LETTERS.size}px ${getComputedStyle(document.body).fontFamily}`;
  return pen.measureText(text).width;
}

/** The day as a chart, start to finish: zoomed, scrolled, with a line at now, and the same as a table. */
export function TimeChart({ day }: { day: Day }) {
  const { press: words } = useAllWords();
  const narrow = useNarrow();
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
        <Chart
          day={day}
          width={(narrow ? 560 : 1280) * ZOOMS[zoom]}
          fits={zoom === 'fit' && !narrow}
          names={narrow ? 'narrow' : 'wide'}
          isPrinted={false}
        />
      </section>
      <DayTable day={day} />
    </section>
  );
}

/** The chart alone, as it is looked at and as it is printed, with what its bars mean. */
export function Chart({
  day,
  width,
  fits,
  names = 'wide',
  isPrinted,
}: {
  day: Day;
  width: number;
  fits: boolean;
  names?: keyof typeof NAMES;
  /** On paper all rows are drawn; on a screen the first of a long day, and more by a press. */
  isPrinted: boolean;
}) {
  const { press: words } = useAllWords();
  const ways = useWays();
  const nameOf = useOrderNames();
  const { timeline, plan, origin, now } = day;
  const isOfPrinters = timeline.entries.some((entry) =>
    machinesOf(entry).some(({ kind }) => kind === 'printer'),
  );
  // A step is told with its printer’s number, where there are several.
  const left = NAMES[names] + (names === 'narrow' && isOfPrinters ? NUMBER : 0);
  // What was done before today is not of this day.
  const entries = timeline.entries.filter(({ end, state }) => state !== 'done' || end > 0);
  const first = Math.min(now, ...entries.map(({ start }) => start));
  const axis = dayAxis(plan.work, first, Math.max(now + 60, timeline.end));
  const span = Math.max(60, axis.shown(axis.to));
  // The time at which the last row is done stands behind it, as does half of the axis's last figure.
  const scale = (width - left - TIME - 10) / span;
  const all = dayRows(entries, JOIN / scale);
  const { shown, more } = useMore(all.length);
  const rows = isPrinted ? all : all.slice(0, shown);
  const isSeveral = timeline.runs.length > 1;
  const height = HEAD + rows.length * LANE + 4;
  const at = (seconds: number) => left + axis.shown(seconds) * scale;
  const dueOf = new Map(timeline.orders.map(({ order, due }) => [order.id as string, due]));
  return (
    <>
      <svg
        className="day-plan"
        viewBox={`0 0 ${width} ${height}`}
        width={fits ? '100%' : width}
        height={fits ? undefined : height}
        role="img"
        aria-label={words.chartLabel}
      >
        <PatternDefs />
        {axis.breaks.map(({ from, to }) => (
          <rect
            key={from}
            className="rest"
            x={at(from)}
            y={HEAD - 6}
            width={at(to) - at(from)}
            height={height}
          >
            <title>
              {words.restFromTo(clockTime(origin + 1000 * from, ways), clockTime(origin + 1000 * to, ways))}
            </title>
          </rect>
        ))}
        {axisMarks(axis, scale, MARK).map(({ time, before }) => (
          <g key={time}>
            <line className="axis" x1={at(time)} x2={at(time)} y1={HEAD - 6} y2={height} />
            <text className="axis-text" x={at(time)} y={HEAD - 10} textAnchor="middle">
              {timeAndDay(
                origin + 1000 * time,
                ways,
                before === undefined ? undefined : origin + 1000 * before,
              )}
            </text>
          </g>
        ))}
        {axis.nights.map(({ from }) => (
          <line key={from} className="night" x1={at(from)} x2={at(from)} y1={HEAD - 6} y2={height} />
        ))}
        {rows.map((row, lane) => (
          <Row
            key={typeof row.of === 'string' ? `${row.of} ${row.printer?.id}` : row.of.id}
            row={row}
            name={
              typeof row.of === 'string'
                ? ''
                : nameOf(
                    row.of,
                    row.lots.map(({ run }) => run),
                  )
            }
            y={HEAD + lane * LANE}
            names={names}
            at={at}
            chart={{ left, right: width }}
            due={typeof row.of === 'string' ? null : (dueOf.get(row.of.id) ?? null)}
            isSeveral={isSeveral}
            origin={origin}
            done={(seconds) => clockTime(origin + 1000 * seconds, ways)}
          />
        ))}
        {/* From below the figures of the axis, which it would strike through. */}
        <line className="now" x1={at(now)} x2={at(now)} y1={HEAD - 6} y2={height} />
        <text className="now-text" x={Math.max(left, at(now))} y={NOW - 5} textAnchor="middle">
          {words.nowAt(clockTime(origin + 1000 * now, ways))}
        </text>
      </svg>
      {!isPrinted && more}
      <Legend lots={all.flatMap(({ lots }) => lots)} />
    </>
  );
}

/** A step of the film, or an order: its name, its lots, and when it is done. */
function Row({
  row: { of, printer, lots },
  name,
  y,
  names,
  at,
  chart,
  due,
  isSeveral,
  origin,
  done,
}: {
  row: DayRow;
  /** Of its order; empty for a step of the film. */
  name: string;
  y: number;
  names: keyof typeof NAMES;
  at: (seconds: number) => number;
  chart: { readonly left: number; readonly right: number };
  /** When an order is due, in seconds. */
  due: number | null;
  /** Whether there are several runs to be told apart. */
  isSeveral: boolean;
  origin: number;
  done: (seconds: number) => string;
}) {
  const { press: words } = useAllWords();
  const middle = y + LANE / 2;
  const [from, to] = [Math.min(...lots.map((lot) => lot.from)), Math.max(...lots.map((lot) => lot.to))];
  const end = typeof of === 'string' ? null : endLabel({ from: at(from), to: at(to) }, TIME, chart);
  return (
    <g>
      <line className="axis" x1={0} x2={chart.right} y1={y + LANE} y2={y + LANE} />
      {typeof of === 'string' ? (
        <text className="lane" x={0} y={middle + 5}>
          {names === 'narrow'
            ? `${words.shortSteps[of]}${printer ? ` ${printer.number}` : ''}`
            : shortened([words.filmSteps[of], ...(printer ? [machineName(printer)] : [])].join(', '), 27)}
        </text>
      ) : (
        <>
          <rect className="tag" x={0} y={middle - 11} width={34} height={22} rx={3} fill={tintOf(of.tint)} />
          <text className="tag-text" x={17} y={middle + 5} textAnchor="middle">
            {of.code}
          </text>
          {names === 'wide' && (
            <text className="lane-name" x={42} y={middle + 5}>
              {shortened(name)}
            </text>
          )}
        </>
      )}
      {typeof of !== 'string' && (
        <line
          className="thread"
          x1={at(from)}
          x2={at(to)}
          y1={middle - 4}
          y2={middle - 4}
          stroke={tintOf(of.tint)}
        />
      )}
      {lots.map((lot) => (
        <Bar
          key={`${lot.kind} ${lot.from} ${lot.run.id}`}
          lot={lot}
          run={isSeveral ? lot.run.name : null}
          fill={typeof of === 'string' ? undefined : tintOf(of.tint)}
          x={at(lot.from)}
          y={middle - BAR / 2}
          origin={origin}
          width={Math.max(4, at(lot.to) - at(lot.from) - 1)}
          room={at(lot.from + clearOf(lot, lots)) - at(lot.from) - 1 - 2 * LETTERS.side}
        />
      ))}
      {due !== null && at(due) > chart.left && at(due) < chart.right && (
        <path className="due-mark" d={`M${at(due)} ${y + 3}v${LANE - 6}m-5 ${6 - LANE}h10`}>
          <title>{words.dueAt(done(due))}</title>
        </path>
      )}
      {end && (
        <text className="axis-text" x={end.x} y={middle + 5} textAnchor={end.anchor}>
          {done(to)}
        </text>
      )}
    </g>
  );
}

/** As much of a name as stands beside its row. */
const shortened = (name: string, most = 20): string =>
  name.length > most ? `${name.slice(0, most - 1).trimEnd()}…` : name;

/** A lot; checking and packing lies low, under the pressing that it follows. */
function Bar({
  lot,
  run,
  fill,
  x,
  y,
  width,
  room,
  origin,
}: {
  lot: Lot;
  /** The name of its run, where there are several. */
  run: string | null;
  fill: string | undefined;
  x: number;
  y: number;
  width: number;
  /** How wide a text on it may be. */
  room: number;
  origin: number;
}) {
  const { press: words } = useAllWords();
  const ways = useWays();
  const people = listed(lot.machines.filter(({ kind }) => kind === 'person').map(machineName), ways);
  const shown = lot.kind === 'print' ? run : null;
  const texts = [[shown, people].filter(Boolean).join(' · '), shown ?? people];
  const text = lot.kind === 'pack' ? null : fittingText(texts, room, widthOfLetters);
  const [only] = lot.jobs;
  const name =
    only && lot.jobs.length === 1
      ? jobName(only, ways)
      : words.lot(words.legend[lot.kind], lot.jobs.length, ways);
  const isPack = lot.kind === 'pack';
  const box = { x, width, y: isPack ? y + BAR - 7 : y, height: isPack ? 7 : BAR - 8 };
  const isFilm = fill === undefined;
  const place = isFilm ? { ...box, height: BAR } : box;
  return (
    <g className="bar" data-kind={lot.kind} data-state={lot.isDone ? 'done' : 'ahead'}>
      <title>
        {[
          run,
          `${[name, ...lot.machines.map(machineName)].join(', ')}: ${clockTime(origin + 1000 * lot.from, ways)}–${clockTime(origin + 1000 * lot.to, ways)}`,
        ]
          .filter(Boolean)
          .join(', ')}
      </title>
      <rect {...place} rx={Math.min(3, width / 2)} style={isFilm || isPack ? undefined : { fill }} />
      <Patterned kind={lot.kind} {...place} />
      {text !== null && (
        <text className="bar-text" x={x + LETTERS.side} y={place.y + place.height / 2 + 4}>
          {text}
        </text>
      )}
    </g>
  );
}

/** What the bars of the chart mean, in the order of the day. */
function Legend({ lots }: { lots: readonly Lot[] }) {
  const { press: words } = useAllWords();
  const kinds = [...new Set(lots.map(({ kind }) => kind))];
  return (
    <p className="legend small">
      {kinds.map((kind) => (
        <span key={kind}>
          <svg className="day-plan" width="24" height="16" aria-hidden="true">
            <g className="bar" data-kind={kind}>
              <rect x={1} y={kind === 'pack' ? 5 : 1} width={22} height={kind === 'pack' ? 7 : 14} rx={3} />
              <Patterned
                kind={kind}
                x={1}
                y={kind === 'pack' ? 5 : 1}
                width={22}
                height={kind === 'pack' ? 7 : 14}
              />
            </g>
          </svg>{' '}
          {words.legend[kind]}
        </span>
      ))}
      {lots.some(({ isDone }) => isDone) && (
        <span>
          <svg className="day-plan" width="24" height="16" aria-hidden="true">
            <g className="bar" data-kind="press" data-state="done">
              <rect x={1} y={1} width={22} height={14} rx={3} />
            </g>
          </svg>{' '}
          {words.legendDone}
        </span>
      )}
    </p>
  );
}

/** The same in rows, for readers and for looking a time up. */
function DayTable({ day }: { day: Day }) {
  const { press: words } = useAllWords();
  const [isOpen, setOpen] = useState(false);
  return (
    <details onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>{words.asTable}</summary>
      {isOpen && <DayTimes day={day} />}
    </details>
  );
}

function DayTimes({ day: { timeline, origin } }: { day: Day }) {
  const { press: words } = useAllWords();
  const ways = useWays();
  const isSeveral = timeline.runs.length > 1;
  const doneBy = useDoneBy();
  const isSigned = timeline.entries.some(({ job }) => doneBy(job) !== '');
  const { shown, more } = useMore(timeline.entries.length);
  return (
    <>
      <table className="times">
        <thead>
          <tr>
            <th scope="col">{words.from}</th>
            <th scope="col">{words.to}</th>
            <th scope="col">{words.what}</th>
            {isSigned && <th scope="col">{words.by}</th>}
          </tr>
        </thead>
        <tbody>
          {timeline.entries.slice(0, shown).map((entry) => {
            const { job, start, end } = entry;
            return (
              <tr key={`${job.run.id} ${job.key}`}>
                <td>{timeAndDay(origin + 1000 * start, ways)}</td>
                <td>{timeAndDay(origin + 1000 * end, ways)}</td>
                <td>
                  {isSeveral && `${job.run.name}: `}
                  {[jobName(job, ways), ...machinesOf(entry).map(machineName)].join(', ')}
                </td>
                {isSigned && <td>{doneBy(job)}</td>}
              </tr>
            );
          })}
        </tbody>
      </table>
      {more}
    </>
  );
}
