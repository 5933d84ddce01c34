import { useMemo } from 'react';
import { type LogRow, printedOn } from '../../src/log';
import { printerChoices } from '../panels/machine-name';
import { type Column, LongTable } from '../parts/LongTable';
import { settingsOrFirst, useWays } from '../store/selectors';
import { useShop } from '../store/shop';
import { useAllWords } from '../words';
import { dueDay, filmLength, inkVolume, listed, percent, powderMass, spoken } from '../words/format';

/** What was used, with what was planned under it. */
function Pair({ used, planned }: { used: string | null; planned: string | null }) {
  const { log: words } = useAllWords();
  return (
    <>
      {used ?? <span className="quiet">{words.notMeasured}</span>}
      {planned !== null && <span className="quiet small planned">{words.planned(planned)}</span>}
    </>
  );
}

/** Applies a format to what is known. */
const known = <Value,>(value: Value | null, told: (value: Value) => string): string | null =>
  value === null ? null : told(value);

/** Closed runs, the latest first. */
export function LogTable({ rows }: { rows: readonly LogRow[] }) {
  const { log: words, closing: closingWords, spoil } = useAllWords();
  const ways = useWays();
  const { run, tick } = useShop((shop) => shop.book);
  const { station } = useShop(({ book }) => settingsOrFirst(book));
  const on = useMemo(() => printedOn({ run, tick }, station), [run, tick, station]);
  const printers = printerChoices(station);
  const ink = (kind: 'colour' | 'white') => ({
    key: kind,
    label: words[kind],
    figure: true,
    cell: ({ closing: { actual, planned } }: LogRow) => (
      <Pair
        used={known(actual[kind], (value) => inkVolume(value, ways))}
        planned={known(planned[kind], (value) => inkVolume(value, ways))}
      />
    ),
  });
  const columns: readonly Column<LogRow>[] = [
    {
      key: 'run',
      label: words.run,
      cell: ({ closing }) => (
        <>
          <b>{closing.name}</b>
          {printers.length > 1 && (
            <span className="quiet small planned">
              {listed(
                printers.flatMap(({ value, label }) => (on(closing.id).includes(value) ? [label] : [])),
                ways,
              )}
            </span>
          )}
        </>
      ),
    },
    { key: 'day', label: words.day, cell: ({ closing }) => dueDay(closing.day, ways) },
    {
      key: 'film',
      label: words.film,
      figure: true,
      cell: ({ closing: { actual, planned } }) => (
        <Pair used={filmLength(actual.film, ways)} planned={filmLength(planned.film, ways)} />
      ),
    },
    {
      key: 'waste',
      label: words.waste,
      figure: true,
      cell: ({ waste, plannedWaste }) => (
        <Pair used={percent(waste, ways)} planned={percent(plannedWaste, ways)} />
      ),
    },
    ink('colour'),
    ink('white'),
    {
      key: 'powder',
      label: words.powder,
      figure: true,
      cell: ({ closing: { actual, planned } }) => (
        <Pair
          used={known(actual.powder, (value) => powderMass(value, ways))}
          planned={known(planned.powder, (value) => powderMass(value, ways))}
        />
      ),
    },
    {
      key: 'hands',
      label: words.hands,
      figure: true,
      cell: ({ closing: { actual, planned } }) => (
        <Pair
          used={known(actual.time.hands, (value) => spoken(value, ways))}
          planned={spoken(planned.time.hands, ways)}
        />
      ),
    },
    {
      key: 'spoiled',
      label: words.spoiled,
      cell: ({ closing }) =>
        closing.spoiled.length === 0 ? (
          <span className="quiet">{words.none}</span>
        ) : (
          closing.spoiled.map(({ copies, stage, reason }) => (
            <span key={`${stage} ${reason}`} className="small spoiled-line">
              {closingWords.spoiledLine(copies, spoil.stages[stage], reason, ways)}
            </span>
          ))
        ),
    },
  ];
  return (
    <section className="chart-part" aria-labelledby="closed-runs">
      <h2 id="closed-runs">{words.table}</h2>
      <LongTable labelledBy="closed-runs" columns={columns} rows={rows} keyOf={({ closing }) => closing.id} />
    </section>
  );
}
