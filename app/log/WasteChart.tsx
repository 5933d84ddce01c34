import { useMemo } from 'react';
import { type LogRow, wasteTogether } from '../../src/log';
import { useWays } from '../store/selectors';
import { useAllWords } from '../words';
import { dueDay, percent, wholePercent } from '../words/format';
import { ChartPart } from './ChartPart';
import { axis, dotSize, Plot, type PlotSpec, plannedLine } from './Plot';
import { dayTick, shareSteps } from './ticks';

/** Runs that are told of together in the sentence. */
const LATELY = 10;

/** The waste of each run over time, with what was planned. */
export function WasteChart({ rows }: { rows: readonly LogRow[] }) {
  const { log: words } = useAllWords();
  const ways = useWays();
  const last = rows.slice(0, LATELY);
  const before = rows.slice(LATELY, 2 * LATELY);
  const told = words.wasteTold(
    percent(wasteTogether(last), ways),
    last.length,
    before.length === LATELY ? percent(wasteTogether(before), ways) : null,
    ways,
  );
  const spec = useMemo((): PlotSpec => {
    const inOrder = rows.toReversed();
    return {
      data: [
        inOrder.map(({ closing }) => Date.parse(closing.at) / 1000),
        inOrder.map(({ waste }) => waste),
        inOrder.map(({ plannedWaste }) => plannedWaste),
      ],
      options: (colours) => ({
        scales: { y: { range: (_, __, most) => [0, Math.max(0.1, Math.min(1, most * 1.15))] } },
        series: [
          {},
          {
            stroke: colours.accent,
            width: 1.5,
            points: { show: true, size: dotSize(inOrder.length), fill: colours.accent },
          },
          plannedLine(colours),
        ],
        axes: [
          axis(colours, (value) => dayTick(value, ways)),
          axis(colours, (value) => wholePercent(value, ways), { size: 64, steps: shareSteps }),
        ],
      }),
    };
  }, [rows, ways]);
  return (
    <ChartPart
      title={words.wasteTitle}
      told={told}
      rows={rows}
      keyOf={({ closing }) => closing.id}
      columns={[
        { key: 'run', label: words.run, cell: ({ closing }) => closing.name },
        { key: 'day', label: words.day, cell: ({ closing }) => dueDay(closing.day, ways) },
        { key: 'waste', label: words.waste, figure: true, cell: ({ waste }) => percent(waste, ways) },
        {
          key: 'planned',
          label: words.wastePlanned,
          figure: true,
          cell: ({ plannedWaste }) => percent(plannedWaste, ways),
        },
      ]}
    >
      <Plot spec={spec} told={told} />
      <p className="quiet small">{words.wasteLegend}</p>
    </ChartPart>
  );
}
