import { useMemo } from 'react';
import { logRows } from '../../src/log';
import { CalibrateOffer } from '../calibrate/CalibrateOffer';
import { Button } from '../parts/Button';
import { CsvButton } from '../stock/CsvButton';
import { useWays } from '../store/selectors';
import { useShop } from '../store/shop';
import { goTo } from '../store/view';
import { useWords } from '../words';
import { AirChart, LotPart } from './AirChart';
import { LogTable } from './LogTable';
import { PlannedChart } from './PlannedChart';
import { SpoiledChart } from './SpoiledChart';
import { WasteChart } from './WasteChart';
import { WeekChart } from './WeekChart';
import './log.css';

/** What the shop learned: every closed run with what was planned and what it took, and how that develops. */
export function LogRoom() {
  const { log: words } = useWords();
  const ways = useWays();
  const closings = useShop(({ book }) => book.closing);
  const rows = useMemo(() => logRows(closings), [closings]);
  return (
    <>
      <div className="room-head">
        <div>
          <h1>{words.title}</h1>
          {rows.length > 0 && <p className="quiet">{words.head(rows.length, ways)}</p>}
        </div>
        {rows.length > 0 && (
          <div className="actions">
            <CsvButton what="log" />
          </div>
        )}
      </div>
      {rows.length === 0 && (
        <section className="empty">
          <p>{words.empty}</p>
          <Button weight="primary" onPress={() => goTo('press')}>
            {words.toPress}
          </Button>
        </section>
      )}
      {rows.length > 0 && <CalibrateOffer />}
      {rows.length === 1 && <p>{words.one}</p>}
      {rows.length > 1 && (
        <div className="chart-grid">
          <WasteChart rows={rows} />
          <WeekChart rows={rows} />
          <SpoiledChart rows={rows} />
          <PlannedChart rows={rows} />
          <AirChart rows={rows} />
          <LotPart rows={rows} />
        </div>
      )}
      {rows.length > 0 && <LogTable rows={rows} />}
    </>
  );
}
