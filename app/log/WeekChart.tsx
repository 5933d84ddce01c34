import { useMemo } from 'react';
import uPlot from 'uplot';
import { filmByWeek, type LogRow } from '../../src/log';
import { um } from '../../src/units';
import { useWays } from '../store/selectors';
import { useAllWords } from '../words';
import { dueDay, filmLength, whole } from '../words/format';
import { ChartPart } from './ChartPart';
import { axis, Plot, type PlotSpec } from './Plot';
import { dayTick, filmSteps, filmTick } from './ticks';

/** How much film each week took. */
export function WeekChart({ rows }: { rows: readonly LogRow[] }) {
  const { log: words } = useAllWords();
  const ways = useWays();
  const weeks = useMemo(() => filmByWeek(rows), [rows]);
  const mean = um(Math.round(weeks.reduce((sum, { film }) => sum + film, 0) / Math.max(1, weeks.length)));
  const told = words.weekTold(
    filmLength(weeks.at(-1)?.film ?? um(0), ways),
    filmLength(mean, ways),
    weeks.length,
    ways,
  );
  const spec = useMemo(
    (): PlotSpec => ({
      data: [
        weeks.map(({ monday }) => Date.parse(`${monday}T12:00:00`) / 1000),
        weeks.map(({ film }) => film),
      ],
      options: (colours) => ({
        scales: {
          x: { range: (_, least, most) => [least - 4 * 86_400, most + 4 * 86_400] },
          y: { range: (_, __, most) => [0, most * 1.1] },
        },
        series: [
          {},
          {
            stroke: colours.accent,
            width: 1.5,
            fill: colours.accentSoft,
            points: { show: false },
            ...(uPlot.paths.bars ? { paths: uPlot.paths.bars({ size: [0.7, 64] }) } : {}),
          },
        ],
        axes: [
          axis(colours, (value) => dayTick(value, ways)),
          axis(colours, (value) => filmTick(value, ways), { size: 64, steps: filmSteps(ways) }),
        ],
      }),
    }),
    [weeks, ways],
  );
  return (
    <ChartPart
      title={words.weekTitle}
      told={told}
      rows={weeks.toReversed()}
      keyOf={({ monday }) => monday}
      columns={[
        { key: 'week', label: words.week, cell: ({ monday }) => dueDay(monday, ways) },
        { key: 'film', label: words.film, figure: true, cell: ({ film }) => filmLength(film, ways) },
        { key: 'runs', label: words.runs, figure: true, cell: ({ runs }) => whole(runs, ways) },
      ]}
    >
      <Plot spec={spec} told={told} />
    </ChartPart>
  );
}
