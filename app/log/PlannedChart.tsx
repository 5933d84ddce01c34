import { useMemo, useState } from 'react';
import { type Compared, compared, type LogRow, median, planAndFact } from '../../src/log';
import type { Microlitres, Milligrams } from '../../src/units';
import { um } from '../../src/units';
import { Choice } from '../parts/Choice';
import { useWays } from '../store/selectors';
import { useAllWords } from '../words';
import { dueDay, filmLength, inkVolume, percent, powderMass, spoken, type Ways } from '../words/format';
import { ChartPart } from './ChartPart';
import { axis, dots, Plot, type PlotSpec, plannedLine } from './Plot';
import { filmSteps, filmTick, timeSteps } from './ticks';

/** An amount of what is compared, as a person reads it. */
function told(amount: number, what: Compared, ways: Ways): string {
  if (what === 'film') return filmLength(um(Math.round(amount)), ways);
  if (what === 'powder') return powderMass(amount as Milligrams, ways);
  if (what === 'white' || what === 'colour') return inkVolume(amount as Microlitres, ways);
  return spoken(amount, ways);
}

/** Steps of the axes; ink and powder are kept in thousandths of what is shown, of which the chart's own steps are round. */
function stepsOf(what: Compared, ways: Ways): { steps?: number[] } {
  if (what === 'film') return { steps: filmSteps(ways) };
  return what === 'printer' || what === 'hands' || what === 'press' ? { steps: timeSteps } : {};
}

/** Each run as a dot: what was planned along, what was used up. */
export function PlannedChart({ rows }: { rows: readonly LogRow[] }) {
  const { log: words } = useAllWords();
  const ways = useWays();
  const [what, setWhat] = useState<Compared>('film');
  const runs = useMemo(() => planAndFact(rows, what), [rows, what]);
  const middle = median(runs.map(({ planned, actual }) => actual / planned));
  const sentence =
    runs.length < 2
      ? words.plannedFew(what)
      : words.plannedTold(what, percent(middle, ways), runs.length, ways);
  const spec = useMemo((): PlotSpec => {
    const sorted = runs.toSorted((a, b) => a.planned - b.planned);
    const most = Math.max(1, ...sorted.map(({ planned, actual }) => Math.max(planned, actual))) * 1.08;
    const spacing = stepsOf(what, ways);
    const tick = (amount: number) => (what === 'film' ? filmTick(amount, ways) : told(amount, what, ways));
    return {
      data: [
        [0, ...sorted.map(({ planned }) => planned), most],
        [null, ...sorted.map(({ actual }) => actual), null],
        [0, ...sorted.map(({ planned }) => planned), most],
      ],
      options: (colours) => ({
        scales: { x: { time: false, range: [0, most] }, y: { range: [0, most] } },
        series: [{}, dots(colours, sorted.length), plannedLine(colours)],
        axes: [{ ...axis(colours, tick, spacing), space: 90 }, axis(colours, tick, { size: 84, ...spacing })],
      }),
    };
  }, [runs, what, ways]);
  return (
    <ChartPart
      title={words.plannedTitle}
      told={sentence}
      rows={runs}
      keyOf={({ closing }) => closing.id}
      columns={[
        { key: 'run', label: words.run, cell: ({ closing }) => closing.name },
        { key: 'day', label: words.day, cell: ({ closing }) => dueDay(closing.day, ways) },
        {
          key: 'planned',
          label: words.plannedColumn,
          figure: true,
          cell: ({ planned }) => told(planned, what, ways),
        },
        {
          key: 'used',
          label: words.usedColumn,
          figure: true,
          cell: ({ actual }) => told(actual, what, ways),
        },
      ]}
    >
      <Choice
        label={words.what}
        value={what}
        options={compared.map((value) => ({ value, label: words.compared[value] }))}
        onChange={setWhat}
      />
      {runs.length > 1 && (
        <>
          <Plot spec={spec} told={sentence} />
          <p className="quiet small">{words.plannedLegend}</p>
        </>
      )}
    </ChartPart>
  );
}
