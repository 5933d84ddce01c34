import { useMemo } from 'react';
import { type LogRow, spoiledByHumidity, spoiledByLot } from '../../src/log';
import { usualAir } from '../../src/upkeep';
import { useWays } from '../store/selectors';
import { useAllWords } from '../words';
import { dueDay, percent, whole, wholePercent } from '../words/format';
import { ChartPart } from './ChartPart';
import { axis, dots, Plot, type PlotSpec } from './Plot';
import { shareSteps } from './ticks';

const mild = usualAir.humidity;

/** What was spoiled beside the humidity of the room. */
export function AirChart({ rows }: { rows: readonly LogRow[] }) {
  const { log: words } = useAllWords();
  const ways = useWays();
  const runs = useMemo(() => spoiledByHumidity(rows), [rows]);
  const shareOf = (isMeant: (humidity: number) => boolean) => {
    const meant = runs.filter(({ humidity }) => isMeant(humidity));
    const copies = meant.reduce((sum, { closing }) => sum + closing.work.copies, 0);
    const spoiled = meant.reduce((sum, { closing, share }) => sum + share * closing.work.copies, 0);
    return copies === 0 ? words.airNone : percent(spoiled / copies, ways);
  };
  const told =
    runs.length < 2
      ? words.airFew
      : words.airTold(
          shareOf((humidity) => humidity > mild.most),
          shareOf((humidity) => humidity >= mild.least && humidity <= mild.most),
          shareOf((humidity) => humidity < mild.least),
          runs.length,
          ways,
        );
  const spec = useMemo((): PlotSpec => {
    const sorted = runs.toSorted((a, b) => a.humidity - b.humidity);
    return {
      data: [sorted.map(({ humidity }) => humidity), sorted.map(({ share }) => share)],
      options: (colours) => ({
        scales: {
          x: {
            time: false,
            range: (_, least, most) => [Math.max(0, least - 0.05), Math.min(1, most + 0.05)],
          },
          y: { range: (_, __, most) => [0, Math.max(0.05, most * 1.15)] },
        },
        series: [{}, dots(colours, sorted.length)],
        axes: [
          axis(colours, (value) => wholePercent(value, ways), { steps: shareSteps }),
          axis(colours, (value) => wholePercent(value, ways), { size: 64, steps: shareSteps }),
        ],
      }),
    };
  }, [runs, ways]);
  return (
    <ChartPart
      title={words.airTitle}
      told={told}
      rows={runs}
      keyOf={({ closing }) => closing.id}
      columns={[
        { key: 'run', label: words.run, cell: ({ closing }) => closing.name },
        { key: 'day', label: words.day, cell: ({ closing }) => dueDay(closing.day, ways) },
        { key: 'air', label: words.humidity, figure: true, cell: ({ humidity }) => percent(humidity, ways) },
        { key: 'share', label: words.share, figure: true, cell: ({ share }) => percent(share, ways) },
      ]}
    >
      {runs.length > 1 && <Plot spec={spec} told={told} />}
    </ChartPart>
  );
}

/** What was spoiled while each lot was in use. */
export function LotPart({ rows }: { rows: readonly LogRow[] }) {
  const { log: words } = useAllWords();
  const ways = useWays();
  const lots = useMemo(() => spoiledByLot(rows), [rows]);
  return (
    <ChartPart
      title={words.lotTitle}
      told={lots.length > 0 ? words.lotTold(lots.length, ways) : words.lotNone}
      rows={lots}
      keyOf={({ kind, lot }) => `${kind} ${lot}`}
      columns={[
        { key: 'lot', label: words.lot, cell: ({ lot }) => lot },
        { key: 'kind', label: words.lotKind, cell: ({ kind }) => words.lotKinds[kind] },
        { key: 'runs', label: words.runs, figure: true, cell: ({ runs }) => whole(runs, ways) },
        { key: 'spoiled', label: words.spoiled, figure: true, cell: ({ spoiled }) => whole(spoiled, ways) },
        {
          key: 'share',
          label: words.share,
          figure: true,
          cell: ({ spoiled, copies }) => percent(copies > 0 ? spoiled / copies : 0, ways),
        },
      ]}
    />
  );
}
